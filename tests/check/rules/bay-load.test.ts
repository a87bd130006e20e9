import { describe, expect, it } from 'vitest';
import { makeBay, makeDrums, makeLoad, makeRun } from '../../site-builder.ts';
import { core, stepOf } from '../judge.ts';

const stock = ['a1-0-1', 'a1-1-2', 'a1-2-1', 'a1-2-2', 'a2-1-1'].map((location) => ({
  location,
  load: 'drums',
}));
const bay = (maxBayLoadKg: number | null) => ({
  runs: [makeRun({ bays: [makeBay('a1', { maxBayLoadKg }), makeBay('a2')] })],
});

describe('bay-load', () => {
  // three of the five pallets stand on beams of bay a1: 3 x 1060 + 800 = 3980; the floor and the next bay do not count
  it.each([
    { maxBayLoadKg: 3979, outcome: 'fail' },
    { maxBayLoadKg: 3980, outcome: 'thin' },
    { maxBayLoadKg: 3981, outcome: 'thin' },
  ])('3980 kg in a bay for $maxBayLoadKg kg: $outcome', ({ maxBayLoadKg, outcome }) => {
    expect(core(stepOf('bay-load', { site: { ...bay(maxBayLoadKg), stock } }))).toEqual({
      outcome,
      need: 3980,
      have: maxBayLoadKg,
    });
  });

  it('does not count the pallet being moved', () => {
    expect(stepOf('bay-load', { site: { stock }, context: { from: 'a1-2-2' } }).need).toBe(2920);
  });

  it('is unknown when a pallet that counts has no known mass, and not when one on the floor has none', () => {
    const loads = [makeDrums(), makeLoad({ id: 'mystery', grossKg: null })];
    const beam = { loads, stock: [{ location: 'a1-2-1', load: 'mystery' }] };
    const floor = { loads, stock: [{ location: 'a1-0-1', load: 'mystery' }] };
    expect(stepOf('bay-load', { site: beam })).toMatchObject({
      outcome: 'unknown',
      cause: 'stock-mass-unknown',
    });
    expect(stepOf('bay-load', { site: floor })).toMatchObject({ outcome: 'pass', need: 800 });
  });

  it('is not asked where the notice states none, on the floor, or when taking down', () => {
    expect(stepOf('bay-load', { site: bay(null) }).cause).toBe('notice-states-none');
    expect(stepOf('bay-load', { at: 'a1-0-1' }).cause).toBe('floor-level');
    expect(stepOf('bay-load', { context: { operation: 'retrieve' } }).cause).toBe('taking-down');
  });

  it('is unknown for a load of unknown mass', () => {
    expect(stepOf('bay-load', { load: makeLoad({ grossKg: null }) }).cause).toBe('mass-unknown');
  });
});
