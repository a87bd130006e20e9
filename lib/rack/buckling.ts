import { STEEL_MODULUS_N_MM2 } from './beam-deflection.ts';

/** Effective length factor K by how the two ends of a column are held (Euler's four cases). */
export const END_FACTORS = {
  'pinned-pinned': 1,
  'fixed-fixed': 0.5,
  'fixed-pinned': 0.7,
  'fixed-free': 2,
} as const;
export type ColumnEnds = keyof typeof END_FACTORS;

/**
 * At what force does an ideal slender column buckle, N? pi^2 E I / (K L)^2.
 *
 * Information only: a perforated upright is set by tests, and no rule of a lift check reads this.
 */
export function eulerLoadN(column: {
  lengthMm: number;
  inertiaMm4: number;
  ends: ColumnEnds;
  modulusNmm2?: number;
}): number {
  const { lengthMm, inertiaMm4, ends, modulusNmm2 = STEEL_MODULUS_N_MM2 } = column;
  return (Math.PI ** 2 * modulusNmm2 * inertiaMm4) / (END_FACTORS[ends] * lengthMm) ** 2;
}

/**
 * What would be left of a frame's capacity if its largest gap grew, kg, by Euler alone? The capacity in the ratio of the
 * two Euler loads, (rated/actual)^2, which is below the real figure; a shorter gap gains nothing. Information for a talk
 * with the supplier: a notice whose gap is exceeded is void, and no lift is cleared by this.
 */
export function capacityAtLongerGapKg(frame: {
  capacityKg: number;
  ratedGapMm: number;
  gapMm: number;
}): number {
  const buckling = (lengthMm: number) => eulerLoadN({ lengthMm, inertiaMm4: 1, ends: 'pinned-pinned' });
  return frame.capacityKg * Math.min(1, buckling(frame.gapMm) / buckling(frame.ratedGapMm));
}
