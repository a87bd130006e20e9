import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Site } from '../../lib/model/site.ts';
import { readChanges } from '../../lib/store/change-log.ts';
import {
  ENTRIES_LOGGED_ONE_BY_ONE as FEW,
  importLists,
  type PlannedLists,
} from '../../lib/store/import-lists.ts';
import { keepMapping, MAPPINGS_KEPT, readMappings } from '../../lib/store/import-mappings.ts';
import { importSite } from '../../lib/store/import-site.ts';
import { closeDatabase, type Database, openDatabase } from '../../lib/store/open-database.ts';
import { readRevision, readSite } from '../../lib/store/read-site.ts';
import { revertChange } from '../../lib/store/revert-change.ts';
import * as save from '../../lib/store/save-site.ts';
import { renewSnapshot } from '../../lib/store/site-snapshot.ts';
import { makeLoad, makeSite } from '../site-builder.ts';

const PLANNER = { who: 'A planner', at: '2026-03-02T06:30:00Z' };
const LEAD = { who: 'A shift lead', at: '2026-03-02T07:00:00Z' };
const SEED_LOADS = FEW * 4;

const site = makeSite({
  loads: [makeLoad(), ...manyLoads(SEED_LOADS, 'old')],
  stock: [
    { location: 'a1-0-1', load: 'crates' },
    { location: 'a2-2-2', load: 'old-3' },
  ],
});

let db: Database;
beforeEach(() => {
  db = openDatabase(':memory:');
  importSite(db, site, PLANNER);
});
afterEach(() => closeDatabase(db));

function manyLoads(count: number, prefix: string, grossKg = 500): Site['loads'] {
  return Array.from({ length: count }, (_, at) =>
    makeLoad({ id: `${prefix}-${at}`, name: `${prefix} ${at}`, grossKg, massBasis: 'weighed', items: null }),
  );
}

function planned(after: Site, ...lists: (keyof Site & string)[]): PlannedLists {
  return {
    ok: true,
    after,
    lists: new Map(lists.map((list) => [list, [`${list}.csv`]])) as PlannedLists['lists'],
    mappings: [{ signature: 'id|name', list: lists[0] ?? 'loads', mapping: { columns: [] } }],
  };
}

/** The first `count` loads weigh 1 kg more, and `added` new ones come behind the last. */
function withLoads(now: Site, count: number, added: number): Site {
  const loads = now.loads.map((load, at) => (at < count ? { ...load, grossKg: 501, items: null } : load));
  return { ...now, loads: [...loads, ...manyLoads(added, 'new')] };
}

describe('an import of a few entries', () => {
  it.each([
    ['one below the limit', FEW - 1],
    ['at the limit', FEW],
  ])('%s writes a row for each into the change log, all undone together', (_what, entries) => {
    const after = withLoads(site, entries - 2, 2);
    const saved = importLists(db, LEAD, null, () => planned(after, 'loads'));
    expect(saved).toEqual({ ok: true, revision: 1 + entries });
    expect(readSite(db)).toEqual(after);
    const log = readChanges(db, { limit: entries + 5 });
    expect(log).toHaveLength(entries + 1);
    expect(
      new Set(log.slice(0, -1).map(({ kind, noun, batch, who }) => [kind, noun, batch, who].join())),
    ).toEqual(new Set([`import,load,2,${LEAD.who}`]));
    expect(revertChange(db, 3, PLANNER)).toMatchObject({ ok: true });
    expect(readSite(db)).toEqual(site);
  });

  it('is undone as long as each stands, whatever else was changed after it', () => {
    importLists(db, LEAD, null, () => planned(withLoads(site, 2, 0), 'loads'));
    save.saveLoad(db, makeLoad({ id: 'other' }), PLANNER);
    expect(revertChange(db, 2, PLANNER)).toMatchObject({ ok: true });
    expect(readSite(db)?.loads.slice(0, -1)).toEqual(site.loads);
  });

  it('puts new loads and the pallets of them in together, in the order in which they lean on each other', () => {
    const now = withLoads(site, 0, 1);
    const after = { ...now, stock: [...now.stock, { location: 'a1-1-1', load: 'new-0' }] };
    expect(importLists(db, LEAD, null, () => planned(after, 'stock', 'loads'))).toMatchObject({ ok: true });
    expect(readSite(db)).toEqual(after);
  });

  it('tells somebody who edits one of them that it was changed', () => {
    importLists(db, LEAD, null, () => planned(withLoads(site, 1, 0), 'loads'));
    expect(save.saveLoad(db, makeLoad({ name: 'Mine' }), PLANNER, 1)).toMatchObject({
      ok: false,
      conflict: { kind: 'import', subject: 'crates' },
    });
    expect(save.saveLoad(db, { ...site.loads[5]!, name: 'Mine' }, PLANNER, 1)).toMatchObject({ ok: true });
  });
});

