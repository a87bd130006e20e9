import { kgToPounds, mmToInches } from './conversions.ts';

/** What a person reads in: kilograms and millimetres, or pounds and inches. */
export type DisplayUnits = 'metric' | 'lb-in';

/** Which way a shown number leans: a limit is shown rounded down, a need rounded up, so that neither flatters. */
export type Lean = 'down' | 'up';

/** The narrow no-break space that groups digits and ties a number to its unit. */
export const THIN_SPACE = '\u202f';

/** A mass for reading: whole kilograms (a tenth where it is not whole), or whole pounds. */
export function formatMass(kg: number, units: DisplayUnits, lean: Lean): string {
  return units === 'metric'
    ? withUnit(rounded(kg, 1, lean), 'kg')
    : withUnit(rounded(kgToPounds(kg), 0, lean), 'lb');
}

/** A length for reading: whole millimetres (a tenth where it is not whole), or tenths of an inch. */
export function formatLength(mm: number, units: DisplayUnits, lean: Lean): string {
  return units === 'metric'
    ? withUnit(rounded(mm, 1, lean), 'mm')
    : withUnit(rounded(mmToInches(mm), 1, lean), 'in');
}

/** A number with its digits in threes: 2 400. Decimals as they come. */
export function groupDigits(value: number): string {
  const [whole = '', decimals] = String(value).split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, THIN_SPACE);
  return decimals === undefined ? grouped : `${grouped}.${decimals}`;
}

// A quantity that was entered in pounds and stored in kilograms comes back a hair off a whole number: a millionth of
// the last shown digit is taken as that number, so that 1000 lb does not read 999 lb.
const SNAP = 1e-6;

function rounded(value: number, decimals: number, lean: Lean): number {
  const scale = 10 ** decimals;
  const scaled = value * scale;
  const nearest = Math.round(scaled);
  if (Math.abs(scaled - nearest) < SNAP) return withoutMinus(nearest / scale);
  return withoutMinus((lean === 'up' ? Math.ceil(scaled) : Math.floor(scaled)) / scale);
}

/** No "-0" on any screen. */
function withoutMinus(value: number): number {
  return value === 0 ? 0 : value;
}

function withUnit(value: number, unit: string): string {
  return `${groupDigits(value)}${THIN_SPACE}${unit}`;
}
