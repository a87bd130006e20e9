import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  exceedsRecommended,
  type HandLiftTask,
  judgeHandLift,
  rankOf,
} from '../../lib/hand-pick/hand-lift.ts';
import { reliefOf } from '../../lib/hand-pick/relief.ts';

const BEST: HandLiftTask = {
  massKg: 23,
  horizontalMm: 250,
  handHeightMm: 750,
  travelMm: 250,
  asymmetryDeg: 0,
  liftsPerMinute: 0.2,
  durationHours: 1,
  coupling: 'good',
};

describe('judgeHandLift', () => {
  it.each([
    { massKg: 22.9, exceeds: false },
    { massKg: 23, exceeds: false },
    { massKg: 23.1, exceeds: true },
  ])('with nothing taken off, $massKg kg exceeds the 23 kg limit: $exceeds', ({ massKg, exceeds }) => {
    const lift = judgeHandLift({ ...BEST, massKg });
    expect(lift.rwlKg).toBe(23);
    expect(exceedsRecommended(lift)).toBe(exceeds);
  });

  it('shows each multiplier of the working and their product', () => {
    // 0.625 x 0.865 x (0.82 + 4.5/70) x 0.904 x 0.75 x 0.95, by hand
    const lift = judgeHandLift({
      massKg: 10,
      horizontalMm: 400,
      handHeightMm: 300,
      travelMm: 700,
      asymmetryDeg: 30,
      liftsPerMinute: 1,
      durationHours: 8,
      coupling: 'fair',
    });
    const values = Object.fromEntries(lift.multipliers.map(({ id, value }) => [id, value]));
    expect(values.HM).toBeCloseTo(0.625, 12);
    expect(values.VM).toBeCloseTo(0.865, 12);
    expect(values.DM).toBeCloseTo(0.8842857, 6);
    expect(values.AM).toBeCloseTo(0.904, 12);
    expect(values).toMatchObject({ FM: 0.75, CM: 0.95 });
    expect(lift.rwlKg).toBeCloseTo(7.0822, 4);
    expect(rankOf(lift)).toBeCloseTo(10 / 7.0822, 4);
  });

  it('recommends no weight, and says no index, past a bound', () => {
    const lift = judgeHandLift({ ...BEST, massKg: 1, horizontalMm: 640, asymmetryDeg: 140 });
    expect(lift.rwlKg).toBe(0);
    expect(lift.result).toEqual({ kind: 'outside', beyond: ['HM', 'AM'] });
    expect(exceedsRecommended(lift)).toBe(true);
  });

  it('never gives a limit above 23 kg, nor one that is not a number', () => {
    fc.assert(
      fc.property(anyTask, (task) => {
        const { rwlKg } = judgeHandLift(task);
        return rwlKg >= 0 && rwlKg <= 23;
      }),
    );
  });

  it('never gains from a longer reach, a wider twist, a higher rate or a longer time', () => {
    fc.assert(
      fc.property(anyTask, fc.double({ min: 0, max: 400, noNaN: true }), (task, more) => {
        const { rwlKg } = judgeHandLift(task);
        const harder: Partial<HandLiftTask>[] = [
          { horizontalMm: task.horizontalMm + more },
          { asymmetryDeg: task.asymmetryDeg + more },
          { liftsPerMinute: task.liftsPerMinute + more },
          { durationHours: task.durationHours + more },
          { travelMm: task.travelMm + more },
        ];
        return harder.every((change) => judgeHandLift({ ...task, ...change }).rwlKg <= rwlKg);
      }),
    );
  });
});

describe('reliefOf', () => {
  it('puts the change that helps most first and leaves out what is already at its best', () => {
    const relief = reliefOf(judgeHandLift({ ...BEST, horizontalMm: 500, handHeightMm: 350 }));
    expect(relief.map(({ multipliers }) => multipliers)).toEqual([['HM'], ['VM']]);
    expect(relief[0]!.rwlKg).toBeCloseTo(23 * 0.88, 10);
    expect(relief[0]!.liftingIndex).toBeCloseTo(1 / 0.88, 10);
  });

  it('puts right all that is out of bounds at once, since nothing less gives an index', () => {
    const relief = reliefOf(judgeHandLift({ ...BEST, horizontalMm: 640, asymmetryDeg: 140, travelMm: 1000 }));
    expect(relief.map(({ multipliers }) => multipliers)).toEqual([['HM', 'AM']]);
    // 0.82 + 4.5/100 is left
    expect(relief[0]!.rwlKg).toBeCloseTo(23 * 0.865, 10);
  });

  it('has nothing to offer for the best lift there is', () => {
    expect(reliefOf(judgeHandLift(BEST))).toEqual([]);
  });
});

const anyTask = fc.record({
  massKg: fc.double({ min: 0.1, max: 60, noNaN: true }),
  horizontalMm: fc.double({ min: 1, max: 900, noNaN: true }),
  handHeightMm: fc.double({ min: 0, max: 2500, noNaN: true }),
  travelMm: fc.double({ min: 0, max: 2500, noNaN: true }),
  asymmetryDeg: fc.double({ min: 0, max: 180, noNaN: true }),
  liftsPerMinute: fc.double({ min: 0, max: 20, noNaN: true }),
  durationHours: fc.double({ min: 0.1, max: 8, noNaN: true }),
  coupling: fc.constantFrom('good' as const, 'fair' as const, 'poor' as const),
});
