import type { Figures, Finding, PlateLine, Source, Subject } from '../audit/finding.ts';
import {
  type DisplayUnits,
  formatLength,
  formatMass,
  groupDigits,
  type Lean,
} from '../units/format-quantity.ts';
import { causeWords } from './cause.ts';
import { adviceSentence } from './finding-advice.ts';
import { asSentence, counted, truckKindWords } from './plain-words.ts';
import { ruleTitle } from './rule.ts';

/** What was found and where, with its figures: "A5-L-03 level 2: 6 900 kg stands on the pair of beams; ...". */
export function findingSentence(finding: Finding, units: DisplayUnits): string {
  return asSentence(`${subjectWords(finding.subject)}: ${findingClause(finding, units)}`);
}

/** The finding and what to do about it. */
export function findingWithAdvice(finding: Finding, units: DisplayUnits): string {
  return `${findingSentence(finding, units)} ${adviceSentence(finding.advice)}`;
}

/** What a finding is about, as a name. */
export function subjectWords(subject: Subject): string {
  switch (subject.of) {
    case 'stored-load':
      return `load ${subject.load} at ${subject.location}`;
    case 'level':
      return subject.level === 0
        ? `run ${subject.run}, bay ${subject.bay}, floor`
        : `run ${subject.run}, bay ${subject.bay}, level ${subject.level}`;
    case 'bay':
      return `run ${subject.run}, bay ${subject.bay}`;
    case 'frame':
      return `run ${subject.run}, frame ${subject.frame}`;
    case 'aisle':
      return `aisle ${subject.aisle}`;
    case 'load':
      return `load ${subject.load}`;
    case 'locations':
      return placesWords(subject.locations);
    case 'truck':
      return `truck ${subject.truck}`;
    case 'plate': {
      const mast = subject.mast === 'vertical' ? 'mast vertical' : 'mast tilted forward';
      return `plate of truck ${subject.truck}, ${mast}, ${subject.attachment ?? 'forks alone'}`;
    }
    case 'authorisation':
      return `operator ${subject.operator}, ${truckKindWords(subject.truckKind)}`;
  }
}

/** What a finding rests on: a rule of the lift check, or a standard by name. */
export function findingSourceWords(source: Source): string {
  return source.of === 'rule' ? `Rule: ${ruleTitle(source.rule)}` : source.name;
}

const MOST_NAMED = 3;

/** A few of the places and how many more there are. */
function placesWords(locations: readonly string[]): string {
  const named = locations.slice(0, MOST_NAMED).join(', ');
  const more = locations.length - MOST_NAMED;
  return more > 0 ? `${named} and ${counted(more, 'more location')}` : named;
}

function findingClause(finding: Finding, units: DisplayUnits): string {
  const { kind, figures, subject } = finding;
  const need = shown(figures, figures.need, units, 'up');
  const have = shown(figures, figures.have, units, 'down');
  const over = shown(figures, figures.excess, units, 'up');
  switch (kind) {
    case 'unit-overload':
      return `it is assessed at ${need}; the notice allows ${have} for one unit: ${over} too much`;
    case 'beam-level-overload':
      return `${atLeast(figures)}${need} stands on the pair of beams, which carries ${have}: ${over} too much`;
    case 'bay-overload':
      return `${atLeast(figures)}${need} stands on the beams of the bay, which carries ${have}: ${over} too much`;
    case 'frame-overload':
      return `${atLeast(figures)}${need}, half of the bays beside it, bears on the frame, which carries ${have}: ${over} too much`;
    case 'red-steel-loaded':
      return `the steel is red and ${stands(figures)}`;
    case 'amber-steel-loaded':
      return `the steel is amber and ${stands(figures)}`;
    case 'under-supported':
      return `the pallet is ${have} deep on frames of ${need}: it does not rest on both beams`;
    case 'load-too-tall':
      return `with its clearance it needs ${need}; the opening has ${have}: ${over} too little`;
    case 'load-too-wide':
      return `a full row of such loads with its clearances needs ${need}; the bay has ${have}: ${over} too little`;
    case 'near-sprinklers':
      return `with its clearance it reaches ${need}; the sprinklers are at ${have}: ${over} too near`;
    case 'stranded-for-fleet':
      return `no truck of the fleet can take it down, even if all were fit${nearest(finding, need, have)}`;
    case 'stranded':
      return `no truck that may be used now can take it down; ${finding.truck} could if it were fit`;
    case 'one-truck':
      return `only ${finding.truck} can take it down; without it the load is stranded`;
    case 'mass-unknown':
      return `its mass is not known; ${stands(figures)}${atPlaces(subject)}, and every sum around it is unknown`;
    case 'declared-thin':
      return `declared, not weighed, and close to a limit${atPlaces(subject)}: ${need} of ${have} (${sourceTitle(finding)})`;
    case 'plate-contradicts':
      return `two lines for one point differ: ${lineWords(subject, units)}`;
    case 'plate-rises':
      return `it proves more further up or out than nearer: ${lineWords(subject, units)}`;
    case 'plate-lacks-attachment':
      return 'the plate has no line for what is fitted, so no lift is proven';
    case 'plate-stops-below-mast':
      return `its lines end at ${have}; the mast lifts to ${need}: nothing is proven above`;
    case 'truck-check-failed':
      return 'its newest check failed, and it is not on hold';
    case 'truck-held':
      return 'it is on hold';
    case 'truck-unchecked':
      return need === null
        ? 'no check on record'
        : `its newest check is ${need} old; ${have} is the most allowed`;
    case 'truck-facts-missing':
    case 'pair-capacity-missing':
    case 'unit-limit-missing':
    case 'bay-limit-missing':
    case 'aisle-not-surveyed':
      return causeOf(finding);
    case 'authorisation-ended':
      return `the authorisation ended ${shown(figures, figures.excess, units, 'up')} ago`;
    case 'authorisation-ending':
      return `the authorisation ends in ${have}`;
    case 'frame-gap-beyond-ratings':
      return have === null
        ? `the largest gap beside it is ${need}; its table has no rating`
        : `the largest gap beside it is ${need}; its table ends at ${have}`;
    case 'out-of-reach':
      return `no truck can serve these ${over} of ${need} with the reference load (${sourceTitle(finding)})`;
    case 'unplaceable':
      return figures.have === 0
        ? `no truck is proven to place it anywhere, whatever it weighs (${sourceTitle(finding)})`
        : `no truck is proven to place ${need} of this size anywhere; ${have} would be the most (${sourceTitle(finding)})`;
    case 'hand-pick':
      return need === null
        ? 'lifting a case here by hand is outside the bounds of the equation'
        : `lifting a case here by hand has an index of ${need}; above ${have} it is more than recommended`;
    case 'hand-pick-too-high':
      return `${stands(figures)}${atPlaces(subject)}, above the reach of hands`;
    default:
      return kind satisfies never;
  }
}

