import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { DISPLAY_UNITS } from '@/app/_parts/units-cookie.ts';
import type { Refusal } from '@/lib/model/refusal.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';
import { parseLengthMm, parseMassKg } from '@/lib/units/parse-quantity.ts';

/** The form names the units it was filled in with, so that a bare number is never read in others. */
export const TYPED_IN = 'typedIn';

export type FormAddress = {
  /** The same question in the parameters of readLiftQuery: kg, mm, UTC, ids as the site spells them. */
  raw: RawQuery;
  /** Quantities that cannot be read: they are left out of `raw`. */
  refused: readonly Refusal[];
  /** Whether the form was sent, rather than opened by a link. */
  sent: boolean;
};

const QUANTITIES = [
  { key: 'mass', parse: parseMassKg, rule: 'a mass above 0 such as 980, 980 kg or 2160 lb' },
  { key: 'depth', parse: parseLengthMm, rule: 'a length above 0 such as 1200, 1.2 m or 47 in' },
  { key: 'width', parse: parseLengthMm, rule: 'a length above 0 such as 800, 0.8 m or 31.5 in' },
  { key: 'height', parse: parseLengthMm, rule: 'a length above 0 such as 1450, 1.45 m or 57 in' },
] as const;

/**
 * What does the form ask? Quantities typed in the form's units or with a unit of their own, a local date and time
 * without a zone taken as UTC, ids without regard to capitals where only one fits.
 */
export function readFormAddress(raw: RawQuery, index: SiteIndex): FormAddress {
  const typedIn = DISPLAY_UNITS.find((units) => units === one(raw[TYPED_IN]));
  const out: RawQuery = { ...raw };
  const refused: Refusal[] = [];
  for (const { key, parse, rule } of QUANTITIES) {
    const text = one(raw[key])?.trim() ?? '';
    if (text === '' || (typedIn === undefined && Number(text) > 0)) continue;
    const value = parse(text, typedIn ?? ('metric' satisfies DisplayUnits));
    if (value !== null && value > 0) out[key] = String(value);
    else {
      refused.push({ path: `$.${key}`, came: JSON.stringify(text), expected: { is: 'text', rule } });
      delete out[key];
    }
  }
  out.asOf = timeOf(raw.asOf);
  out.location = spelt(one(raw.location), index.places);
  out.load = spelt(one(raw.load), index.loads);
  return { raw: out, refused, sent: typedIn !== undefined };
}

/** "2026-03-02T06:30" of a date and time field becomes an instant in UTC; "not-judged" beside it wins. */
function timeOf(value: string | string[] | undefined): string | undefined {
  const given = [value ?? []].flat();
  if (given.includes('not-judged')) return 'not-judged';
  const text = given.find((entry) => entry !== '');
  if (text === undefined) return undefined;
  if (/^\d{4}-\d\d-\d\dT\d\d:\d\d$/.test(text)) return `${text}:00Z`;
  return /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d$/.test(text) ? `${text}Z` : text;
}

/** The id as the site spells it; what is typed where none or several fit. */
function spelt(text: string | undefined, known: ReadonlyMap<string, unknown>): string | undefined {
  const typed = text?.trim();
  if (typed === undefined || typed === '' || known.has(typed)) return typed;
  const lower = typed.toLowerCase();
  const fits = [...known.keys()].filter((id) => id.toLowerCase() === lower);
  return fits.length === 1 ? fits[0] : typed;
}

function one(value: string | string[] | undefined): string | undefined {
  return Array.isArray(value) ? value[0] : value;
}

/** What stands in a quantity's field: as it was typed, with its unit added where the form now reads in other units. */
export function fieldText(
  raw: RawQuery,
  key: 'mass' | 'depth' | 'width' | 'height',
  units: DisplayUnits,
): string {
  const text = one(raw[key])?.trim() ?? '';
  const typedIn = DISPLAY_UNITS.find((known) => known === one(raw[TYPED_IN])) ?? 'metric';
  if (text === '' || typedIn === units || !/^[\d\s.]+$/.test(text)) return text;
  const unit = typedIn === 'metric' ? (key === 'mass' ? 'kg' : 'mm') : key === 'mass' ? 'lb' : 'in';
  return `${text} ${unit}`;
}
