import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { LARGEST_NUMBER } from '@/lib/model/quantities.ts';
import { cameAs, type Expected, type Refusal } from '@/lib/model/refusal.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';
import { parseLengthMm, parseMassKg } from '@/lib/units/parse-quantity.ts';

export type MeasureKind = 'mass' | 'length' | 'number';

const EXPECTED: Record<MeasureKind, Expected> = {
  mass: { is: 'text', rule: 'a mass such as 12, 12 kg or 26 lb' },
  length: { is: 'text', rule: 'a length such as 400, 400 mm or 16 in' },
  number: { is: 'text', rule: 'a number of zero or more' },
};

/** The text of an address parameter without blanks at its ends; undefined for none or an empty one. */
export function typedText(raw: RawQuery, name: string): string | undefined {
  const value = raw[name];
  return (Array.isArray(value) ? value[0] : value)?.trim() || undefined;
}

/** The units that bare numbers of this address are in: its own `units`, else metric, whatever is shown. */
export function typedUnits(raw: RawQuery): DisplayUnits {
  return typedText(raw, 'units') === 'lb-in' ? 'lb-in' : 'metric';
}

/**
 * What was typed, to stand in its field again: a bare mass or length gets the unit it was read in, so that the reader
 * may switch units and send the form again without the value changing.
 */
export function typedAgain(raw: RawQuery, name: string, kind: MeasureKind | 'word'): string {
  const text = typedText(raw, name) ?? '';
  if (kind === 'word' || kind === 'number' || !/^[\d\s.]+$/.test(text)) return text;
  const metric = typedUnits(raw) === 'metric';
  return `${text} ${kind === 'mass' ? (metric ? 'kg' : 'lb') : metric ? 'mm' : 'in'}`;
}

/**
 * Reads what was typed into plain forms. `read` gives kg, mm or a plain number; null where nothing was typed or where
 * it cannot be read, and then `refused` says so: nothing is guessed in its place.
 */
export function measureReader(raw: RawQuery): {
  read: (name: string, kind: MeasureKind) => number | null;
  refused: Refusal[];
} {
  const units = typedUnits(raw);
  const refused: Refusal[] = [];
  const read = (name: string, kind: MeasureKind) => {
    const text = typedText(raw, name);
    if (text === undefined) return null;
    const value = parsed(kind, text, units);
    if (value !== null && value <= LARGEST_NUMBER) return value;
    refused.push({ path: `$.${name}`, came: cameAs(text), expected: EXPECTED[kind] });
    return null;
  };
  return { read, refused };
}

function parsed(kind: MeasureKind, text: string, units: DisplayUnits): number | null {
  if (kind === 'mass') return parseMassKg(text, units);
  if (kind === 'length') return parseLengthMm(text, units);
  return /^\d+(\.\d+)?$/.test(text) ? Number(text) : null;
}
