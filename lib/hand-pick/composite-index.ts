import { frequencyMultiplier, KNUCKLE_HEIGHT_MM } from './frequency-multiplier.ts';
import { type HandLiftTask, judgeHandLift, type MultiplierId, weightLimitKg } from './hand-lift.ts';

/** One task of a job in the terms of the manual. */
export type CompositeRow = {
  /** Single-task lifting index: the task alone, its own frequency counted. */
  stli: number;
  /** Frequency-independent lifting index: the task as if lifted once (FM 1). */
  fili: number;
  liftsPerMinute: number;
};

export type CompositeIndex =
  | { kind: 'index'; cli: number; largestStli: number; rows: readonly CompositeRow[] }
  /** The tasks at these places in the given list cannot be rated by themselves. */
  | { kind: 'outside'; tasks: readonly { at: number; beyond: readonly MultiplierId[] }[] }
  /** Each task can be rated, but together they come too often for the frequency table. */
  | { kind: 'too-often'; liftsPerMinute: number };

/**
 * What is the lifting index of a job made of several different lifts? (94-110, 2.4, multi-task procedure, from memory.)
 *
 * The tasks' frequencies add up; every task counts for as long as the longest of them, and for the summed frequency
 * the lower-hands column is read as soon as one task has its hands below 75 cm: both lean to the higher index.
 * Throws a RangeError on an empty list.
 */
export function compositeLiftingIndex(tasks: readonly HandLiftTask[]): CompositeIndex {
  if (tasks.length === 0) throw new RangeError('a job has at least one task');
  const durationHours = Math.max(...tasks.map((task) => task.durationHours));
  const handHeightMm = Math.min(KNUCKLE_HEIGHT_MM, ...tasks.map((task) => task.handHeightMm));
  const lifts = tasks.map((task) => judgeHandLift({ ...task, durationHours }));
  const outside = lifts.flatMap(({ result }, at) =>
    result.kind === 'outside' ? [{ at, beyond: result.beyond }] : [],
  );
  if (outside.length > 0) return { kind: 'outside', tasks: outside };
  const rows = lifts.map(({ task, rwlKg, multipliers }) => {
    const onceKg = weightLimitKg(multipliers.filter(({ id }) => id !== 'FM').map(({ value }) => value));
    return { stli: task.massKg / rwlKg, fili: task.massKg / onceKg, liftsPerMinute: task.liftsPerMinute };
  });
  return compositeOf(rows, (liftsPerMinute) =>
    frequencyMultiplier({ liftsPerMinute, durationHours, handHeightMm }),
  );
}

/**
 * CLI = STLI1 + sum over the further tasks n of FILIn x (1/FM(1..n) - 1/FM(1..n-1)), tasks in falling order of STLI,
 * FM(1..n) read at the sum of the first n frequencies.
 *
 * @example rows 1.6/1.5 at 1, 1.1/1.0 at 2 and 0.8/0.67 at 4 lifts a minute, up to 1 hour //=> 1.87
 */
export function compositeOf(
  rows: readonly CompositeRow[],
  multiplierAt: (liftsPerMinute: number) => number,
): CompositeIndex {
  const sorted = [...rows].sort((a, b) => b.stli - a.stli);
  let liftsPerMinute = 0;
  let before = 0;
  let cli = 0;
  for (const [n, row] of sorted.entries()) {
    liftsPerMinute += row.liftsPerMinute;
    const multiplier = multiplierAt(liftsPerMinute);
    if (multiplier === 0) return { kind: 'too-often', liftsPerMinute: totalOf(rows) };
    cli += n === 0 ? row.stli : row.fili * (1 / multiplier - 1 / before);
    before = multiplier;
  }
  return { kind: 'index', cli, largestStli: sorted[0]!.stli, rows: sorted };
}

function totalOf(rows: readonly CompositeRow[]): number {
  return rows.reduce((sum, row) => sum + row.liftsPerMinute, 0);
}
