import { kgToPounds, mmToInches } from '../units/conversions.ts';
import type { DisplayUnits } from '../units/format-quantity.ts';
import { parseLengthMm, parseMassKg } from '../units/parse-quantity.ts';
import { mpsToShown, parseSpeedMps, speedUnit } from '../units/speed.ts';

/** What a field holds: kg, mm, m/s, or a plain number without a unit. */
export type MeasureKind = 'mass' | 'length' | 'speed' | 'number';

/**
 * A figure as it stands in a field. `value` is what will be stored (kg, mm, m/s); null: nothing is stated. `kept` is the
 * fact that the field was opened with: while its own shown text stands there, the fact stays as it is to the last bit,
 * whatever the shown text leaves out. `typed` is what a person wrote and in which units it was meant.
 */
export type Measure = {
  value: number | null | 'unread';
  kept: number | null;
  typed: { text: string; units: DisplayUnits } | null;
};

export const NO_MEASURE: Measure = { value: null, kept: null, typed: null };

/** A field that is opened with a fact. */
export function keptMeasure(value: number | null): Measure {
  return { value, kept: value, typed: null };
}

/** The field after a person has written in it. */
export function typedMeasure(before: Measure, text: string, of: MeasureKind, units: DisplayUnits): Measure {
  const { kept } = before;
  const typed = { text, units };
  if (text.trim() === '') return { value: null, kept, typed };
  if (kept !== null && text.trim() === shownNumber(kept, of, units)) return { value: kept, kept, typed };
  return { value: parse(text, of, units) ?? 'unread', kept, typed };
}

/** What stands in the field: what was written, while it means the value in these units; else the value. */
export function measureText(measure: Measure, of: MeasureKind, units: DisplayUnits): string {
  const { typed, value } = measure;
  if (typed !== null && (typed.units === units || value === 'unread')) return typed.text;
  return value === null || value === 'unread' ? '' : shownNumber(value, of, units);
}

/** The number in the shown units, at most three decimals, without its unit: it stands beside the field. */
export function shownNumber(value: number, of: MeasureKind, units: DisplayUnits): string {
  return String(Number(inUnits(value, of, units).toFixed(3)));
}

/** The unit that a bare number in the field is read in; empty for plain numbers. */
export function measureUnit(of: MeasureKind, units: DisplayUnits): string {
  switch (of) {
    case 'mass':
      return units === 'metric' ? 'kg' : 'lb';
    case 'length':
      return units === 'metric' ? 'mm' : 'in';
    case 'speed':
      return speedUnit(units);
    case 'number':
      return '';
  }
}

/** The value to be stored; undefined where none is stated, so that a fact which is needed is refused as missing. */
export function measureValue({ value }: Measure): number | undefined {
  return typeof value === 'number' ? value : undefined;
}

export function valueOrNull(measure: Measure): number | null {
  return measureValue(measure) ?? null;
}

function inUnits(value: number, of: MeasureKind, units: DisplayUnits): number {
  if (of === 'speed') return mpsToShown(value, units);
  if (of === 'number' || units === 'metric') return value;
  return of === 'mass' ? kgToPounds(value) : mmToInches(value);
}

function parse(text: string, of: MeasureKind, units: DisplayUnits): number | null {
  switch (of) {
    case 'mass':
      return parseMassKg(text, units);
    case 'length':
      return parseLengthMm(text, units);
    case 'speed':
      return parseSpeedMps(text, units);
    case 'number':
      return /^\d+(\.\d+)?$/.test(text.trim()) ? Number(text) : null;
  }
}
