import { describe, expect, it } from 'vitest';
import { leastRoom } from '../../lib/check/least-room.ts';
import { makeBay, makeCounterbalance, makeLevel, makeLoad, makeRun, makeTruck } from '../site-builder.ts';
import { answerTo } from './judge.ts';

/** What is asked weighs 800 kg unless it says otherwise: room is the most less 800. */
describe('the mass rule that leaves the least', () => {
  it.each([
    { why: 'the notice', ask: {}, rule: 'unit-load', roomKg: 400 },
    { why: 'the plate at the higher level', ask: { at: 'a1-2-1' }, rule: 'plate-capacity', roomKg: 200 },
    {
      why: 'the plate, tilted forward',
      ask: { at: 'a1-0-1', truck: makeCounterbalance() },
      rule: 'tilt-capacity',
      roomKg: 900,
    },
    {
      why: 'both fork arms: 2 x (450 - 400)',
      ask: { truck: makeTruck({ forks: { lengthMm: 1150, armCapacityKg: 450, armLoadCentreMm: 600 } }) },
      rule: 'fork-arms',
      roomKg: 100,
    },
    {
      why: 'the bay: 1500 - 260 - 800',
      ask: {
        load: makeLoad({ grossKg: 400 }),
        site: {
          runs: [makeRun({ bays: [makeBay('a1', { maxBayLoadKg: 1500 }), makeBay('a2')] })],
          stock: [{ location: 'a1-2-2', load: 'drums' }],
        },
      },
      rule: 'bay-load',
      roomKg: 40,
    },
    {
      why: 'the frame in the middle: 2 x 1000 - 1060 - 800',
      ask: {
        site: {
          frameTypes: [{ id: 'f90', ratings: [{ maxGapMm: 1500, capacityKg: 1000 }] }],
          stock: [{ location: 'a2-2-2', load: 'drums' }],
        },
      },
      rule: 'frame-load',
      roomKg: 140,
    },
  ])('is $rule with $roomKg kg: $why', ({ ask, rule, roomKg }) => {
    const answer = answerTo(ask);
    expect(leastRoom(answer)).toEqual({ rule, roomKg, mostKg: answer.mostKg });
  });

  it('is the first of the table where two leave the same', () => {
    const levels = [makeLevel('a1', 1, { maxUnitKg: 1200, pairCapacityKg: 1200 })];
    const site = { runs: [makeRun({ bays: [makeBay('a1', { levels }), makeBay('a2')] })] };
    expect(leastRoom(answerTo({ site }))?.rule).toBe('unit-load');
  });

  it('is the other frame where that one leaves less than the frame of higher use', () => {
    // left: 900 of 1000 used, 200 left for this load; right: 430 of 500 used, 140 left; the step shows the left one
    const frame = { rule: 'frame-load', outcome: 'pass', need: 900, have: 1000, unit: 'kg' } as const;
    const beams = { rule: 'beam-level', outcome: 'pass', need: 800, have: 960, unit: 'kg' } as const;
    const steps = [beams, frame].map((step) => ({ ...step, needFrom: [], haveFrom: [] }));
    expect(leastRoom({ steps, assessedKg: 800, mostKg: 940 })).toEqual({
      rule: 'frame-load',
      roomKg: 140,
      mostKg: 940,
    });
  });

  it('cannot be said without a mass, a most, or a mass rule that was asked', () => {
    expect(leastRoom(answerTo({ load: makeLoad({ grossKg: null }) }))).toBeNull();
    expect(leastRoom({ ...answerTo(), mostKg: null })).toBeNull();
    expect(leastRoom({ ...answerTo(), steps: [] })).toBeNull();
  });
});
