import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Run } from '../../lib/model/racking.ts';
import { changeRun, changeRunByAll } from '../../lib/rack-shape/change-run.ts';
import { locationsOf, neighboursOf } from '../../lib/rack-shape/neighbours.ts';
import { copyRun } from '../../lib/rack-shape/renumber-run.ts';
import type { RunChange } from '../../lib/rack-shape/run-change.ts';
import { draftOf, movesOf, newDraft } from '../../lib/rack-shape/run-draft.ts';
import { shapeRun } from '../../lib/rack-shape/shape-run.ts';
import { beforeAfter, strandedStock } from '../../lib/rack-shape/site-of-run.ts';
import { makeRun, makeSite } from '../site-builder.ts';
import { accepted, anyDescription, describeRun, made, neighbours, site } from './describe.ts';

const SEED = 20260915;
const run = made(shapeRun(describeRun(), neighbours));
const labels = describeRun().labels;
const whole = { first: 0, last: 2 };
const change = (asked: RunChange, on: Run = run) => changeRun(draftOf(on), asked, neighbours);
const changed = (asked: RunChange, on: Run = run) => made(change(asked, on)).run;
const faultOf = (asked: RunChange) => {
  const done = change(asked);
  return done.ok ? null : done.refusals[0];
};
const tops = (on: Run) => on.bays.map((bay) => bay.levels.map((level) => level.beamTopMm));

describe('a beam level', () => {
  it('moves in one bay, in some, or in the whole run', () => {
    const move = (first: number, last: number) =>
      tops(changed({ kind: 'move-beam', range: { first, last }, level: 1, beamTopMm: 1600 })).map(
        (bay) => bay[1],
      );
    expect(move(1, 1)).toEqual([1500, 1600, 1500]);
    expect(move(0, 1)).toEqual([1600, 1600, 1500]);
    expect(move(0, 2)).toEqual([1600, 1600, 1600]);
  });

  it('moved up and back leaves the run as it was', () => {
    fc.assert(
      fc.property(
        anyDescription,
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        (description, share) => {
          const before = made(shapeRun(description, neighbours));
          const range = { first: 0, last: before.bays.length - 1 };
          const top = before.bays[0]!.levels.at(-1)!;
          const beamTopMm = top.beamTopMm + 1000 * share;
          const up = { kind: 'move-beam', range, level: top.level, beamTopMm } as const;
          const back = { ...up, beamTopMm: top.beamTopMm };
          const { draft, stopped } = changeRunByAll(draftOf(before), [up, back], neighbours);
          expect(stopped).toBeNull();
          expect(draft).toEqual(draftOf(before));
        },
      ),
      { seed: SEED, numRuns: 100 },
    );
  });

  it.each([
    // its underside must be above the floor; level 2 has its underside at 2880
    [120.1, null],
    [120, null],
    [119.9, { is: 'no-opening', belowMm: 0 }],
    [2879.9, null],
    [2880, { is: 'no-opening-above', aboveMm: 2880 }],
    [2880.1, { is: 'no-opening-above', aboveMm: 2880 }],
    [0, { is: 'out-of-range', from: 0, to: 1e7, of: 'length' }],
  ])('moved to %d mm gives %j', (beamTopMm, fault) => {
    expect(faultOf({ kind: 'move-beam', range: whole, level: 1, beamTopMm })?.fault ?? null).toEqual(fault);
  });

  it('that no bay has, and the floor, cannot be moved', () => {
    for (const level of [0, 7])
      expect(faultOf({ kind: 'move-beam', range: whole, level, beamTopMm: 1600 })).toEqual({
        field: 'level',
        fault: { is: 'no-such', what: 'level' },
      });
  });

  it('is put on top with locations of its own, and taken away with them', () => {
    const facts = { beamHeightMm: 120, pairCapacityKg: 2000, maxUnitKg: null, decked: true };
    const added = changed({ kind: 'add-level', range: whole, beamTopMm: 4500, facts, labels });
    expect(added.bays[1]!.levels.at(-1)).toMatchObject({
      level: 3,
      beamTopMm: 4500,
      pairCapacityKg: 2000,
      locations: ['B-R-02-3-1', 'B-R-02-3-2', 'B-R-02-3-3'],
    });
    accepted([...site.runs, added]);
    expect(changed({ kind: 'remove-level', range: whole, level: 3 }, added)).toEqual(run);
  });
});

