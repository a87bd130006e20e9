import type { DisplayUnits } from './format-quantity.ts';
import { scaleDecimal } from './scale-decimal.ts';

/** Metres a second in one unit of speed, as exact decimals: the foot of 0.3048 m by definition (1959). */
const MPS_IN: Record<string, string> = {
  'm/s': '1',
  'm/min': '1/60',
  'km/h': '1/3.6',
  'ft/min': '0.00508',
  fpm: '0.00508',
  mph: '0.44704',
};

/** The unit that bare speeds are read and shown in: metres a second, or feet a minute. */
export function speedUnit(units: DisplayUnits): 'm/s' | 'ft/min' {
  return units === 'metric' ? 'm/s' : 'ft/min';
}

/** What speed did a person write, m/s? "2", "7.2 km/h", "390 ft/min", "4.5 mph". null when it is not a plain number. */
export function parseSpeedMps(text: string, units: DisplayUnits): number | null {
  const match = /^(\d{1,3}(?:\s\d{3})+|\d+)(\.\d+)?\s*([a-z/]*)$/i.exec(text.trim());
  if (match === null) return null;
  const decimal = `${match[1]!.replace(/\s/g, '')}${match[2] ?? ''}`;
  const factor = MPS_IN[match[3] === '' ? speedUnit(units) : match[3]!.toLowerCase()];
  if (factor === undefined) return null;
  // a sixtieth is no finite decimal: divided once, so that 7.2 km/h is 2
  return factor.startsWith('1/') ? Number(decimal) / Number(factor.slice(2)) : scaleDecimal(decimal, factor);
}

export function mpsToShown(mps: number, units: DisplayUnits): number {
  return units === 'metric' ? mps : mps / 0.00508;
}
