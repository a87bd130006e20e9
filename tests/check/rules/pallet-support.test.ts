import { describe, expect, it } from 'vitest';
import { makeBay, makeLevel, makeLoad, makeRun } from '../../site-builder.ts';
import { core, stepOf } from '../judge.ts';

describe('pallet-support', () => {
  it.each([
    { frameDepthMm: 1199, outcome: 'pass' },
    { frameDepthMm: 1200, outcome: 'pass' },
    { frameDepthMm: 1201, outcome: 'fail' },
  ])('a 1200 mm pallet on frames of $frameDepthMm mm: $outcome', ({ frameDepthMm, outcome }) => {
    const site = { runs: [makeRun({ frameDepthMm })] };
    expect(core(stepOf('pallet-support', { site }))).toEqual({ outcome, need: frameDepthMm, have: 1200 });
  });

  it('passes a 1200 mm pallet on 1100 mm frames, 50 mm over at each side (SEMA advice)', () => {
    expect(stepOf('pallet-support')).toMatchObject({ outcome: 'pass', need: 1100, have: 1200 });
  });

  it("goes by the pallet, not the load, and by the load's depth without a pallet", () => {
    expect(stepOf('pallet-support', { load: makeLoad({ depthMm: 1000 }) }).have).toBe(1200);
    expect(stepOf('pallet-support', { load: makeLoad({ depthMm: 1000, palletType: null }) })).toMatchObject({
      outcome: 'fail',
      have: 1000,
    });
  });

  it('is not asked on the floor, on a decked level or when taking down', () => {
    const levels = [makeLevel('a1', 0), makeLevel('a1', 1, { decked: true })];
    const site = { runs: [makeRun({ bays: [makeBay('a1', { levels }), makeBay('a2')] })] };
    expect(stepOf('pallet-support', { at: 'a1-0-1' }).cause).toBe('floor-level');
    expect(stepOf('pallet-support', { site }).cause).toBe('decked');
    expect(stepOf('pallet-support', { context: { operation: 'retrieve' } }).cause).toBe('taking-down');
  });
});
