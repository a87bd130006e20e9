import { describe, expect, it } from 'vitest';
import { plainLabels } from '../../lib/rack-shape/guess-labels.ts';
import type { RunChange } from '../../lib/rack-shape/run-change.ts';
import type { ShapeFault } from '../../lib/rack-shape/shape-fault.ts';
import { runChangeWords, runInWords, shapeFaultSentence, touchesNotice } from '../../lib/words/rack-shape.ts';
import { makeRun } from '../site-builder.ts';

const run = makeRun();
const all = { first: 0, last: 1 };
const labels = plainLabels('a', 'L');

const FAULTS: ShapeFault[] = [
  { is: 'missing' },
  { is: 'not-read' },
  { is: 'out-of-range', from: 1, to: 9, of: 'count' },
  { is: 'out-of-range', from: 0, to: 9, of: 'mass' },
  { is: 'wrong-count', expected: 3, came: 2 },
  { is: 'no-opening', belowMm: 0 },
  { is: 'no-opening', belowMm: 1500 },
  { is: 'no-opening-above', aboveMm: 1500 },
  { is: 'unfit-id' },
  { is: 'run-known' },
  { is: 'bay-known', bay: 'a1' },
  { is: 'no-such', what: 'frame-type' },
  { is: 'no-levels' },
  { is: 'last-bay' },
  { is: 'wider-than-bay', bayMm: 2700 },
  { is: 'too-many-locations', most: 40_000 },
  { is: 'open-brace' },
  { is: 'unknown-part', came: 'bays', nearest: 'bay' },
  { is: 'unknown-part', came: 'x', nearest: null },
  { is: 'unknown-style', came: '0A' },
  { is: 'letters-below-one', part: 'level' },
  { is: 'label-twice', label: 'a-1', count: 2 },
  { is: 'label-elsewhere', label: 'a-1', run: 'b', count: 1 },
];

describe('the words of a shape', () => {
  it('tell every fault in whole sentences', () => {
    for (const fault of FAULTS) expect(shapeFaultSentence(fault, 'metric')).toMatch(/^[A-Z{":a].*[.?]$/);
  });

  it.each<[RunChange, RegExp]>([
    [{ kind: 'move-beam', range: all, level: 2, beamTopMm: 3200 }, /^Beam level 2 of all bays to 3.200.mm$/],
    [{ kind: 'move-beam', range: { first: 1, last: 1 }, level: 2, beamTopMm: 3200 }, /of bay a2 to/],
    [
      { kind: 'level-facts', range: all, level: 1, facts: { pairCapacityKg: null, decked: true } },
      /: pair capacity not known, decked$/,
    ],
    [
      { kind: 'bay-facts', range: all, facts: { clearWidthMm: 1800, maxBayLoadKg: null } },
      /^All bays: clear width 1.800.mm, bay load none stated$/,
    ],
    [
      { kind: 'frame-condition', range: { first: 0, last: 1 }, condition: 'red' },
      /^Frames a-f1 to a-f2 marked red$/,
    ],
    [
      { kind: 'insert-bay', before: 2, like: 1, clearWidthMm: 1800, name: '3', labels },
      /^A new bay 3 at the end$/,
    ],
    [{ kind: 'remove-bays', range: { first: 1, last: 1 } }, /^Bay a2 taken away$/],
    [{ kind: 'renumber', id: 'q', aisleId: 'aisle-1', labels }, /^New ids: run q/],
  ])('name a change: %j', (change, words) => {
    expect(runChangeWords(change, run, 'metric')).toMatch(words);
  });

  it('count a run', () => {
    expect(runInWords(run)).toBe('2 bays, 3 frames, 2 beam levels, 12 locations');
  });

  it('warn of the load notice wherever steel changes, and only there', () => {
    expect(touchesNotice({ kind: 'frame-type', range: all, typeId: 'f90' })).toBe(true);
    expect(touchesNotice({ kind: 'frame-condition', range: all, condition: 'red' })).toBe(false);
  });
});
