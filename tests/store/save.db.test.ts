import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Site } from '../../lib/model/site.ts';
import { readChanges } from '../../lib/store/change-log.ts';
import type { Saved } from '../../lib/store/change-site.ts';
import { importSite } from '../../lib/store/import-site.ts';
import { closeDatabase, type Database, openDatabase } from '../../lib/store/open-database.ts';
import { readRevision, readSite } from '../../lib/store/read-site.ts';
import { readPolicyAuthors } from '../../lib/store/rows/policy.ts';
import { savePolicy, saveSiteName } from '../../lib/store/save-policy.ts';
import * as save from '../../lib/store/save-site.ts';
import { addCheck, moveStockRow, removeStockRow, saveStockRow } from '../../lib/store/save-stock.ts';
import { makeBay, makeFrame, makeLevel, makeLoad, makeRun, makeSite, makeTruck } from '../site-builder.ts';

const PLANNER = { who: 'A planner', at: '2026-03-02T06:30:00Z' };
const LEAD = { who: 'A shift lead', at: '2026-03-02T07:00:00Z' };

const stocked = makeSite({
  stock: [
    { location: 'a2-1-1', load: 'crates' },
    { location: 'a1-1-1', load: 'drums' },
  ],
});

let db: Database;
beforeEach(() => {
  db = openDatabase(':memory:');
  importSite(db, stocked, PLANNER);
});
afterEach(() => closeDatabase(db));

/** The site as it was, with these lists in the place of its own, and one change more in the log. */
function expectOneChange(saved: Saved, lists: Partial<Site>, change: object) {
  expect(saved).toEqual({ ok: true, revision: 2 });
  expect(readSite(db)).toEqual({ ...stocked, ...lists });
  expect(readRevision(db)).toBe(2);
  const log = readChanges(db, { limit: 10 });
  expect(log).toHaveLength(2);
  expect(log[0]).toMatchObject({ ...LEAD, ...change });
}

/** The site as it was, nothing in the log. */
function expectNothing() {
  expect(readSite(db)).toEqual(stocked);
  expect(readRevision(db)).toBe(1);
  expect(readChanges(db, { limit: 10 })).toHaveLength(1);
}

const [reach, counter] = stocked.trucks as [Site['trucks'][0], Site['trucks'][0]];
const [crates, drums] = stocked.loads as [Site['loads'][0], Site['loads'][0]];
const run = stocked.runs[0]!;

