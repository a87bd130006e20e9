import type { ShownUnits } from '@/app/_parts/units-cookie.ts';

// Interim: to be carried by lib/units.
export function massIn(kg: number, units: ShownUnits): number {
  return units === 'metric' ? kg : kg / 0.45359237;
}
export function lengthIn(mm: number, units: ShownUnits): number {
  return units === 'metric' ? mm : mm / 25.4;
}
export function massUnit(units: ShownUnits): string {
  return units === 'metric' ? 'kg' : 'lb';
}
export function lengthUnit(units: ShownUnits): string {
  return units === 'metric' ? 'mm' : 'in';
}
export function showMass(kg: number, units: ShownUnits): string {
  return `${group(massIn(kg, units), 1)} ${massUnit(units)}`;
}
export function showLength(mm: number, units: ShownUnits): string {
  return `${group(lengthIn(mm, units), 1)} ${lengthUnit(units)}`;
}
function group(value: number, digits: number): string {
  return value.toLocaleString('en-GB', { maximumFractionDigits: digits }).replaceAll(',', '\u202f');
}
