/**
 * Years from the last test stamp of an LPG cylinder to the next, by what the stamp stands for.
 * US: 49 CFR 180.209 (method E external visual 5, proof pressure 10, volumetric 12; the years by method from memory).
 * Australia: AS 2030.5, AS 2337; New Zealand: HSNO controls; Europe: ADR 10, up to 15 under conditions that a stamp
 * does not show, so 10. Unknown: 10 from the last stamp (common practice), 5 where the stamp carries an E.
 */
export const RETEST_YEARS = {
  'us-external-visual': 5,
  'us-proof-pressure': 10,
  'us-volumetric-expansion': 12,
  australia: 10,
  'new-zealand': 10,
  europe: 10,
  unknown: 10,
} as const;
export type RetestRule = keyof typeof RETEST_YEARS;

/** The month, `YYYY-MM`, through which a cylinder stamped in `stamped` (`YYYY-MM`) is in date. */
export function inDateThrough(stamped: string, rule: RetestRule): string {
  const match = /^(\d{4})-(0[1-9]|1[0-2])$/.exec(stamped);
  if (match === null) throw new RangeError(`a stamp is YYYY-MM, not ${stamped}`);
  return `${String(Number(match[1]) + RETEST_YEARS[rule]).padStart(4, '0')}-${match[2]}`;
}

/** Is the cylinder in date in this month (`YYYY-MM`)? The last month itself still is. */
export function isInDate(cylinder: { stamped: string; rule: RetestRule; month: string }): boolean {
  return cylinder.month <= inDateThrough(cylinder.stamped, cylinder.rule);
}

/** How deep may a dent be, mm? 10 % of its mean diameter, on a weld no more than 6.5 mm (AS 4983, from secondary sources). */
export function dentLimitMm(dent: { meanDiameterMm: number; onWeld: boolean }): number {
  const limitMm = dent.meanDiameterMm / 10;
  return dent.onWeld ? Math.min(6.5, limitMm) : limitMm;
}

/**
 * Is this dent in a forklift's cylinder too deep? Deeper than 10 % of its mean diameter, or on a weld deeper than
 * 6.5 mm; exactly the limit is accepted (AS 4983, from secondary sources).
 */
export function isDentRejected(dent: { depthMm: number; meanDiameterMm: number; onWeld: boolean }): boolean {
  return dent.depthMm > dentLimitMm(dent);
}
