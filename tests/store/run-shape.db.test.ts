import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Run } from '../../lib/model/racking.ts';
import { indexSite } from '../../lib/model/site-index.ts';
import { changeRunByAll } from '../../lib/rack-shape/change-run.ts';
import { plainLabels } from '../../lib/rack-shape/guess-labels.ts';
import { neighboursOf } from '../../lib/rack-shape/neighbours.ts';
import type { RunChange } from '../../lib/rack-shape/run-change.ts';
import { draftOf, movesOf } from '../../lib/rack-shape/run-draft.ts';
import { beforeAfter, strandedStock } from '../../lib/rack-shape/site-of-run.ts';
import { readChanges } from '../../lib/store/change-log.ts';
import { importSite } from '../../lib/store/import-site.ts';
import { closeDatabase, type Database, openDatabase } from '../../lib/store/open-database.ts';
import { readRevision, readSite } from '../../lib/store/read-site.ts';
import { revertChange } from '../../lib/store/revert-change.ts';
import { removeRunShape, replaceRun } from '../../lib/store/save-run-shape.ts';
import { saveRun } from '../../lib/store/save-site.ts';
import { saveStockRow } from '../../lib/store/save-stock.ts';
import { renewSnapshot } from '../../lib/store/site-snapshot.ts';
import { makeBay, makeFrame, makeRun, makeSite } from '../site-builder.ts';

const PLANNER = { who: 'A planner', at: '2026-03-02T06:30:00Z' };
const LEAD = { who: 'A shift lead', at: '2026-03-02T07:00:00Z' };

const other = makeRun({
  id: 'b',
  frames: [makeFrame({ id: 'b-f1' }), makeFrame({ id: 'b-f2' })],
  bays: [makeBay('b1')],
});
const site = makeSite({
  runs: [makeRun(), other],
  stock: [
    { location: 'a2-1-1', load: 'crates' },
    { location: 'b1-1-1', load: 'crates' },
    { location: 'a1-1-1', load: 'drums' },
    { location: 'a1-2-2', load: 'crates' },
  ],
});
const saved = site.runs[0]!;
const labels = plainLabels('Q', 'L');
const renumber: RunChange = { kind: 'renumber', id: 'Q-L', aisleId: 'aisle-1', labels };

let db: Database;
let read: number;
beforeEach(() => {
  db = openDatabase(':memory:');
  read = importSite(db, site, PLANNER);
});
afterEach(() => closeDatabase(db));

function draftBy(...changes: RunChange[]) {
  const { draft, stopped } = changeRunByAll(draftOf(saved), changes, neighboursOf(site, saved.id));
  expect(stopped).toBeNull();
  return draft;
}

const shapeOf = (draft: ReturnType<typeof draftBy>, takeOut = strandedStock(site, saved, draft)) => ({
  replaces: saved.id,
  run: draft.run,
  renamed: movesOf(saved, draft).renamed,
  takeOut,
});

function expectNothing() {
  expect(readSite(db)).toEqual(site);
  expect(readRevision(db)).toBe(read);
}

describe('a run that gets new ids', () => {
  it('keeps its place and its pallets, and all of it is undone at once', () => {
    const draft = draftBy(renumber);
    const before = renewSnapshot(db, null);
    const outcome = replaceRun(db, shapeOf(draft), PLANNER, read);
    expect(outcome.ok).toBe(true);
    const now = readSite(db)!;
    const { index } = renewSnapshot(db, before)!;
    expect(index.site).toEqual(now);
    expect([...index.places]).toEqual([...indexSite(now).places]);
    expect([...index.stockAt].toSorted()).toEqual([...indexSite(now).stockAt].toSorted());
    expect(now.runs).toEqual([draft.run, other]);
    const wanted = [...beforeAfter(site, saved, draft).after!.stock, site.stock[1]!];
    expect(now.stock.map((row) => JSON.stringify(row)).toSorted()).toEqual(
      wanted.map((row) => JSON.stringify(row)).toSorted(),
    );
    expect(now.stock.map((row) => row.load)).toEqual(site.stock.map((row) => row.load));
    const last = readChanges(db, { limit: 1 })[0]!;
    expect(revertChange(db, last.id, LEAD).ok).toBe(true);
    expect(readSite(db)).toEqual(site);
  });

  it('may swap the ids of its own bays', () => {
    const draft = draftBy(renumber);
    replaceRun(db, shapeOf(draft), PLANNER, read);
    const named = readSite(db)!;
    const run = named.runs[0]!;
    const mirrored: RunChange = { ...renumber, labels: { ...labels, bayFrom: 'right' } };
    const { draft: swapped } = changeRunByAll(draftOf(run), [mirrored], neighboursOf(named, run.id));
    const shape = { replaces: run.id, run: swapped.run, renamed: movesOf(run, swapped).renamed, takeOut: [] };
    expect(replaceRun(db, shape, PLANNER, readRevision(db)).ok).toBe(true);
    const stock = new Map(readSite(db)!.stock.map((row) => [row.location, row.load]));
    expect(stock.get('Q-L-02-1-1')).toBe('drums');
    expect(stock.get('Q-L-01-1-1')).toBe('crates');
  });

  it('may not take those of another run, nor the id of one', () => {
    const shape = shapeOf(draftBy(renumber));
    const stolen: Run = {
      ...shape.run,
      bays: shape.run.bays.with(0, { ...shape.run.bays[0]!, ...other.bays[0]! }),
    };
    expect(replaceRun(db, { ...shape, run: stolen }, PLANNER, read).ok).toBe(false);
    expect(replaceRun(db, { ...shape, run: { ...shape.run, id: 'b' } }, PLANNER, read)).toMatchObject({
      refusals: [{ path: '$.runs', expected: { is: 'unique' } }],
    });
    expectNothing();
  });
});

