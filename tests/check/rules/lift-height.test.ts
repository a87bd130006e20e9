import { describe, expect, it } from 'vitest';
import { makeBay, makeLevel, makeLoad, makeRun, makeTruck } from '../../site-builder.ts';
import { core, stepOf } from '../judge.ts';

const levels = [makeLevel('a1', 0), makeLevel('a1', 1), makeLevel('a1', 2, { beamTopMm: 5400 })];
const high = { runs: [makeRun({ bays: [makeBay('a1', { levels }), makeBay('a2')] })] };

describe('lift-height', () => {
  // 5400 beam top + 100 entry + 150 clearance = 5650: fork height needed, common practice
  it.each([
    { maxLiftMm: 5600, outcome: 'fail', why: '50 mm short' },
    { maxLiftMm: 5649, outcome: 'fail', why: 'a millimetre short' },
    { maxLiftMm: 5650, outcome: 'pass', why: 'exactly enough' },
    { maxLiftMm: 5651, outcome: 'pass', why: 'a millimetre to spare' },
  ])('5650 mm needed, $maxLiftMm there: $outcome, $why', ({ maxLiftMm, outcome }) => {
    const step = stepOf('lift-height', { site: high, at: 'a1-2-1', truck: makeTruck({ maxLiftMm }) });
    expect(core(step)).toEqual({ outcome, need: 5650, have: maxLiftMm });
  });

  it('asks 100 mm of entry for a load without a pallet', () => {
    const site = {
      palletTypes: [{ id: 'p1200', depthMm: 1200, widthMm: 800, tareKg: 60, entryHeightMm: 90 }],
    };
    expect(stepOf('lift-height', { site }).need).toBe(1740);
    expect(stepOf('lift-height', { site, load: makeLoad({ palletType: null }) }).need).toBe(1750);
  });

  it('asks for the entry and the clearance on the floor too, and when taking down', () => {
    expect(stepOf('lift-height', { at: 'a1-0-1' }).need).toBe(250);
    expect(stepOf('lift-height', { context: { operation: 'retrieve' } }).need).toBe(1750);
  });

  it('takes the clearance from the policy', () => {
    const site = { site: { name: 'Harbour store', policy: { placingClearanceMm: 200 } } };
    expect(stepOf('lift-height', { site }).need).toBe(1800);
  });
});