describe('a save', () => {
  const held = { ...reach, hold: { since: '2026-03-02', reason: 'Chain stretched' } };
  const heavier = { ...crates, grossKg: 900.5, items: [{ name: 'crate', massKg: 1, count: 2 }] };
  const wide = { ...stocked.aisles[0]!, clearWidthMm: 4300 };
  const red = { ...run, frames: run.frames.map((frame) => ({ ...frame, condition: 'red' as const })) };
  const learnt = { ...stocked.operators[0]!, authorisations: [{ kind: 'stacker' as const, expires: null }] };
  const pallet = { ...stocked.palletTypes[0]!, tareKg: 25 };
  const frameType = { id: 'f90', ratings: [{ maxGapMm: 1500, capacityKg: 8000 }] };
  const dock = { id: 'dock-1', xMm: 5, yMm: 6 };

  it.each([
    ['truck', () => save.saveTruck(db, held, LEAD), { trucks: [held, counter] }, reach, held],
    ['load', () => save.saveLoad(db, heavier, LEAD), { loads: [heavier, drums] }, crates, heavier],
    ['aisle', () => save.saveAisle(db, wide, LEAD), { aisles: [wide] }, stocked.aisles[0], wide],
    ['run', () => save.saveRun(db, red, LEAD), { runs: [red] }, run, red],
    [
      'operator',
      () => save.saveOperator(db, learnt, LEAD),
      { operators: [learnt] },
      stocked.operators[0],
      learnt,
    ],
    [
      'pallet-type',
      () => save.savePalletType(db, pallet, LEAD),
      { palletTypes: [pallet] },
      stocked.palletTypes[0],
      pallet,
    ],
    [
      'frame-type',
      () => save.saveFrameType(db, frameType, LEAD),
      { frameTypes: [frameType] },
      stocked.frameTypes[0],
      frameType,
    ],
    ['dock', () => save.saveDock(db, dock, LEAD), { docks: [dock] }, stocked.docks[0], dock],
  ])(
    'of a %s replaces it in its place, keeps what refers to it, and is logged',
    (noun, act, lists, before, after) => {
      expectOneChange(act(), lists, { kind: 'save', noun, before, after });
    },
  );

  it('of an id that is new adds the entry at the end, also after a removal', () => {
    const third = makeTruck({ id: 'another' });
    expectOneChange(
      save.saveTruck(db, third, LEAD),
      { trucks: [reach, counter, third] },
      {
        kind: 'add',
        noun: 'truck',
        subject: 'another',
        before: null,
        after: third,
      },
    );
    save.removeTruck(db, 'reach-1', LEAD);
    save.saveTruck(db, reach, LEAD);
    expect(readSite(db)?.trucks.map((truck) => truck.id)).toEqual(['counter-1', 'another', 'reach-1']);
  });

  it('that changes nothing is no change', () => {
    expect(save.saveTruck(db, reach, LEAD)).toEqual({ ok: true, revision: 1 });
    expect(save.saveRun(db, run, LEAD)).toEqual({ ok: true, revision: 1 });
    expect(savePolicy(db, {}, LEAD)).toEqual({ ok: true, revision: 1 });
    expect(saveSiteName(db, 'Harbour store', LEAD)).toEqual({ ok: true, revision: 1 });
    expect(saveStockRow(db, stocked.stock[0]!, LEAD)).toEqual({ ok: true, revision: 1 });
    expectNothing();
  });

  it('may change the racking under stock, bays and locations added, others gone', () => {
    const rebuilt = makeRun({
      frames: ['n1', 'n2', 'n3', 'n4'].map((id) => makeFrame({ id })),
      bays: [makeBay('a0'), makeBay('a1', { levels: [makeLevel('a1', 1)] }), makeBay('a2')],
    });
    expectOneChange(save.saveRun(db, rebuilt, LEAD), { runs: [rebuilt] }, { kind: 'save', noun: 'run' });
  });

  it.each<[string, () => Saved, string, string]>([
    [
      'a truck whose extended mast is lower than its lowered one',
      () => save.saveTruck(db, { ...counter, extendedMm: 1 }, LEAD),
      '$.trucks[1].extendedMm',
      'at-least-field',
    ],
    [
      'a load on a pallet type that is not there',
      () => save.saveLoad(db, { ...drums, palletType: 'p1201' }, LEAD),
      '$.loads[1].palletType',
      'id-in',
    ],
    [
      'a new load without a depth',
      () => save.saveLoad(db, { ...makeLoad({ id: 'new' }), depthMm: 0 }, LEAD),
      '$.loads[2].depthMm',
      'above',
    ],
    [
      'a run in an aisle that is not there',
      () => save.saveRun(db, { ...run, aisleId: 'aisle-2' }, LEAD),
      '$.runs[0].aisleId',
      'id-in',
    ],
    [
      'a run that loses a stocked location',
      () => save.saveRun(db, makeRun({ frames: run.frames.slice(1), bays: [makeBay('a1')] }), LEAD),
      '$.stock[0].location',
      'id-in',
    ],
    [
      'a second run with the same locations',
      () => save.saveRun(db, { ...run, id: 'b' }, LEAD),
      '$.runs[1].bays[0].levels[0].locations[0]',
      'unique',
    ],
    [
      'a policy that forgets a plate',
      () => savePolicy(db, { mustKnow: ['truck-fit'] }, LEAD),
      '$.site.policy.mustKnow',
      'text',
    ],
    ['a blank name', () => saveSiteName(db, ' ', LEAD), '$.site.name', 'text'],
    [
      'a check of a truck that is not there',
      () => addCheck(db, { truck: 'reach-2', at: '2026-03-02', by: 'x', result: 'pass', defects: [] }, LEAD),
      '$.checks[0].truck',
      'id-in',
    ],
    [
      'stock in a location that is not there',
      () => saveStockRow(db, { location: 'a1-9-1', load: 'crates' }, LEAD),
      '$.stock[2].location',
      'id-in',
    ],
    [
      'stock of a load that is not there',
      () => saveStockRow(db, { location: 'a2-1-1', load: 'crate' }, LEAD),
      '$.stock[0].load',
      'id-in',
    ],
    ['a move from an empty location', () => moveStockRow(db, 'a1-2-1', 'a1-2-2', LEAD), '$.stock', 'id-in'],
    ['a move to a taken location', () => moveStockRow(db, 'a2-1-1', 'a1-1-1', LEAD), '$.stock', 'unique'],
    [
      'a move to a location that is not there',
      () => moveStockRow(db, 'a2-1-1', 'a2-1-9', LEAD),
      '$.stock[2].location',
      'id-in',
    ],
    [
      'the removal of a load that stands somewhere',
      () => save.removeLoad(db, 'drums', LEAD),
      '$.stock[1].load',
      'id-in',
    ],
    [
      'the removal of an aisle with a run',
      () => save.removeAisle(db, 'aisle-1', LEAD),
      '$.runs[0].aisleId',
      'id-in',
    ],
    ['the removal of a run with stock', () => save.removeRun(db, 'a', LEAD), '$.stock[0].location', 'id-in'],
    [
      'the removal of a pallet type in use',
      () => save.removePalletType(db, 'p1200', LEAD),
      '$.loads[0].palletType',
      'id-in',
    ],
    [
      'the removal of a frame type in use',
      () => save.removeFrameType(db, 'f90', LEAD),
      '$.runs[0].frames[0].typeId',
      'id-in',
    ],
  ])(
    'is refused for %s, with the place and what was expected, and nothing is kept',
    (_why, act, path, is) => {
      const saved = act();
      expect(saved.ok).toBe(false);
      if (!saved.ok) expect(saved.refusals[0]).toMatchObject({ path, expected: { is } });
      expectNothing();
    },
  );

  it('without a site is a bug and throws', () => {
    const empty = openDatabase(':memory:');
    expect(() => save.saveTruck(empty, reach, LEAD)).toThrow('there is no site');
    closeDatabase(empty);
  });
});

