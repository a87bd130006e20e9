import { type HandLift, type MultiplierId, weightLimitKg } from './hand-lift.ts';

/** What one change would do: one multiplier at its best, or all that are out of bounds at once. */
export type Relief = {
  multipliers: readonly MultiplierId[];
  /** The limit with these multipliers at 1 and the others as they are, kg. */
  rwlKg: number;
  liftingIndex: number;
};

/**
 * Which change would lighten this lift most? Each multiplier that is below 1 put at its best, the others kept; most
 * relief first. A lift outside the bounds has one relief: all that is out of bounds put right together, since nothing
 * less gives an index. Empty: nothing about the lift can be made better, only the case can be made lighter.
 */
export function reliefOf(lift: HandLift): Relief[] {
  const changes: (readonly MultiplierId[])[] =
    lift.result.kind === 'outside'
      ? [lift.result.beyond]
      : lift.multipliers.filter(({ value }) => value < 1).map(({ id }) => [id]);
  return changes
    .map((multipliers) => {
      const rwlKg = weightLimitKg(
        lift.multipliers.map(({ id, value }) => (multipliers.includes(id) ? 1 : value)),
      );
      return { multipliers, rwlKg, liftingIndex: lift.task.massKg / rwlKg };
    })
    .sort((a, b) => b.rwlKg - a.rwlKg);
}