function atLeast({ needIs }: Figures): string {
  return needIs === 'at-least' ? 'at least ' : '';
}

function stands({ need }: Figures): string {
  return `${counted(need ?? 0, 'pallet')} ${need === 1 ? 'stands' : 'stand'} there`;
}

function atPlaces(subject: Subject): string {
  return subject.of === 'load' && subject.locations.length > 0 ? ` (${placesWords(subject.locations)})` : '';
}

/** What stands against the nearest truck: a cause, or the two numbers, as far as they are known. */
function nearest(finding: Finding, need: string | null, have: string | null): string {
  if (finding.truck === null) return ': there is none';
  const title = `; nearest is ${finding.truck}, ${sourceTitle(finding)}`;
  return need === null || have === null ? title : `${title}: needs ${need}, has ${have}`;
}

function sourceTitle({ source }: Finding): string {
  if (source.of === 'standard') return source.name;
  const cause = source.cause === null ? '' : `: ${causeWords(source.cause)}`;
  return `${ruleTitle(source.rule).toLowerCase()}${cause}`;
}

function causeOf({ source }: Finding): string {
  if (source.of === 'standard' || source.cause === null) throw new Error('a missing fact without its cause');
  return causeWords(source.cause);
}

function lineWords(subject: Subject, units: DisplayUnits): string {
  if (subject.of !== 'plate' || subject.lines === null) throw new Error('a plate finding without its lines');
  const { lower, higher } = subject.lines;
  return `${plateLineWords(higher, units)}, but ${plateLineWords(lower, units)}`;
}

function plateLineWords({ capacityKg, liftHeightMm, loadCentreMm }: PlateLine, units: DisplayUnits): string {
  const [height, centre] = [liftHeightMm, loadCentreMm].map((mm) => formatLength(mm, units, 'down'));
  return `${formatMass(capacityKg, units, 'down')} at ${height} with a load centre of ${centre}`;
}

/** Two decimals of an index, tenths of hours and days: what a person can use, leaning so that it never flatters. */
function shown(figures: Figures, value: number | null, units: DisplayUnits, lean: Lean): string | null {
  if (value === null) return null;
  switch (figures.unit) {
    case 'kg':
      return formatMass(value, units, lean);
    case 'mm':
      return formatLength(value, units, lean);
    case 'row':
      return value === 1 ? 'front row' : 'rear row';
    case 'index':
      return leaning(value, 100, lean);
    case 'hours':
      return `${leaning(value, 10, lean)} hours`;
    case 'days':
      return counted(Math.floor(Math.abs(value)), 'day');
    case 'pallets':
      return counted(value, 'pallet');
    case 'trucks':
      return counted(value, 'truck');
    case 'locations':
      return groupDigits(value);
  }
}

function leaning(value: number, scale: number, lean: Lean): string {
  return groupDigits((lean === 'up' ? Math.ceil(value * scale) : Math.floor(value * scale)) / scale);
}