describe('a removal', () => {
  it('of a truck takes its checks with it and keeps both in the log', () => {
    const [check, other] = stocked.checks;
    expectOneChange(
      save.removeTruck(db, 'reach-1', LEAD),
      { trucks: [counter], checks: [other!] },
      {
        kind: 'remove',
        noun: 'truck',
        subject: 'reach-1',
        before: { ...reach, checks: [check] },
        after: null,
      },
    );
  });

  it.each([
    ['operator', () => save.removeOperator(db, 'op-1', LEAD), { operators: [] }],
    ['dock', () => save.removeDock(db, 'dock-1', LEAD), { docks: [] }],
  ])('of an %s that nothing refers to goes through', (noun, act, lists) => {
    expectOneChange(act(), lists, { kind: 'remove', noun, after: null });
  });

  it('of what is not there is no change', () => {
    expect(save.removeTruck(db, 'nobody', LEAD)).toEqual({ ok: true, revision: 1 });
    expect(removeStockRow(db, 'a1-0-1', LEAD)).toEqual({ ok: true, revision: 1 });
    expectNothing();
  });

  it('of the racking goes through once it is empty, from the stock down to the frame type', () => {
    for (const { location } of stocked.stock) expect(removeStockRow(db, location, LEAD).ok).toBe(true);
    for (const id of ['crates', 'drums']) expect(save.removeLoad(db, id, LEAD).ok).toBe(true);
    expect(save.removePalletType(db, 'p1200', LEAD).ok).toBe(true);
    expect(save.removeRun(db, 'a', LEAD).ok).toBe(true);
    expect(save.removeAisle(db, 'aisle-1', LEAD).ok).toBe(true);
    expect(save.removeFrameType(db, 'f90', LEAD)).toEqual({ ok: true, revision: 9 });
    expect(readSite(db)).toMatchObject({
      runs: [],
      aisles: [],
      frameTypes: [],
      loads: [],
      palletTypes: [],
      stock: [],
    });
  });
});

