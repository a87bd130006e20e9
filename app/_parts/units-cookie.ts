/** Units that figures are shown in. Facts are kept and sent in kg and mm whatever is shown. */
export const SHOWN_UNITS = ['metric', 'lb-in'] as const;
export type ShownUnits = (typeof SHOWN_UNITS)[number];

export const UNITS_COOKIE = 'units';

/** The units a cookie asks for; metric when there is none or it says something else. */
export function unitsOfCookie(value: string | undefined): ShownUnits {
  return SHOWN_UNITS.find((units) => units === value) ?? 'metric';
}
