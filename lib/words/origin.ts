import type { Origin } from '../check/step.ts';
import { TRUCK_KINDS } from '../model/truck.ts';
import {
  type DisplayUnits,
  formatLength,
  formatMass,
  groupDigits,
  type Lean,
} from '../units/format-quantity.ts';
import { instantWords, truckKindWords } from './plain-words.ts';

/** Where a number came from: whose fact, which part, its value. */
export function originSentence(origin: Origin, units: DisplayUnits): string {
  if (origin.of === 'authorisation') return authorisationSentence(origin);
  return `${whose(origin)}: ${fieldWords(origin.field)} ${valueWords(origin, units)}`;
}

function authorisationSentence(origin: Origin): string {
  const kind = TRUCK_KINDS.find((known) => known === origin.field);
  const trucks = kind === undefined ? origin.field : truckKindWords(kind);
  const until =
    origin.value === null
      ? 'none on record'
      : origin.value === 'no end'
        ? 'without an end'
        : `until ${instantWords(String(origin.value))}`;
  return `${whose(origin)}: ${trucks}, ${until}`;
}

function whose({ of, subject }: Origin): string {
  switch (of) {
    case 'load':
      return `Load facts, ${subject}`;
    case 'plate':
      return `Capacity plate, ${subject}`;
    case 'truck':
      return `Truck facts, ${subject}`;
    case 'notice':
      return `Load notice, ${subject}`;
    case 'rack':
      return `Rack facts, ${subject}`;
    case 'frame-rating':
      return `Frame table, ${subject}`;
    case 'aisle':
      return `Aisle survey, ${subject}`;
    case 'stock':
      return `Stock, ${subject}`;
    case 'policy':
      return 'Site policy';
    case 'check-record':
      return `Check record, ${subject}`;
    case 'authorisation':
      return `Authorisation, ${subject}`;
    case 'formula':
      return subject === 'asOf' ? 'This question' : `Formula, ${subject}`;
    case 'standard':
      return subject === 'common practice' ? 'Common practice' : `Standard, ${subject}`;
  }
}

/** The limits and openings lean down; what a lift asks of them leans up. */
function leanOf(of: Origin['of']): Lean {
  switch (of) {
    case 'plate':
    case 'truck':
    case 'notice':
    case 'frame-rating':
    case 'aisle':
      return 'down';
    case 'load':
    case 'rack':
    case 'stock':
    case 'policy':
    case 'check-record':
    case 'authorisation':
    case 'formula':
    case 'standard':
      return 'up';
  }
}

function valueWords({ of, value, unit }: Origin, units: DisplayUnits): string {
  if (value === null) return of === 'stock' ? 'none' : 'not recorded';
  if (typeof value === 'string') return /^\d{4}-\d\d-\d\dT/.test(value) ? instantWords(value) : value;
  switch (unit) {
    case 'kg':
      return formatMass(value, units, leanOf(of));
    case 'mm':
      return formatLength(value, units, leanOf(of));
    case 'percent':
      return `${value} %`;
    case 'hours':
      return value === 1 ? '1 hour' : `${groupDigits(value)} hours`;
    case 'row':
    case 'count':
    case 'fraction':
    case 'state':
    case null:
      return groupDigits(value);
  }
}

const FIELD_WORDS: Record<string, string> = {
  'depthMm / 2': 'half the depth',
  'heightMm / 2': 'half the height',
  'assessed / 2': 'the assessed mass divided by',
  '(standing + assessed) / 2': 'what stands there and this load, divided by',
  aisleClearanceMm: 'clearance added to the turn',
  armCapacityKg: 'capacity of one fork arm',
  armLoadCentreMm: 'load centre of the fork arm marking',
  asOf: 'time asked about',
  assessedKg: 'assessed mass of what else stands there',
  at: 'newest check',
  beamHeightMm: 'height of the beam',
  beamTopMm: 'top of the beam above the floor',
  capacityKg: 'capacity',
  centreFromHeelMm: 'centre of gravity from the fork heel',
  centreHeightMm: 'height of the centre of gravity',
  checkValidHours: 'a check counts for',
  clearWidthMm: 'clear width',
  condition: 'condition',
  depthMm: 'depth along the forks',
  entryHeightMm: 'fork top face above the underside of the pallet',
  extendedMm: 'mast height, extended',
  fittedAttachment: 'fitted',
  forkSupportFraction: 'part of the load that the forks must support',
  frameDepthMm: 'depth of the frames',
  freeLiftMm: 'free lift',
  grossKg: 'gross mass',
  heightMm: 'overall height',
  insideOffsetMm: 'inside offset',
  kind: 'kind',
  largestGapMm: 'largest gap between beams',
  lengthMm: 'fork length',
  liftHeightMm: 'lift height',
  load: 'load',
  loadCentreMm: 'load centre',
  loadDistanceMm: 'load distance',
  loweredMm: 'mast height, lowered',
  massBasis: 'basis of the mass',
  mast: 'mast',
  maxBayLoadKg: 'largest load of the bay',
  maxGapMm: 'for gaps up to',
  maxLiftMm: 'largest lift',
  maxUnitKg: 'largest unit load',
  outsideRadiusMm: 'outside turning radius',
  overheadClearMm: 'clear height',
  overheadMarginMm: 'margin overhead',
  pairCapacityKg: 'capacity of the pair of beams',
  pallets: 'pallets that stand there',
  placingClearanceMm: 'placing clearance',
  ratings: 'a rating that covers this',
  reachDepth: 'rows of depth that it reaches',
  reason: 'reason',
  result: 'result',
  row: 'row (1 front, 2 rear)',
  since: 'on hold since',
  sprinklerClearanceMm: 'clearance below sprinklers',
  sprinklerMm: 'height of the sprinklers',
  statedAisleMm: 'aisle stated by the maker',
  tareKg: 'mass of the pallet',
  turning: 'turning data',
  verticalLoadCentreMm: 'height of the load centre',
  weighed: 'allowance on a weighed mass',
  calculated: 'allowance on a calculated mass',
  declared: 'allowance on a declared mass',
  widthMm: 'width',
};

/** `ratings[2].capacityKg` -> "line 3, capacity"; a field that has no words of its own is shown as it is. */
function fieldWords(field: string): string {
  const line = /^ratings\[(\d+)\]\.(.+)$/.exec(field);
  if (line) return `line ${Number(line[1]) + 1}, ${fieldWords(line[2]!)}`;
  const item = /^items\[\d+\] (.+)$/.exec(field);
  if (item) return item[1]!;
  return FIELD_WORDS[field] ?? FIELD_WORDS[field.slice(field.lastIndexOf('.') + 1)] ?? field;
}
