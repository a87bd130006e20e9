import type { DisplayUnits } from '@/lib/units/format-quantity.ts';

/** Units that figures are shown in. Facts are kept and sent in kg and mm whatever is shown. */
export const DISPLAY_UNITS: readonly DisplayUnits[] = ['metric', 'lb-in'];

export const UNITS_COOKIE = 'units';

/** The units a cookie asks for; metric when there is none or it says something else. */
export function unitsOfCookie(value: string | undefined): DisplayUnits {
  return DISPLAY_UNITS.find((units) => units === value) ?? 'metric';
}
