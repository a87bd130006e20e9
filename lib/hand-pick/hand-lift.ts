import type { HandPick } from '../model/load.ts';
import { frequencyMultiplier } from './frequency-multiplier.ts';
import {
  asymmetryMultiplier,
  couplingMultiplier,
  distanceMultiplier,
  horizontalMultiplier,
  verticalMultiplier,
} from './multipliers.ts';

/** LC: what may be lifted when nothing takes anything off (94-110: 23 kg; 51 lb in its US form). */
export const LOAD_CONSTANT_KG = 23;

/** One lift of a case by two hands: the inputs of the equation, heights above the floor the person stands on. */
export type HandLiftTask = Pick<
  HandPick,
  'massKg' | 'horizontalMm' | 'asymmetryDeg' | 'liftsPerMinute' | 'durationHours' | 'coupling'
> & {
  /** V: the hands at the end of the lift that is judged. */
  handHeightMm: number;
  /** D: how far the hands move up or down. */
  travelMm: number;
};

export const MULTIPLIER_IDS = ['HM', 'VM', 'DM', 'AM', 'FM', 'CM'] as const;
export type MultiplierId = (typeof MULTIPLIER_IDS)[number];

export type Multiplier = { id: MultiplierId; value: number };

/** One lift by hand judged, with its working. */
export type HandLift = {
  task: HandLiftTask;
  /** In the order of MULTIPLIER_IDS. */
  multipliers: readonly Multiplier[];
  /** Recommended weight limit; 0 where a multiplier is 0. */
  rwlKg: number;
  result:
    | { kind: 'index'; liftingIndex: number }
    /** At least one multiplier is 0: no mass is recommended, so no index can be said. */
    | { kind: 'outside'; beyond: readonly MultiplierId[] };
};

/**
 * What does the revised NIOSH lifting equation say of this lift?
 *
 * RWL = 23 kg x HM x VM x DM x AM x FM x CM; LI = mass / RWL (NIOSH publication 94-110, 1994, revised 2021).
 * Multipliers are not rounded: the manual's printed examples round each to two places and so differ by a percent or two.
 */
export function judgeHandLift(task: HandLiftTask): HandLift {
  const multipliers: Multiplier[] = [
    { id: 'HM', value: horizontalMultiplier(task.horizontalMm) },
    { id: 'VM', value: verticalMultiplier(task.handHeightMm) },
    { id: 'DM', value: distanceMultiplier(task.travelMm) },
    { id: 'AM', value: asymmetryMultiplier(task.asymmetryDeg) },
    { id: 'FM', value: frequencyMultiplier(task) },
    { id: 'CM', value: couplingMultiplier(task.coupling, task.handHeightMm) },
  ];
  const rwlKg = weightLimitKg(multipliers.map(({ value }) => value));
  const beyond = multipliers.filter(({ value }) => value === 0).map(({ id }) => id);
  const result: HandLift['result'] =
    beyond.length > 0 ? { kind: 'outside', beyond } : { kind: 'index', liftingIndex: task.massKg / rwlKg };
  return { task, multipliers, rwlKg, result };
}

/** The load constant times these multipliers, kg. */
export function weightLimitKg(multipliers: readonly number[]): number {
  return multipliers.reduce((product, value) => product * value, LOAD_CONSTANT_KG);
}

/** Is this lift more than the equation recommends? A lifting index of exactly 1 is not; a lift outside its bounds is. */
export function exceedsRecommended(lift: HandLift): boolean {
  return lift.result.kind === 'outside' || lift.result.liftingIndex > 1;
}

/** Lifting index for sorting and comparing: a lift outside the bounds ranks above every index. */
export function rankOf(lift: HandLift): number {
  return lift.result.kind === 'outside' ? Number.POSITIVE_INFINITY : lift.result.liftingIndex;
}
