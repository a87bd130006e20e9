import { describe, expect, it } from 'vitest';
import { makeBay, makeDrums, makeLevel, makeLoad, makeRun } from '../../site-builder.ts';
import { core, stepOf } from '../judge.ts';

const beside = { stock: [{ location: 'a1-1-2', load: 'drums' }] }; // 1060 kg
function level(overrides: Parameters<typeof makeLevel>[2]) {
  return {
    runs: [makeRun({ bays: [makeBay('a1', { levels: [makeLevel('a1', 1, overrides)] }), makeBay('a2')] })],
  };
}

describe('beam-level', () => {
  it.each([
    { grossKg: 1339, outcome: 'thin' },
    { grossKg: 1340, outcome: 'thin' },
    { grossKg: 1341, outcome: 'fail' },
  ])('$grossKg kg beside 1060 kg on a pair for 2400 kg: $outcome', ({ grossKg, outcome }) => {
    expect(core(stepOf('beam-level', { site: beside, load: makeLoad({ grossKg }) }))).toEqual({
      outcome,
      need: grossKg + 1060,
      have: 2400,
    });
  });

  it('counts neither the pallet being moved nor, with the racks empty, any', () => {
    expect(stepOf('beam-level', { site: beside, context: { from: 'a1-1-2' } }).need).toBe(800);
    expect(stepOf('beam-level', { site: beside, context: { stock: 'empty' } }).need).toBe(800);
  });

  it('counts both rows of a double-deep level on the one figure', () => {
    const site = {
      ...level({ depthPositions: 2, locations: ['f1', 'f2', 'r1', 'r2'] }),
      stock: [
        { location: 'f2', load: 'drums' },
        { location: 'r2', load: 'drums' },
      ],
    };
    expect(stepOf('beam-level', { site, at: 'f1' }).need).toBe(800 + 2 * 1060);
  });

  it('names what it does not know: the pair first, then what stands there, then the load', () => {
    const unweighed = makeLoad({ grossKg: null });
    const mystery = { loads: [makeDrums({ items: null })], ...beside };
    expect(
      core(
        stepOf('beam-level', { site: { ...level({ pairCapacityKg: null }), ...mystery }, load: unweighed }),
      ),
    ).toEqual({
      outcome: 'unknown',
      need: null,
      have: null,
      cause: 'pair-capacity-unknown',
    });
    expect(stepOf('beam-level', { site: level({ pairCapacityKg: null }) })).toMatchObject({
      need: 800,
      have: null,
    });
    expect(stepOf('beam-level', { site: mystery, load: unweighed }).cause).toBe('stock-mass-unknown');
    expect(stepOf('beam-level', { site: mystery })).toMatchObject({
      need: null,
      have: 2400,
      cause: 'stock-mass-unknown',
    });
    expect(stepOf('beam-level', { load: unweighed }).cause).toBe('mass-unknown');
  });

  it('is not asked on the floor or when taking down', () => {
    expect(stepOf('beam-level', { at: 'a1-0-1' }).cause).toBe('floor-level');
    expect(stepOf('beam-level', { context: { operation: 'retrieve' } }).cause).toBe('taking-down');
  });

  it('says how many pallets it counted and what they weigh', () => {
    const from = stepOf('beam-level', { site: beside }).needFrom;
    expect(from).toContainEqual({
      of: 'stock',
      subject: 'a1 level 1',
      field: 'pallets',
      value: 1,
      unit: 'count',
    });
    expect(from).toContainEqual({
      of: 'stock',
      subject: 'a1 level 1',
      field: 'assessedKg',
      value: 1060,
      unit: 'kg',
    });
  });
});
