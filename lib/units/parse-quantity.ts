import type { DisplayUnits } from './format-quantity.ts';
import { KG_IN, type LengthUnit, type MassUnit, MM_IN, scaleDecimal } from './scale-decimal.ts';

const MASS_NAMES: Record<string, MassUnit> = { kg: 'kg', t: 't', lb: 'lb', lbs: 'lb' };
const LENGTH_NAMES: Record<string, LengthUnit> = {
  mm: 'mm',
  cm: 'cm',
  m: 'm',
  in: 'in',
  '"': 'in',
  ft: 'ft',
  "'": 'ft',
};

/**
 * What mass did a person write, kg? "2 400", "2400 kg", "2.4 t", "5290 lb". Without a unit it is read in the display
 * units. null when it is not a plain number with a known unit: a comma is refused, since it may mean a thousand or a
 * decimal.
 */
export function parseMassKg(text: string, units: DisplayUnits): number | null {
  const part = readPart(text);
  if (part === null) return null;
  const unit = part.unit === '' ? (units === 'metric' ? 'kg' : 'lb') : MASS_NAMES[part.unit];
  return unit === undefined ? null : scaleDecimal(part.decimal, KG_IN[unit]);
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
  const unit = part.unit === '' ? (units === 'metric' ? 'mm' : 'in') : LENGTH_NAMES[part.unit];
  return unit === undefined ? null : scaleDecimal(part.decimal, MM_IN[unit]);
}

/** One decimal with its unit; digits may be grouped in threes by any blank. */
function readPart(text: string): { decimal: string; unit: string } | null {
  const match = /^(\d{1,3}(?:\s\d{3})+|\d+)(\.\d+)?\s*([a-z'"]*)$/i.exec(text.trim());
  if (match === null) return null;
  return { decimal: `${match[1]!.replace(/\s/g, '')}${match[2] ?? ''}`, unit: match[3]!.toLowerCase() };
}