describe('locations that go', () => {
  const fewer: RunChange = { kind: 'remove-bays', range: { first: 0, last: 0 } };

  it('are refused while a pallet stands there that was not named', () => {
    const draft = draftBy(fewer);
    expect(replaceRun(db, shapeOf(draft, []), PLANNER, read).ok).toBe(false);
    const [first] = strandedStock(site, saved, draft);
    expect(replaceRun(db, shapeOf(draft, [first!]), PLANNER, read).ok).toBe(false);
    expectNothing();
  });

  it('take the pallets along that were named, and bring them back', () => {
    const draft = draftBy(fewer);
    const outcome = replaceRun(db, shapeOf(draft), PLANNER, read);
    expect(outcome.ok).toBe(true);
    expect(readSite(db)!.stock).toEqual([site.stock[0], site.stock[1]]);
    expect(revertChange(db, readRevision(db), LEAD).ok).toBe(true);
    expect(readSite(db)).toEqual(site);
  });

  it('are refused when another pallet stands there by now', () => {
    const shape = shapeOf(draftBy(fewer));
    saveStockRow(db, { location: 'a1-1-1', load: 'crates' }, LEAD);
    expect(replaceRun(db, shape, PLANNER, read)).toMatchObject({
      ok: false,
      refusals: [{ path: '$.stock' }],
    });
    expect(readSite(db)!.runs).toEqual(site.runs);
  });

  it('of a whole run go with it', () => {
    expect(removeRunShape(db, 'a', [], PLANNER, read).ok).toBe(false);
    expectNothing();
    expect(removeRunShape(db, 'a', strandedStock(site, saved, null), PLANNER, read).ok).toBe(true);
    expect(readSite(db)).toMatchObject({ runs: [other], stock: [{ location: 'b1-1-1' }] });
    expect(revertChange(db, readRevision(db), LEAD).ok).toBe(true);
    expect(readSite(db)).toEqual(site);
  });
});

describe('a run that somebody else has changed', () => {
  it('is a conflict that tells both; pallets that came and went are none', () => {
    const raised = draftBy({ kind: 'move-beam', range: { first: 0, last: 1 }, level: 1, beamTopMm: 1600 });
    saveStockRow(db, { location: 'a2-2-1', load: 'drums' }, LEAD);
    const theirs = { ...saved, frameDepthMm: 1000 };
    saveRun(db, theirs, LEAD);
    expect(replaceRun(db, shapeOf(raised), PLANNER, read)).toMatchObject({
      ok: false,
      conflict: { noun: 'run', subject: 'a', by: 'A shift lead', theirs, base: { known: true, fact: saved } },
    });
    expect(readSite(db)!.runs[0]).toEqual(theirs);
    const again = { ...shapeOf(raised), run: { ...raised.run, frameDepthMm: 1000 } };
    expect(replaceRun(db, again, PLANNER, readRevision(db)).ok).toBe(true);
    expect(readSite(db)!.stock.at(-1)).toEqual({ location: 'a2-2-1', load: 'drums' });
  });

  it('is refused when it is gone', () => {
    const shape = shapeOf(draftBy(renumber));
    expect(replaceRun(db, { ...shape, replaces: 'nowhere' }, PLANNER)).toMatchObject({ ok: false });
    expectNothing();
  });
});

it('a new run is added, once', () => {
  const run: Run = { ...makeRun(), id: 'c', bays: [makeBay('c1')], frames: makeRun().frames.slice(0, 2) };
  const shape = { replaces: null, run, renamed: [], takeOut: [] };
  expect(replaceRun(db, shape, PLANNER, read).ok).toBe(true);
  expect(readSite(db)!.runs.at(-1)).toEqual(run);
  expect(replaceRun(db, shape, PLANNER, read).ok).toBe(false);
});
