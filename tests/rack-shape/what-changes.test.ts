import { describe, expect, it } from 'vitest';
import type { Run } from '../../lib/model/racking.ts';
import { changeRunByAll } from '../../lib/rack-shape/change-run.ts';
import { rateFrames } from '../../lib/rack-shape/rate-frames.ts';
import type { RunChange } from '../../lib/rack-shape/run-change.ts';
import { draftOf } from '../../lib/rack-shape/run-draft.ts';
import { shapeRun } from '../../lib/rack-shape/shape-run.ts';
import { whatChanges } from '../../lib/rack-shape/what-changes.ts';
import { describeRun, made, neighbours, site } from './describe.ts';

const run = made(shapeRun(describeRun(), neighbours));
const all = { first: 0, last: 2 };
const mark = (at: number, condition: 'sound' | 'amber' | 'red'): RunChange => ({
  kind: 'frame-condition',
  range: { first: at, last: at },
  condition,
});
const by = (saved: Run, ...changes: RunChange[]) => {
  const { draft } = changeRunByAll(draftOf(saved), changes, neighbours);
  return whatChanges(saved, draft.run, draft);
};
const changed = (...changes: RunChange[]) => changeRunByAll(draftOf(run), changes, neighbours).draft.run;

describe('what a change touches', () => {
  it.each<[string, RunChange[], object]>([
    ['nothing', [], { steel: false, conditions: false }],
    [
      'steel',
      [{ kind: 'move-beam', range: all, level: 1, beamTopMm: 1600 }],
      { steel: true, conditions: false },
    ],
    ['marks', [mark(1, 'amber')], { steel: false, conditions: true }],
    [
      'marks of a level',
      [{ kind: 'level-condition', range: all, level: 2, condition: 'red' }],
      { steel: false, conditions: true },
    ],
    [
      'new ids alone',
      [{ kind: 'renumber', id: 'Q', aisleId: 'aisle-1', labels: describeRun().labels }],
      { steel: true, conditions: false },
    ],
  ])('%s', (_name, changes, touched) => {
    expect(by(run, ...changes)).toEqual(touched);
  });

  it('a mark that is taken off counts, also under new ids and beside other changes', () => {
    const red = changed(mark(1, 'red'));
    const renumber: RunChange = {
      kind: 'renumber',
      id: 'Q',
      aisleId: 'aisle-1',
      labels: { ...describeRun().labels, aisle: 'Q' },
    };
    expect(by(red, mark(1, 'sound'), renumber)).toEqual({ steel: true, conditions: true });
    expect(by(red, renumber)).toEqual({ steel: true, conditions: false });
  });

  it('a mark that goes with its steel, or stays on the frame that is left, does not', () => {
    const red = changed(mark(2, 'red'));
    expect(by(red, { kind: 'remove-bays', range: { first: 1, last: 1 } })).toEqual({
      steel: true,
      conditions: false,
    });
    const end = changed(mark(3, 'red'));
    expect(by(end, { kind: 'remove-bays', range: { first: 2, last: 2 } })).toEqual({
      steel: true,
      conditions: false,
    });
  });

  it('a new run is steel, and sound', () => {
    const links = { bays: [null, null, null], frames: [null, null, null, null] };
    expect(whatChanges(null, run, links)).toEqual({ steel: true, conditions: false });
    expect(whatChanges(null, changed(mark(0, 'red')), links).conditions).toBe(true);
  });
});

describe('the ratings of a run', () => {
  it('are told for frames of a kind together: by gap, none beyond the table', () => {
    // f90: 9000 kg to 1500 mm, 7000 kg to 2000 mm
    expect(rateFrames(site, run)).toEqual([{ typeId: 'f90', gapMm: 1500, ratingKg: 9000, count: 4 }]);
    const raised = changed({ kind: 'move-beam', range: { first: 0, last: 0 }, level: 1, beamTopMm: 2000.1 });
    expect(rateFrames(site, raised)).toEqual([
      { typeId: 'f90', gapMm: 2000.1, ratingKg: null, count: 2 },
      { typeId: 'f90', gapMm: 1500, ratingKg: 9000, count: 2 },
    ]);
  });
});
