import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compositeLiftingIndex, compositeOf } from '../../lib/hand-pick/composite-index.ts';
import { frequencyMultiplier } from '../../lib/hand-pick/frequency-multiplier.ts';
import { type HandLiftTask, judgeHandLift, rankOf } from '../../lib/hand-pick/hand-lift.ts';

const TASK: HandLiftTask = {
  massKg: 10,
  horizontalMm: 300,
  handHeightMm: 900,
  travelMm: 300,
  asymmetryDeg: 0,
  liftsPerMinute: 1,
  durationHours: 1,
  coupling: 'good',
};

describe('compositeLiftingIndex', () => {
  it('of one task is that task’s own lifting index', () => {
    const composite = compositeLiftingIndex([TASK]);
    expect(composite).toMatchObject({ kind: 'index' });
    if (composite.kind === 'index') expect(composite.cli).toBeCloseTo(rankOf(judgeHandLift(TASK)), 12);
  });

  it('of the same task split in two equals the whole', () => {
    // 1 + 2 lifts a minute of one and the same case are 3 lifts a minute of it
    const whole = rankOf(judgeHandLift({ ...TASK, liftsPerMinute: 3 }));
    const split = compositeLiftingIndex([TASK, { ...TASK, liftsPerMinute: 2 }]);
    if (split.kind !== 'index') throw new Error(split.kind);
    expect(split.cli).toBeCloseTo(whole, 12);
  });

  it('does not depend on the order in which the tasks are listed', () => {
    const tasks = [
      TASK,
      { ...TASK, massKg: 14, liftsPerMinute: 0.5 },
      { ...TASK, massKg: 5, liftsPerMinute: 3 },
    ];
    expect(compositeLiftingIndex([...tasks].reverse())).toEqual(compositeLiftingIndex(tasks));
  });

  it('counts every task for as long as the longest of them', () => {
    const composite = compositeLiftingIndex([
      { ...TASK, durationHours: 8 },
      { ...TASK, massKg: 1 },
    ]);
    if (composite.kind !== 'index') throw new Error(composite.kind);
    expect(composite.rows[0]!.stli).toBeCloseTo(rankOf(judgeHandLift({ ...TASK, durationHours: 8 })), 12);
  });

  it('names the tasks that cannot be rated by themselves', () => {
    expect(compositeLiftingIndex([TASK, { ...TASK, horizontalMm: 700 }])).toEqual({
      kind: 'outside',
      tasks: [{ at: 1, beyond: ['HM'] }],
    });
  });

  it.each([
    { liftsPerMinute: 4, kind: 'index' },
    { liftsPerMinute: 5, kind: 'index' },
    { liftsPerMinute: 6, kind: 'too-often' },
  ])(
    'of three tasks at $liftsPerMinute a minute each is $kind: the table ends at 15',
    ({ liftsPerMinute, kind }) => {
      const task = { ...TASK, liftsPerMinute };
      expect(compositeLiftingIndex([task, task, task]).kind).toBe(kind);
    },
  );

  it('refuses a job without tasks', () => {
    expect(() => compositeLiftingIndex([])).toThrow(RangeError);
  });

  it('is never below the heaviest task alone', () => {
    const row = fc.record({
      stli: fc.double({ min: 0.1, max: 3, noNaN: true }),
      fili: fc.double({ min: 0.1, max: 3, noNaN: true }),
      liftsPerMinute: fc.double({ min: 0, max: 4, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 5 }), (rows) => {
        const composite = compositeOf(rows, (liftsPerMinute) =>
          frequencyMultiplier({ liftsPerMinute, durationHours: 1, handHeightMm: 750 }),
        );
        return composite.kind !== 'index' || composite.cli >= composite.largestStli;
      }),
    );
  });
});