describe('stock', () => {
  const [first, second] = stocked.stock;

  it('that comes stands at the end of the list', () => {
    const row = { location: 'a1-0-2', load: 'crates' };
    expectOneChange(
      saveStockRow(db, row, LEAD),
      { stock: [first!, second!, row] },
      {
        kind: 'add',
        noun: 'stock',
        subject: 'a1-0-2',
        before: null,
        after: 'crates',
      },
    );
  });

  it('takes the place of what stood there', () => {
    const row = { location: 'a2-1-1', load: 'drums' };
    expectOneChange(
      saveStockRow(db, row, LEAD),
      { stock: [row, second!] },
      { kind: 'save', before: 'crates', after: 'drums' },
    );
  });

  it('goes', () => {
    expectOneChange(
      removeStockRow(db, 'a2-1-1', LEAD),
      { stock: [second!] },
      { kind: 'remove', before: 'crates', after: null },
    );
  });

  it('moves in one step, logged at both places', () => {
    expect(moveStockRow(db, 'a2-1-1', 'a2-2-2', LEAD)).toMatchObject({ ok: true });
    expect(readSite(db)).toEqual({ ...stocked, stock: [{ location: 'a2-2-2', load: 'crates' }, second] });
    expect(readChanges(db, { limit: 2 }).map(({ kind, subject }) => [kind, subject])).toEqual([
      ['add', 'a2-2-2'],
      ['remove', 'a2-1-1'],
    ]);
  });
});

describe('a check', () => {
  it('is added after the others, its defects in order', () => {
    const check = {
      truck: 'counter-1',
      at: '2026-03-01',
      by: 'Somebody',
      result: 'fail',
      defects: ['z', 'a'],
    } as const;
    const kept = { ...check, defects: [...check.defects] };
    expectOneChange(
      addCheck(db, kept, LEAD),
      { checks: [...stocked.checks, kept] },
      { kind: 'add', noun: 'check', subject: 'counter-1', after: kept },
    );
  });
});

describe('the policy', () => {
  it('keeps who set each value: only what differs is written', () => {
    savePolicy(db, { thinPercent: 5, tilt: 'mast-kept-vertical' }, PLANNER);
    const policy = { thinPercent: 5, massAllowancePercent: { declared: 15 } };
    expect(savePolicy(db, policy, LEAD)).toEqual({ ok: true, revision: 5 });
    expect(readSite(db)?.site.policy).toEqual(policy);
    expect(readPolicyAuthors(db)).toEqual([
      { key: 'massAllowancePercent', changedBy: LEAD.who, changedAt: LEAD.at },
      { key: 'thinPercent', changedBy: PLANNER.who, changedAt: PLANNER.at },
    ]);
    const log = readChanges(db, { limit: 4 }).map(({ kind, subject, before, after }) => [
      kind,
      subject,
      before,
      after,
    ]);
    expect(log).toEqual([
      ['add', 'massAllowancePercent', null, { declared: 15 }],
      ['remove', 'tilt', 'mast-kept-vertical', null],
      ['add', 'thinPercent', null, 5],
      ['add', 'tilt', null, 'mast-kept-vertical'],
    ]);
  });

  it('and the name are changed without touching the rest', () => {
    expectOneChange(
      saveSiteName(db, 'Pier store', LEAD),
      { site: { name: 'Pier store', policy: {} } },
      { kind: 'save', noun: 'site', subject: 'name', before: 'Harbour store', after: 'Pier store' },
    );
  });
});

describe('the change log', () => {
  it('is read newest first, page by page', () => {
    for (let n = 0; n < 5; n++) saveSiteName(db, `Name ${n}`, LEAD);
    const first = readChanges(db, { limit: 2 });
    expect(first.map((change) => change.after)).toEqual(['Name 4', 'Name 3']);
    const second = readChanges(db, { limit: 2, before: first[1]!.id });
    expect(second.map((change) => change.after)).toEqual(['Name 2', 'Name 1']);
    expect(readChanges(db, { limit: 10, before: second[1]!.id })).toHaveLength(2);
  });
});