describe('steel and notices', () => {
  it('take other capacities, an unknown one among them', () => {
    const fewer = changed({
      kind: 'level-facts',
      range: { first: 1, last: 2 },
      level: 2,
      facts: { pairCapacityKg: null },
    });
    expect(fewer.bays.map((bay) => bay.levels[2]!.pairCapacityKg)).toEqual([2400, null, null]);
    expect(fewer.bays[1]!.levels[2]!.maxUnitKg).toBe(1000);
    const wide = changed({ kind: 'bay-facts', range: { first: 0, last: 0 }, facts: { maxBayLoadKg: 3000 } });
    expect(wide.bays.map((bay) => bay.maxBayLoadKg)).toEqual([3000, 4800, 4800]);
  });

  it('are marked as an inspection found them', () => {
    const level = changed({
      kind: 'level-condition',
      range: { first: 2, last: 2 },
      level: 1,
      condition: 'amber',
    });
    expect(level.bays.map((bay) => bay.levels[1]!.condition)).toEqual(['sound', 'sound', 'amber']);
    const frames = changed({ kind: 'frame-condition', range: { first: 3, last: 3 }, condition: 'red' });
    expect(frames.frames.map((frame) => frame.condition)).toEqual(['sound', 'sound', 'sound', 'red']);
  });
});

describe('bays', () => {
  const insert = { kind: 'insert-bay', like: 1, clearWidthMm: 1350, name: '99', labels } as const;

  it.each([0, 1, 3])('come in before place %d, sound and empty, with a frame each', (before) => {
    const draft = made(change({ ...insert, before }));
    expect(draft.run.bays[before]).toMatchObject({ id: 'B-R-99', clearWidthMm: 1350 });
    expect(draft.run.bays[before]!.levels[1]!.locations[0]).toBe('B-R-99-1-1');
    expect(draft.run.frames).toHaveLength(5);
    expect(draft.bays[before]).toBeNull();
    expect(draft.bays.filter((at) => at !== null)).toEqual([0, 1, 2]);
    expect(draft.frames.filter((at) => at !== null)).toEqual([0, 1, 2, 3]);
    accepted([...site.runs, draft.run]);
    const { draft: back } = changeRunByAll(
      draft,
      [{ kind: 'remove-bays', range: { first: before, last: before } }],
      neighbours,
    );
    expect(back.run.bays).toEqual(run.bays);
    expect(back.bays).toEqual([0, 1, 2]);
  });

  it('do not come in under a name that stands already', () => {
    expect(faultOf({ ...insert, before: 1, name: '2' })?.fault).toMatchObject({ is: 'label-twice' });
  });

  it('are split in two: locations and pallets stay, capacities must be stated anew', () => {
    const split = {
      kind: 'split-bay',
      bay: 1,
      leftMm: 900,
      rightMm: 1700,
      leftColumns: 1,
      name: '2b',
    } as const;
    const draft = made(change(split));
    expect(draft.run.bays.map((bay) => bay.clearWidthMm)).toEqual([2700, 900, 1700, 2700]);
    expect(locationsOf(draft.run).toSorted()).toEqual(locationsOf(run).toSorted());
    expect(draft.run.bays[1]!.levels[1]!.locations).toEqual(['B-R-02-1-1']);
    expect(draft.run.bays[2]!.levels[1]!.locations).toEqual(['B-R-02-1-2', 'B-R-02-1-3']);
    expect(draft.run.bays[2]!.levels[1]!.pairCapacityKg).toBeNull();
    expect(draft.run.frames).toHaveLength(5);
    expect(movesOf(run, draft)).toEqual({ renamed: [], gone: [] });
    accepted([...site.runs, draft.run]);
    expect(change({ ...split, rightMm: 1800 }).ok).toBe(true);
    expect(faultOf({ ...split, rightMm: 1800.1 })?.fault).toEqual({ is: 'wider-than-bay', bayMm: 2700 });
  });

  it('go with their frames, and the worse mark of two frames that become one stays', () => {
    const red = changed({ kind: 'frame-condition', range: { first: 2, last: 2 }, condition: 'red' });
    const draft = made(change({ kind: 'remove-bays', range: { first: 1, last: 1 } }, red));
    expect(draft.run.frames.map((frame) => frame.condition)).toEqual(['sound', 'red', 'sound']);
    expect(movesOf(red, draft).gone).toEqual(locationsOf({ bays: [red.bays[1]!] }));
    expect(faultOf({ kind: 'remove-bays', range: whole })?.fault).toEqual({ is: 'last-bay' });
  });
});

