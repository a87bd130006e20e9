import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readSite as acceptSite } from '../../lib/model/site-file.ts';
import { readChanges } from '../../lib/store/change-log.ts';
import { importSite } from '../../lib/store/import-site.ts';
import { closeDatabase, type Database, openDatabase } from '../../lib/store/open-database.ts';
import { isEmpty, readRevision, readSite } from '../../lib/store/read-site.ts';
import { readPolicyAuthors } from '../../lib/store/rows/policy.ts';
import { drawSite } from '../properties/arbitrary-site.ts';
import { makeLoad, makeSite, makeTruck } from '../site-builder.ts';
import { bigSite } from './big-site.ts';

const ACTOR = { who: 'A planner', at: '2026-03-02T06:30:00Z' };

let db: Database;
beforeEach(() => {
  db = openDatabase(':memory:');
});
afterEach(() => closeDatabase(db));

describe('an empty database', () => {
  it('holds no site, no change, and stands at revision 0', () => {
    expect(readSite(db)).toBeNull();
    expect(isEmpty(db)).toBe(true);
    expect(readRevision(db)).toBe(0);
    expect(readChanges(db, { limit: 10 })).toEqual([]);
  });
});

describe('an imported site', () => {
  it('is read back exactly', () => {
    const site = makeSite();
    expect(importSite(db, site, ACTOR)).toBe(1);
    expect(readSite(db)).toEqual(site);
    expect(isEmpty(db)).toBe(false);
  });

  it('keeps every kind of fact, order included, where ids do not sort as they are listed', () => {
    const site = fullSite();
    importSite(db, site, ACTOR);
    expect(readSite(db)).toEqual(site);
  });

  it('is read back exactly whatever a random site holds', () => {
    fc.assert(
      fc.property(fc.gen(), (g) => {
        const site = drawSite(g);
        expect(acceptSite(site)).toMatchObject({ ok: true });
        importSite(db, site, ACTOR);
        expect(readSite(db)).toEqual(site);
      }),
      { numRuns: 60 },
    );
  });

  it('takes the place of the former one, whose change log stays', () => {
    importSite(db, fullSite(), ACTOR);
    const next = makeSite({ site: { name: 'The other store' } });
    expect(importSite(db, next, { who: 'Another', at: '2026-03-03T00:00:00Z' })).toBe(2);
    expect(readSite(db)).toEqual(next);
    expect(
      readChanges(db, { limit: 10 }).map(({ who, at, kind, noun, subject }) => [
        who,
        at,
        kind,
        noun,
        subject,
      ]),
    ).toEqual([
      ['Another', '2026-03-03T00:00:00Z', 'import', 'site', 'The other store'],
      ['A planner', '2026-03-02T06:30:00Z', 'import', 'site', 'Öland ⚓ "north" \\ shed'],
    ]);
  });

  it('says in the log how much came and went', () => {
    importSite(db, makeSite(), ACTOR);
    importSite(db, makeSite({ trucks: [makeTruck()], checks: [] }), ACTOR);
    const [second, first] = readChanges(db, { limit: 10 });
    expect(first).toMatchObject({ before: null, after: { trucks: 2, checks: 2 } });
    expect(second).toMatchObject({ before: { trucks: 2, checks: 2 }, after: { trucks: 1, checks: 0 } });
  });

  it('says who set each policy value and when', () => {
    importSite(db, makeSite({ site: { name: 'x', policy: { thinPercent: 5 } } }), ACTOR);
    expect(readPolicyAuthors(db)).toEqual([
      { key: 'thinPercent', changedBy: 'A planner', changedAt: '2026-03-02T06:30:00Z' },
    ]);
  });
});

describe('an import that fails', () => {
  it.each([
    ['a stocked location that is not there', { stock: [{ location: 'nowhere', load: 'crates' }] }],
    ['a stocked load that is not there', { stock: [{ location: 'a1-0-1', load: 'ghost' }] }],
    ['a check of a truck that is not there', { trucks: [], checks: makeSite().checks }],
    ['two loads of one id', { loads: [makeLoad(), makeLoad()] }],
    ['a pallet type that is not there', { loads: [makeLoad({ palletType: 'ghost' })] }],
  ] as const)('for %s leaves everything as it was', (_why, wrong) => {
    const before = fullSite();
    importSite(db, before, ACTOR);
    expect(() => importSite(db, { ...makeSite(), ...wrong } as never, ACTOR)).toThrow(/constraint/i);
    expect(readSite(db)).toEqual(before);
    expect(readRevision(db)).toBe(1);
    expect(readChanges(db, { limit: 10 })).toHaveLength(1);
  });
});