describe('an import of many entries', () => {
  it.each([
    ['few of a list changed', FEW - 10, 11],
    ['most of a list changed', SEED_LOADS, 1],
    ['only new ones', 0, FEW + 1],
  ])(
    '(%s) leaves the site as planned and one row for each list in the change log',
    (_what, changed, added) => {
      const after = withLoads(site, changed, added);
      const saved = importLists(db, LEAD, null, () => planned(after, 'loads'));
      expect(saved).toEqual({ ok: true, revision: 2 });
      expect(readSite(db)).toEqual(after);
      const total = site.loads.length;
      expect(readChanges(db, { limit: 1 })[0]).toMatchObject({
        ...{ kind: 'import', noun: 'load', subject: 'loads.csv', wholeSite: true },
        before: { loads: total },
        after: { loads: total + added, added, changed },
      });
    },
  );

  it('is undone whole, from whichever of its rows, until something else is changed', () => {
    const now = withLoads(site, 0, FEW + 1);
    const after = { ...now, stock: [...now.stock, { location: 'a1-1-1', load: 'new-0' }] };
    importLists(db, LEAD, null, () => planned(after, 'loads', 'stock'));
    expect(readRevision(db)).toBe(3);
    expect(readSite(db)).toEqual(after);
    expect(revertChange(db, 2, PLANNER)).toMatchObject({ ok: true });
    expect(readSite(db)).toEqual(site);

    importLists(db, LEAD, null, () => planned(after, 'loads', 'stock'));
    const last = readRevision(db);
    save.saveLoad(db, makeLoad({ id: 'other' }), PLANNER);
    expect(revertChange(db, last, PLANNER)).toMatchObject({
      ok: false,
      conflict: { base: { known: false } },
    });
  });

  it('keeps places where entries were taken out before, and renews a snapshot to the very site', () => {
    for (const gone of ['old-1', 'old-7', 'old-8']) save.removeLoad(db, gone, PLANNER);
    const held = renewSnapshot(db, null)!;
    const after = withLoads(held.site, 150, 60);
    importLists(db, LEAD, held, () => planned(after, 'loads'));
    expect(readSite(db)).toEqual(after);
    expect(renewSnapshot(db, held)!.site).toEqual(after);
  });

  it('counts checks among the many, since single ones are kept for good', () => {
    const after = { ...site, checks: [...site.checks, { ...site.checks[0]!, by: 'Another' }] };
    importLists(db, LEAD, null, () => planned(after, 'checks'));
    expect(readSite(db)).toEqual(after);
    expect(revertChange(db, 2, PLANNER)).toMatchObject({ ok: true });
    expect(readSite(db)).toEqual(site);
  });
});

describe('an import that is not made', () => {
  it('is planned on the site as it stands now, whatever the browser saw', () => {
    const held = renewSnapshot(db, null);
    save.saveLoad(db, makeLoad({ id: 'meanwhile' }), PLANNER);
    const seen: Site[] = [];
    const outcome = importLists(db, LEAD, held, (now) => {
      seen.push(now);
      return { ok: false as const, why: 'differs' };
    });
    expect(outcome).toEqual({ ok: false, why: 'differs' });
    expect(seen[0]?.loads.at(-1)?.id).toBe('meanwhile');
    expect(readRevision(db)).toBe(2);
    expect(readMappings(db)).toEqual([]);
  });

  it.each([
    ['few', 1],
    ['many', FEW + 5],
  ])('leaves nothing behind when a reference does not hold (%s)', (_what, added) => {
    const now = withLoads(site, 3, added);
    const after = { ...now, stock: [...now.stock, { location: 'nowhere', load: 'new-0' }] };
    const attempt = () => importLists(db, LEAD, null, () => planned(after, 'loads', 'stock'));
    if (added === 1) expect(attempt()).toMatchObject({ ok: false, refusals: [{ came: '"nowhere"' }] });
    else expect(attempt).toThrow(/constraint/i);
    expect(readSite(db)).toEqual(site);
    expect(readRevision(db)).toBe(1);
    expect(readMappings(db)).toEqual([]);
  });

  it('changes no revision when nothing differs, but remembers how the file was read', () => {
    expect(importLists(db, LEAD, null, () => planned(site, 'loads'))).toEqual({ ok: true, revision: 1 });
    expect(readChanges(db, { limit: 5 })).toHaveLength(1);
    expect(readMappings(db)).toEqual([
      { signature: 'id|name', list: 'loads', mapping: { columns: [] }, usedBy: LEAD.who, usedAt: LEAD.at },
    ]);
  });
});

describe('kept mappings', () => {
  it('are one for a header and list, the last used', () => {
    const under = { signature: 'a|b', list: 'loads' };
    keepMapping(db, { ...under, mapping: 1 }, PLANNER);
    keepMapping(db, { ...under, list: 'stock', mapping: 2 }, PLANNER);
    keepMapping(db, { ...under, mapping: 3 }, LEAD);
    expect(readMappings(db).map(({ list, mapping, usedBy }) => [list, mapping, usedBy])).toEqual([
      ['loads', 3, LEAD.who],
      ['stock', 2, PLANNER.who],
    ]);
  });

  it('are as many as MAPPINGS_KEPT: the longest unused go', () => {
    for (let at = 0; at < MAPPINGS_KEPT + 3; at++) {
      const when = new Date(Date.UTC(2026, 2, 2, 0, at)).toISOString();
      keepMapping(db, { signature: String(at), list: 'loads', mapping: at }, { who: 'x', at: when });
    }
    const kept = readMappings(db).map(({ mapping }) => mapping);
    expect(kept).toHaveLength(MAPPINGS_KEPT);
    expect([kept[0], kept.at(-1)]).toEqual([MAPPINGS_KEPT + 2, 3]);
  });
});
