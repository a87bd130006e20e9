import type { HandLift, HandLiftTask, MultiplierId } from '../hand-pick/hand-lift.ts';
import { exceedsRecommended } from '../hand-pick/hand-lift.ts';
import {
  FURTHEST_HANDS_MM,
  HIGHEST_HANDS_MM,
  LONGEST_TRAVEL_MM,
  NEAREST_HANDS_MM,
  SHORTEST_TRAVEL_MM,
  WIDEST_TWIST_DEG,
} from '../hand-pick/multipliers.ts';
import type { Relief } from '../hand-pick/relief.ts';
import type { ZoneId } from '../hand-pick/zone-filter.ts';
import { type DisplayUnits, formatLength, formatMass } from '../units/format-quantity.ts';

/** What the equation takes for granted; a lift that is otherwise is not judged by it. */
export const HAND_PICK_CAUTIONS: readonly string[] = [
  'The equation holds for smooth lifts with two hands, standing, on a good floor, in a moderate climate. It does not hold for one hand, for sitting or kneeling, for little room, for unstable or hot loads, for pushing, pulling, carrying, shovelling or wheelbarrows, nor for fast lifting (from memory).',
  'Lifting and lowering count alike. Carrying more than a step or two is not in it.',
  'The frequency table and the bound on travel are from memory of publication 94-110: verify them before you rely on them.',
  'An index at or below 1 is no promise. Persons differ; a competent person and the one who lifts have the last word.',
];

/** The multiplier's name in words. */
export function multiplierName(id: MultiplierId): string {
  switch (id) {
    case 'HM':
      return 'Hands out';
    case 'VM':
      return 'Hands up';
    case 'DM':
      return 'Travel';
    case 'AM':
      return 'Twist';
    case 'FM':
      return 'How often';
    case 'CM':
      return 'Hold';
  }
}

/** What the multiplier is read from, and how. */
export function multiplierWorking(id: MultiplierId, task: HandLiftTask, units: DisplayUnits): string {
  const length = (mm: number) => formatLength(mm, units, 'up');
  switch (id) {
    case 'HM':
      return `25 / H, H = ${centimetres(task.horizontalMm)} cm: hands ${length(task.horizontalMm)} ahead of the ankles; 1 up to ${length(NEAREST_HANDS_MM)}, 0 beyond ${length(FURTHEST_HANDS_MM)}`;
    case 'VM':
      return `1 − 0.003 |V − 75|, V = ${centimetres(task.handHeightMm)} cm: hands ${length(task.handHeightMm)} above the floor; 0 above ${length(HIGHEST_HANDS_MM)}`;
    case 'DM':
      return `0.82 + 4.5 / D, D = ${centimetres(task.travelMm)} cm: hands travel ${length(task.travelMm)} up or down; 1 up to ${length(SHORTEST_TRAVEL_MM)}, 0 beyond ${length(LONGEST_TRAVEL_MM)}`;
    case 'AM':
      return `1 − 0.0032 A, A = ${task.asymmetryDeg}°; 0 beyond ${WIDEST_TWIST_DEG}°`;
    case 'FM':
      return `Table 5: ${task.liftsPerMinute} lifts a minute for ${task.durationHours} h, read at the next higher row`;
    case 'CM':
      return `Table 7: a ${task.coupling} hold, hands ${task.handHeightMm >= 750 ? 'at 75 cm or above' : 'below 75 cm'}`;
  }
}

/** The answer as a label. */
export function handLiftWord(lift: HandLift): string {
  if (lift.result.kind === 'outside') return 'No weight recommended';
  return exceedsRecommended(lift) ? 'Above the limit' : 'Within the limit';
}

/** The lifting index for reading: rounded up, so that it never reads better than it is. */
export function indexWords(liftingIndex: number): string {
  const snapped = Number((liftingIndex * 100).toFixed(6));
  return (Math.ceil(snapped) / 100).toFixed(2);
}

/** The answer in one sentence. */
export function handLiftSentence(lift: HandLift, units: DisplayUnits): string {
  const mass = formatMass(lift.task.massKg, units, 'up');
  if (lift.result.kind === 'outside') {
    const names = lift.result.beyond.map((id) => multiplierName(id).toLowerCase()).join(' and ');
    return `Nothing of any mass is recommended to be lifted so (${names} outside the bounds): the case weighs ${mass}.`;
  }
  const limit = formatMass(lift.rwlKg, units, 'down');
  return `The case weighs ${mass}; up to ${limit} is recommended: index ${indexWords(lift.result.liftingIndex)}.`;
}

/** What to change for one relief, and what comes of it. */
export function reliefSentence(relief: Relief, lift: HandLift, units: DisplayUnits): string {
  const changes = relief.multipliers.map((id) => changeWords(id, lift.task, units));
  const said = changes.map((change, at) => (at === 0 ? change : lowerFirst(change))).join(', and ');
  const limit = formatMass(relief.rwlKg, units, 'down');
  return `${said}: index ${indexWords(relief.liftingIndex)}, ${limit} recommended.`;
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

function changeWords(id: MultiplierId, task: HandLiftTask, units: DisplayUnits): string {
  switch (id) {
    case 'HM':
      return `Bring the case within ${formatLength(NEAREST_HANDS_MM, units, 'down')} of the ankles`;
    case 'VM':
      return `Bring the hands to knuckle height, ${formatLength(750, units, 'down')}`;
    case 'DM':
      return `Let the hands travel no more than ${formatLength(SHORTEST_TRAVEL_MM, units, 'down')} up or down`;
    case 'AM':
      return 'Turn the feet, not the trunk';
    case 'FM':
      return 'Lift at most once in five minutes, for an hour at most';
    case 'CM':
      return task.coupling === 'good' ? 'Keep the hold good' : 'Give the case handles or cut-outs';
  }
}

/** A zone of the simple filter. */
export function zoneWords(zone: ZoneId): string {
  switch (zone) {
    case 'above-shoulder':
      return 'above the shoulder';
    case 'elbow-to-shoulder':
      return 'elbow to shoulder';
    case 'knuckle-to-elbow':
      return 'knuckle to elbow';
    case 'lower-leg-to-knuckle':
      return 'mid lower leg to knuckle';
    case 'below-lower-leg':
      return 'below mid lower leg';
  }
}

function centimetres(mm: number): number {
  return Number((mm / 10).toFixed(1));
}