describe('new ids', () => {
  const stocked = makeSite({
    runs: [makeRun(), run],
    stock: [
      { location: 'B-R-01-1-1', load: 'crates' },
      { location: 'B-R-03-2-3', load: 'drums' },
    ],
  });
  const beside = neighboursOf(stocked, 'B-R');

  it('take the stock along', () => {
    fc.assert(
      fc.property(anyDescription, anyDescription, (description, other) => {
        const before = made(shapeRun(description, neighbours));
        const ids = locationsOf(before);
        const stock = ids.filter((_, at) => at % 3 === 0).map((location) => ({ location, load: 'crates' }));
        const full = accepted([...site.runs, before], stock);
        const asked = { kind: 'renumber', id: 'Q', aisleId: 'aisle-1', labels: other.labels } as const;
        const draft = made(changeRun(draftOf(before), asked, neighboursOf(full, before.id)));
        const { after: now } = beforeAfter(full, before, draft);
        expect(strandedStock(full, before, draft)).toEqual([]);
        expect(now!.stock).toHaveLength(stock.length);
        const renamed = locationsOf(draft.run);
        expect(now!.stock.map((row) => renamed.indexOf(row.location))).toEqual(
          stock.map((row) => ids.indexOf(row.location)),
        );
        accepted([...site.runs, draft.run], now!.stock);
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  it('may swap: counted from the other end, each pallet stays on its beam', () => {
    const asked = {
      kind: 'renumber',
      id: 'B-R',
      aisleId: 'aisle-1',
      labels: { ...labels, bayFrom: 'right' },
    } as const;
    const draft = made(changeRun(draftOf(run), asked, beside));
    expect(movesOf(run, draft).renamed).toContainEqual({ from: 'B-R-01-1-1', to: 'B-R-03-1-1' });
    expect(beforeAfter(stocked, run, draft).after!.stock).toEqual([
      { location: 'B-R-03-1-1', load: 'crates' },
      { location: 'B-R-01-2-3', load: 'drums' },
    ]);
  });

  it('do not move a pallet onto a label that another bay has left', () => {
    const changes: RunChange[] = [
      { kind: 'remove-bays', range: { first: 0, last: 0 } },
      { kind: 'renumber', id: 'B-R', aisleId: 'aisle-1', labels },
    ];
    const { draft } = changeRunByAll(draftOf(run), changes, beside);
    expect(draft.run.bays[0]!.levels[1]!.locations[0]).toBe('B-R-01-1-1');
    expect(beforeAfter(stocked, run, draft).after!.stock).toEqual([
      { location: 'B-R-02-2-3', load: 'drums' },
    ]);
    expect(strandedStock(stocked, run, draft)).toEqual([{ location: 'B-R-01-1-1', load: 'crates' }]);
    expect(strandedStock(stocked, run, null)).toHaveLength(2);
  });

  it('make a copy that is sound, empty and new', () => {
    const red = changed({ kind: 'frame-condition', range: { first: 0, last: 3 }, condition: 'red' });
    const name = { id: 'C', aisleId: 'aisle-1', labels: { ...labels, aisle: 'C' } };
    const copy = made(copyRun(red, name, neighboursOf(stocked, null)));
    expect(copy.frames.every((frame) => frame.condition === 'sound')).toBe(true);
    accepted([...stocked.runs, copy]);
    expect(newDraft(copy).locations.size).toBe(0);
    expect(copyRun(red, { ...name, labels }, neighboursOf(stocked, null)).ok).toBe(false);
  });
});
