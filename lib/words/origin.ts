import type { Origin } from '../check/step.ts';
import { TRUCK_KINDS } from '../model/truck.ts';
import {
  type DisplayUnits,
  formatLength,
  formatMass,
  groupDigits,
  type Lean,
} from '../units/format-quantity.ts';
import { fieldWords } from './field.ts';
import { instantWords, truckKindWords } from './plain-words.ts';

/** Where a number came from: whose fact, which part, its value. */
export function originSentence(origin: Origin, units: DisplayUnits): string {
  if (origin.of === 'authorisation') return authorisationSentence(origin);
  const items = itemsSentence(origin, units);
  if (items !== null) return `${whose(origin)}: ${items}`;
  return `${whose(origin)}: ${fieldWords(origin.field)} ${valueWords(origin, units)}`;
}

/**
 * "floor tile, 31 x 24 kg = 744 kg"; null for another fact. The facts are in kilograms, so the product is exact in them
 * alone: in pounds it stands beside.
 */
function itemsSentence({ field, value }: Origin, units: DisplayUnits): string | null {
  const item = /^items\[\d+\] (.+) x (\d+)$/.exec(field);
  if (item === null || typeof value !== 'number') return null;
  const count = Number(item[2]);
  const [each, all] = [value / count, value].map((kg) => formatMass(kg, 'metric', 'up'));
  const pounds = units === 'metric' ? '' : ` (${formatMass(value, units, 'up')})`;
  return `${item[1]}, ${groupDigits(count)} x ${each} = ${all}${pounds}`;
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
