import { describe, expect, it } from 'vitest';
import { makeBay, makeDrums, makeFrame, makeLevel, makeLoad, makeRun } from '../../site-builder.ts';
import { core, stepOf } from '../judge.ts';

const types = (left: number, middle: number, right: number) => ({
  frameTypes: [
    { id: 'left', ratings: [{ maxGapMm: 1500, capacityKg: left }] },
    { id: 'middle', ratings: [{ maxGapMm: 1500, capacityKg: middle }] },
    { id: 'right', ratings: [{ maxGapMm: 1500, capacityKg: right }] },
  ],
});
const frames = ['left', 'middle', 'right'].map((typeId) => makeFrame({ id: `a-${typeId}`, typeId }));
const runs = [makeRun({ frames })];
const stock = ['a1-2-1', 'a2-1-1', 'a2-0-1'].map((location) => ({ location, load: 'drums' }));

describe('frame-load', () => {
  // in bay a1: the left frame carries (1060 + 800) / 2 = 930, the middle one (2 x 1060 + 800) / 2 = 1460
  it.each([
    { middle: 1459, outcome: 'fail' },
    { middle: 1460, outcome: 'thin' },
    { middle: 1461, outcome: 'thin' },
    { middle: 1625, outcome: 'pass' },
  ])('1460 kg on a middle frame for $middle kg: $outcome', ({ middle, outcome }) => {
    const step = stepOf('frame-load', { site: { ...types(9000, middle, 9000), runs, stock } });
    expect(core(step)).toEqual({ outcome, need: 1460, have: middle });
  });

  it('takes half of one bay at the end of a run', () => {
    const step = stepOf('frame-load', { site: { ...types(929, 9000, 9000), runs, stock } });
    expect(core(step)).toEqual({ outcome: 'fail', need: 930, have: 929 });
  });

  it('carries 3000 kg at the end and 6000 kg inside with 6000 kg on each bay (statics)', () => {
    const loads = [makeLoad({ id: 'block', grossKg: 1500 })];
    const full = ['a1-1-2', 'a1-2-1', 'a1-2-2', 'a2-1-1', 'a2-1-2', 'a2-2-1', 'a2-2-2'];
    const site = { runs, loads, stock: full.map((location) => ({ location, load: 'block' })) };
    const ask = { load: makeLoad({ id: 'block', grossKg: 1500 }) };
    const inner = stepOf('frame-load', { ...ask, site: { ...site, ...types(9000, 6500, 9000) } });
    const end = stepOf('frame-load', { ...ask, site: { ...site, ...types(3000, 60000, 9000) } });
    expect([inner.need, end.need]).toEqual([6000, 3000]);
  });

  it('goes by the worse use of the two, the left on a tie', () => {
    const worse = stepOf('frame-load', { site: { ...types(1000, 9000, 9000), runs, stock } });
    expect(worse).toMatchObject({ need: 930, have: 1000 });
    const tie = stepOf('frame-load', { site: { ...types(5000, 5000, 5000), runs } });
    expect(tie.haveFrom[0]?.subject).toBe('left');
  });

  it('fails if either fails, though the other is unknown', () => {
    const step = stepOf('frame-load', {
      site: {
        frameTypes: [
          { id: 'left', ratings: [] },
          { id: 'middle', ratings: [{ maxGapMm: 1500, capacityKg: 300 }] },
          { id: 'right', ratings: [] },
        ],
        runs,
      },
    });
    expect(core(step)).toEqual({ outcome: 'fail', need: 400, have: 300 });
  });

  it.each([
    { maxGapMm: 1499, outcome: 'unknown', have: null, cause: 'gap-beyond-frame-ratings' },
    { maxGapMm: 1500, outcome: 'pass', have: 5000 },
    { maxGapMm: 1501, outcome: 'pass', have: 5000 },
  ])('a table to $maxGapMm mm for a gap of 1500 mm: $outcome', ({ maxGapMm, outcome, have, cause }) => {
    const frameTypes = [{ id: 'f90', ratings: [{ maxGapMm, capacityKg: 5000 }] }];
    const step = stepOf('frame-load', { site: { frameTypes } });
    expect(core(step)).toEqual({ outcome, need: 400, have, ...(cause ? { cause } : {}) });
  });

  it('reads the table at the largest gap of both bays beside a frame', () => {
    const wide = makeBay('a2', { levels: [makeLevel('a2', 0), makeLevel('a2', 1, { beamTopMm: 1900 })] });
    const site = { runs: [makeRun({ bays: [makeBay('a1'), wide] })] };
    expect(stepOf('frame-load', { site })).toMatchObject({ have: 7000 });
  });

  it('names a limit before the load when both are unknown, on whichever side it is', () => {
    const load = makeLoad({ grossKg: null });
    const right = { ...types(5000, 5000, 5000), runs };
    right.frameTypes[1]!.ratings = [];
    expect(stepOf('frame-load', { site: right, load }).cause).toBe('gap-beyond-frame-ratings');
    expect(stepOf('frame-load', { load }).cause).toBe('mass-unknown');
  });

  it('is unknown when a pallet of either bay has no known mass', () => {
    const site = { loads: [makeDrums({ items: null })], stock: [{ location: 'a2-2-2', load: 'drums' }] };
    expect(stepOf('frame-load', { site })).toMatchObject({
      outcome: 'unknown',
      need: null,
      have: 9000,
      cause: 'stock-mass-unknown',
    });
  });

  it('is not asked on the floor or when taking down', () => {
    expect(stepOf('frame-load', { at: 'a1-0-1' }).cause).toBe('floor-level');
    expect(stepOf('frame-load', { context: { operation: 'retrieve' } }).cause).toBe('taking-down');
  });
});
