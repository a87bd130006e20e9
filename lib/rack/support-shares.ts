import { STANDARD_GRAVITY_N_KG } from './beam-deflection.ts';

/** What each beam of a pair carries, kg. */
export type BeamShares = { heavierKg: number; lighterKg: number };

/**
 * How is a load shared by the two beams when its centre is off the middle? W (1/2 +- e/s), s the distance between the
 * beams, e the offset. Statics of two supports. Throws a RangeError when the centre is not between the beams.
 *
 * @example beamShares({ massKg: 1000, spacingMm: 1000, offsetMm: 100 }) //=> { heavierKg: 600, lighterKg: 400 }
 */
export function beamShares(load: { massKg: number; spacingMm: number; offsetMm: number }): BeamShares {
  const { massKg, spacingMm } = load;
  const offsetMm = Math.abs(load.offsetMm);
  if (!(offsetMm <= spacingMm / 2))
    throw new RangeError(`centre ${offsetMm} mm off, beams ${spacingMm} mm apart`);
  const lighterKg = massKg * (0.5 - offsetMm / spacingMm);
  return { heavierKg: massKg - lighterKg, lighterKg };
}

/**
 * What does one foot of a frame press on the floor with, N? Half of what the frame carries and half of its own mass.
 * An interior frame carries half of the bay at each side of it, an end frame half of one.
 */
export function footLoadN(frame: { carriedKg: number; ownKg: number }): number {
  return ((frame.carriedKg + frame.ownKg) / 2) * STANDARD_GRAVITY_N_KG;
}

/** Pressure under a base plate, N/mm2 (MPa). */
export function bearingNmm2(foot: { forceN: number; plateWidthMm: number; plateDepthMm: number }): number {
  return foot.forceN / (foot.plateWidthMm * foot.plateDepthMm);
}
