import type { Origin, Step } from '../check/step.ts';
import type { RuleId } from '../model/rule-ids.ts';
import { type DisplayUnits, formatLength } from '../units/format-quantity.ts';
import { counted } from './plain-words.ts';

/** What a step needs, as a clause around the shown number. */
export function needClause(step: Step, need: string): string {
  switch (step.rule) {
    case 'plate-capacity':
    case 'tilt-capacity':
    case 'unit-load':
      return `${need} assessed`;
    case 'fork-arms':
      return `${need} on each arm`;
    case 'beam-level':
    case 'bay-load':
      return `${need} with ${standing(step)}`;
    case 'frame-load':
      return `${need} on the frame, half of this load and of ${standing(step)} in the bays beside it`;
    case 'depth-reach':
      return `the location is in the ${need}`;
    case 'lift-height':
      return `the forks must rise to ${need}`;
    case 'aisle-turn':
      return `truck and load need ${need} to turn`;
    case 'centre-height':
      return `centre of gravity ${need} above the underside of the load`;
    case 'fork-length':
      return `forks of ${need} needed under this load`;
    case 'mast-overhead':
      return `the mast, with its margin, needs ${need}`;
    case 'load-overhead':
      return `the raised load, with its margin, needs ${need}`;
    case 'opening-height':
      return `the load with its clearance is ${need} high`;
    case 'sprinkler-clearance':
      return `the load with its clearance reaches ${need}`;
    case 'opening-width':
      return `a row of such loads with its clearances is ${need} wide`;
    case 'pallet-support':
      return `the frame is ${need} deep`;
    case 'truck-fit':
    case 'operator-authorised':
    case 'slot-free':
    case 'rack-condition':
      return `needed: ${need}`;
  }
}

/** What a step has, as a clause around the shown number. */
export function haveClause(step: Step, have: string, units: DisplayUnits): string {
  switch (step.rule) {
    case 'plate-capacity':
    case 'tilt-capacity':
      return `plate proves ${have} ${plateLine(step.haveFrom, units)}`;
    case 'fork-arms':
      return `each arm carries ${have} at this load centre`;
    case 'unit-load':
      return `the notice allows ${have}`;
    case 'beam-level':
      return `the pair of beams carries ${have}`;
    case 'bay-load':
      return `the bay carries ${have}`;
    case 'frame-load':
      return `the frame carries ${have}${gapClause(step.haveFrom, units)}`;
    case 'depth-reach':
      return `the truck reaches the ${have}`;
    case 'lift-height':
      return `the truck lifts to ${have}`;
    case 'aisle-turn':
      return `the aisle is ${have} clear`;
    case 'centre-height':
      return `the plate allows ${have} above the forks`;
    case 'fork-length':
      return `the forks are ${have} long`;
    case 'mast-overhead':
    case 'load-overhead':
      return `${have} is clear over the aisle`;
    case 'opening-height':
      return `the opening is ${have} high`;
    case 'sprinkler-clearance':
      return `the sprinklers are at ${have}`;
    case 'opening-width':
      return `the bay is ${have} clear`;
    case 'pallet-support':
      return `the pallet is ${have} deep`;
    case 'truck-fit':
    case 'operator-authorised':
    case 'slot-free':
    case 'rack-condition':
      return `found: ${have}`;
  }
}

function standing(step: Step): string {
  const count = step.needFrom.find(({ of, field }) => of === 'stock' && field === 'pallets')?.value;
  return counted(
    typeof count === 'number' ? count : 0,
    standingNoun(step.rule),
    standingNoun(step.rule, 'many'),
  );
}

function standingNoun(rule: RuleId, number: 'one' | 'many' = 'one'): string {
  const pallet = number === 'one' ? 'pallet' : 'pallets';
  return rule === 'frame-load' ? `standing ${pallet}` : `other ${pallet}`;
}

function plateLine(from: readonly Origin[], units: DisplayUnits): string {
  const height = numberOf(from, '.liftHeightMm');
  const centre = numberOf(from, '.loadCentreMm');
  if (height === null || centre === null) return 'here';
  return `at ${formatLength(height, units, 'down')}, ${formatLength(centre, units, 'down')} load centre`;
}

function gapClause(from: readonly Origin[], units: DisplayUnits): string {
  const gap = numberOf(from, 'maxGapMm');
  return gap === null ? '' : ` for gaps up to ${formatLength(gap, units, 'down')}`;
}

function numberOf(from: readonly Origin[], fieldEnd: string): number | null {
  const value = from.find(({ field }) => field.endsWith(fieldEnd))?.value;
  return typeof value === 'number' ? value : null;
}
