/** What is bent, and which way. */
export const DAMAGE_KINDS = ['upright-down-aisle', 'upright-cross-aisle', 'bracing'] as const;
export type DamageKind = (typeof DAMAGE_KINDS)[number];

/** mm of bow under a 1000 mm straight edge laid on the hollow side; twice that is the amber limit (EN 15635, DGUV 208-043). */
export const GREEN_LIMIT_MM_PER_M: Record<DamageKind, number> = {
  'upright-down-aisle': 5,
  'upright-cross-aisle': 3,
  bracing: 10,
};

export const STRAIGHT_EDGE_MM = 1000;

export type DamageClass = 'green' | 'amber' | 'red';

export type DamageJudged = { damage: DamageClass; greenLimitMm: number; amberLimitMm: number };

/**
 * Which class is a measured bend? Green up to the limit, amber up to twice the limit, red above; exactly a limit
 * belongs to the milder class. A bend shorter than the straight edge is held to a limit in proportion to its length;
 * a longer one is measured metre by metre, so a length above 1000 mm counts as 1000. Tears, splits, buckles, cracked
 * welds and missing locks are red whatever is measured. A person decides: this is advice.
 *
 * @example damageClass({ kind: 'upright-cross-aisle', bowMm: 4 }).damage //=> 'amber'
 * @example damageClass({ kind: 'upright-cross-aisle', bowMm: 4, lengthMm: 500 }).damage //=> 'red'
 */
export function damageClass(bend: { kind: DamageKind; bowMm: number; lengthMm?: number }): DamageJudged {
  const { kind, bowMm, lengthMm = STRAIGHT_EDGE_MM } = bend;
  if (!(bowMm >= 0)) throw new RangeError(`a bow of ${bowMm} mm`);
  if (!(lengthMm > 0)) throw new RangeError(`a bend ${lengthMm} mm long`);
  const greenLimitMm = (GREEN_LIMIT_MM_PER_M[kind] * Math.min(lengthMm, STRAIGHT_EDGE_MM)) / STRAIGHT_EDGE_MM;
  const amberLimitMm = 2 * greenLimitMm;
  const damage = bowMm <= greenLimitMm ? 'green' : bowMm <= amberLimitMm ? 'amber' : 'red';
  return { damage, greenLimitMm, amberLimitMm };
}
