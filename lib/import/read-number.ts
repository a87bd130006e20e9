import { KG_IN, MM_IN, scaleDecimal } from '../units/scale-decimal.ts';
import type { NumberStyle, Unit } from './mapping.ts';

/** No number of a warehouse is written longer; longer cells are not looked at, so that none can hold up the reading. */
const LONGEST_NUMBER = 60;

export const PLAIN_NUMBERS: NumberStyle = { decimal: '.', group: '' };

/** Units as people write them, in headers and behind numbers. */
const UNIT_WORDS = new Map<string, Unit>(
  Object.entries({
    mm: 'mm',
    millimetre: 'mm',
    millimetres: 'mm',
    millimeter: 'mm',
    millimeters: 'mm',
    cm: 'cm',
    centimetre: 'cm',
    centimetres: 'cm',
    centimeter: 'cm',
    centimeters: 'cm',
    m: 'm',
    metre: 'm',
    metres: 'm',
    meter: 'm',
    meters: 'm',
    mtr: 'm',
    in: 'in',
    ins: 'in',
    inch: 'in',
    inches: 'in',
    '"': 'in',
    '″': 'in',
    ft: 'ft',
    foot: 'ft',
    feet: 'ft',
    "'": 'ft',
    '′': 'ft',
    kg: 'kg',
    kgs: 'kg',
    kilo: 'kg',
    kilos: 'kg',
    kilogram: 'kg',
    kilograms: 'kg',
    kilogramme: 'kg',
    kilogrammes: 'kg',
    lb: 'lb',
    lbs: 'lb',
    pound: 'lb',
    pounds: 'lb',
    t: 't',
    te: 't',
    tonne: 't',
    tonnes: 't',
  }),
);

/** The unit that a word stands for, or null. A "ton" is not one unit (long, short, metric), so it is none. */
export function unitOfWord(word: string): Unit | null {
  return UNIT_WORDS.get(word.toLowerCase().replace(/\.$/, '')) ?? null;
}

const isLengthUnit = (unit: Unit): unit is keyof typeof MM_IN => unit in MM_IN;

/** Whether a unit measures what the kind of fact wants. */
export function unitFits(unit: Unit, kind: 'length' | 'mass'): boolean {
  return isLengthUnit(unit) === (kind === 'length');
}

/** mm for a length, kg for a mass, exactly. */
export function inModelUnits(decimal: string, unit: Unit): number {
  return scaleDecimal(decimal, isLengthUnit(unit) ? MM_IN[unit] : KG_IN[unit]);
}

const PATTERNS = new Map<string, RegExp>();

function patternOf(style: NumberStyle): RegExp {
  const key = `${style.decimal}${style.group}`;
  const known = PATTERNS.get(key);
  if (known) return known;
  const decimal = style.decimal === '.' ? '\\.' : ',';
  const group = style.group === '.' ? '\\.' : style.group;
  const whole = group === '' ? '\\d+' : `(?:\\d{1,3}(?:${group}\\d{3})+|\\d+)`;
  const pattern = new RegExp(
    `^(?:(${whole})(?:${decimal}(\\d*))?|${decimal}(\\d+))(?:[eE]([+-]?\\d{1,3}))?$`,
  );
  PATTERNS.set(key, pattern);
  return pattern;
}

/**
 * The digits of a number written in this style as a plain decimal ("1.234,5" -> "1234.5"), or null.
 *
 * Strict: a thousands mark must stand before exactly three digits, and only the style's own marks count, so "1,5" is
 * never read as 15 and "1.200" is 1.2 or 1200 only by the style that a person has seen.
 */
export function plainDecimal(text: string, style: NumberStyle): string | null {
  if (text.length > LONGEST_NUMBER) return null;
  const match = patternOf(style).exec(withPlainBlanks(text));
  if (match === null) return null;
  const whole = match[1] === undefined ? '0' : match[1].replace(/[^\d]/g, '');
  const fraction = match[2] ?? match[3] ?? '';
  return `${whole}${fraction === '' ? '' : `.${fraction}`}${match[4] === undefined ? '' : `e${match[4]}`}`;
}

/** Cuts "2400 mm" into number and unit; "8 ft 6 in" and 8'6" become inches. The unit is null where none stands. */
export function cutUnit(text: string): { number: string; unit: Unit | null } {
  if (text.length > LONGEST_NUMBER) return { number: text, unit: null };
  const feetAndInches =
    /^(\d+)\s*(?:ft|feet|foot|['′])\s*(\d+(?:\.\d+)?)\s*(?:in|ins|inch|inches|["″])$/i.exec(text);
  if (feetAndInches) {
    return { number: String(Number(feetAndInches[1]) * 12 + Number(feetAndInches[2])), unit: 'in' };
  }
  const tail = /^(.*\d.*?)\s*([a-z]+\.?|["'″′])$/i.exec(text);
  const unit = tail === null ? null : unitOfWord(tail[2]!);
  return unit === null ? { number: text, unit: null } : { number: tail![1]!, unit };
}

function withPlainBlanks(text: string): string {
  return text
    .replace(/[\u00a0\u2007\u2009\u202f]/g, ' ')
    .replace(/[’‘]/g, "'")
    .trim();
}
