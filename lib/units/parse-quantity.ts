import { inchesToMm, poundsToKg } from './conversions.ts';
import type { DisplayUnits } from './format-quantity.ts';

const KG_PER_UNIT: Record<string, (value: number) => number> = {
  kg: (value) => value,
  t: (value) => value * 1000,
  lb: poundsToKg,
  lbs: poundsToKg,
};

const MM_PER_UNIT: Record<string, (value: number) => number> = {
  mm: (value) => value,
  cm: (value) => value * 10,
  m: (value) => value * 1000,
  in: inchesToMm,
  '"': inchesToMm,
  ft: (value) => inchesToMm(value * 12),
  "'": (value) => inchesToMm(value * 12),
};

/**
 * What mass did a person write, kg? "2 400", "2400 kg", "2.4 t", "5290 lb". Without a unit it is read in the display
 * units. null when it is not a plain number with a known unit: a comma is refused, since it may mean a thousand or a
 * decimal.
 */
export function parseMassKg(text: string, units: DisplayUnits): number | null {
  const part = readPart(text);
  if (part === null) return null;
  return KG_PER_UNIT[part.unit || (units === 'metric' ? 'kg' : 'lb')]?.(part.value) ?? null;
}

/** What length did a person write, mm? "1 200", "1200 mm", "1.2 m", "47 in", "8 ft 6 in", 8'6". As for a mass. */
export function parseLengthMm(text: string, units: DisplayUnits): number | null {
  const feetAndInches = /^(.*(?:ft|'))\s*(\d.*(?:in|"))$/i.exec(text.trim());
  if (feetAndInches) {
    const feet = parseLengthMm(feetAndInches[1]!, units);
    const inches = parseLengthMm(feetAndInches[2]!, units);
    return feet === null || inches === null ? null : feet + inches;
  }
  const part = readPart(text);
  if (part === null) return null;
  return MM_PER_UNIT[part.unit || (units === 'metric' ? 'mm' : 'in')]?.(part.value) ?? null;
}

/** One number with its unit; digits may be grouped in threes by any blank. */
function readPart(text: string): { value: number; unit: string } | null {
  const match = /^(\d{1,3}(?:\s\d{3})+|\d+)(\.\d+)?\s*([a-z'"]*)$/i.exec(text.trim());
  if (match === null) return null;
  const value = Number(`${match[1]!.replace(/\s/g, '')}${match[2] ?? ''}`);
  return Number.isFinite(value) ? { value, unit: match[3]!.toLowerCase() } : null;
}
