import { type HandLift, type MultiplierId, weightLimitKg } from './hand-lift.ts';

/** What one change alone would do. */
export type Relief = {
  multiplier: MultiplierId;
  /** The limit with this multiplier at 1 and the others as they are, kg. */
  rwlKg: number;
  /** The index then; null while another multiplier is still 0. */
  liftingIndex: number | null;
};

/**
 * Which single change would lighten this lift most? Each multiplier that is below 1 put at its best, the others kept.
 * Most relief first. Empty: nothing about the lift can be made better, only the case can be made lighter.
 */
export function reliefOf(lift: HandLift): Relief[] {
  return lift.multipliers
    .filter(({ value }) => value < 1)
    .map(({ id }) => {
      const rwlKg = weightLimitKg(lift.multipliers.map((other) => (other.id === id ? 1 : other.value)));
      return { multiplier: id, rwlKg, liftingIndex: rwlKg === 0 ? null : lift.task.massKg / rwlKg };
    })
    .sort((a, b) => b.rwlKg - a.rwlKg);
}
