/** Whose limit for the sag of a loaded beam. */
export const DEFLECTION_RULES = { 'EN 15512': 200, 'ANSI MH16.1': 180 } as const;
export type DeflectionRule = keyof typeof DEFLECTION_RULES;

/**
 * How far may a beam sag under its working load, mm? Span/200 by EN 15512 and EN 15620 (5 mm per metre), span/180 by
 * ANSI MH16.1. Use span/200 where it is not known which the rack was built to. A sag of exactly the limit passes.
 *
 * @example deflectionLimitMm(2700, 'EN 15512') //=> 13.5
 */
export function deflectionLimitMm(spanMm: number, rule: DeflectionRule): number {
  return spanMm / DEFLECTION_RULES[rule];
}

/** What an unloaded beam may keep of a bend, mm (DGUV Information 208-043, 4.4). */
export type ResidualLimits = {
  /** A fifth of the sag at nominal load: span/1000. */
  downMm: number;
  /** Half of it: span/400. */
  sidewaysMm: number;
};

/** How much bend may stay in a beam once it is unloaded? Exactly the limit is still accepted. */
export function residualBendLimits(spanMm: number): ResidualLimits {
  return { downMm: spanMm / 1000, sidewaysMm: spanMm / 400 };
}