describe('a text', () => {
  it.each([
    ['with letters beyond the basic plane', '\u{1F69C} gantry'],
    ['composed in another way than it looks', 'e\u0301'],
    ['on two lines', 'one\r\ntwo'],
    ['named like a property', '__proto__'],
    ['with quotes', `it's "so"`],
  ])('%s is read back to the letter', (_what, text) => {
    const site = makeSite({ loads: [makeLoad({ id: '__proto__', name: text, group: text })] });
    expect(acceptSite(site).ok).toBe(true);
    importSite(db, site, ACTOR);
    expect(readSite(db)).toEqual(site);
  });

  it.each([
    ['a NUL, at which SQLite cuts it', 'one\0two'],
    ['half a character, which SQLite changes', 'one\ud800'],
    ['the other half', '\udc00two'],
  ])('with %s is refused by the model, and by the store if it comes that far', (_what, text) => {
    const good = makeSite();
    const site = { ...good, loads: [{ ...good.loads[0]!, name: text }] };
    expect(acceptSite(site)).toMatchObject({ ok: false, refusals: [{ path: '$.loads[0].name' }] });
    expect(() => importSite(db, site, ACTOR)).toThrow('cannot keep');
    expect(readSite(db)).toBeNull();
  });
});

describe('a site of 20 000 locations', () => {
  it('goes in and comes back exactly', () => {
    const site = bigSite(20_000);
    importSite(db, site, ACTOR);
    expect(readSite(db)).toEqual(site);
  });
});

/** Every optional fact given once, ids out of order, names that need quoting. */
function fullSite() {
  const plain = makeSite();
  return makeSite({
    site: {
      name: 'Öland ⚓ "north" \\ shed',
      policy: { thinPercent: 0.1 + 0.2, massAllowancePercent: { declared: 7.5 }, tilt: 'mast-kept-vertical' },
    },
    palletTypes: ['p9', 'p1200', 'p10'].map((id) => ({ ...plain.palletTypes[0]!, id })),
    aisles: [
      { id: 'zone 9', clearWidthMm: 1 / 3, overheadClearMm: 'none', sprinklerMm: null },
      { id: 'aisle-1', clearWidthMm: 4200, overheadClearMm: null, sprinklerMm: 'none' },
    ],
    docks: [
      { id: 'z', xMm: 0, yMm: 1 },
      { id: 'a', xMm: 2.5, yMm: 0 },
    ],
    runs: [{ ...plain.runs[0]!, at: null }],
    trucks: [
      makeTruck({
        id: 'z',
        hold: { since: '2026-03-01', reason: "Driver's mirror" },
        fittedAttachment: 'clamp',
      }),
      makeTruck({ id: 'a', turning: null, speeds: { travelMps: 1.5, liftMps: 0.25 }, statedAisleMm: 2700 }),
      makeTruck({ id: 'm', plate: { verticalLoadCentreMm: null, ratings: [] } }),
    ],
    checks: [
      { truck: 'z', at: '2026-03-02T06:00:00Z', by: 'B', result: 'fail', defects: ['Second', 'First'] },
      { truck: 'a', at: '2026-03-01', by: 'A', result: 'pass', defects: [] },
    ],
    operators: [{ id: 'o2', name: 'Nobody yet', authorisations: [] }, ...plain.operators],
    loads: [
      makeLoad({
        id: 'z-last',
        items: [
          { name: 'box', massKg: 12.25, count: 3 },
          { name: 'bag', massKg: 0.1, count: 1 },
        ],
        centreFromHeelMm: 512.5,
        centreHeightMm: 400,
        group: 'seasonal',
        handPick: {
          massKg: 12.25,
          horizontalMm: 300,
          gripHeightMm: 0,
          destinationHeightMm: 900,
          asymmetryDeg: 30,
          liftsPerMinute: 0,
          durationHours: 8,
          coupling: 'fair',
        },
      }),
      makeLoad({ id: 'crates', palletType: null, grossKg: null, picksPerWeek: 0 }),
    ],
    stock: [
      { location: 'a2-2-2', load: 'z-last' },
      { location: 'a1-0-1', load: 'crates' },
      { location: 'a1-1-1', load: 'z-last' },
    ],
  });
}
