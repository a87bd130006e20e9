/** What is measured on a pair of fork arms. What was not measured is left out. */
export type ForkArmMeasured = {
  /** Heel or blade thickness as it left the works, and now. */
  thickness?: { originalMm: number; nowMm: number };
  bladeLengthMm?: number;
  /** How much higher one tip stands than the other. */
  tipDifferenceMm?: number;
  /** Largest bow of blade or shank against a straight edge as long as the blade. */
  bowMm?: number;
  /** Between the top of the blade and the front of the shank. */
  angleDeg?: number;
};

/** A blade or heel down to this share of its original thickness is withdrawn: 10 % worn. */
export const WORN_FRACTION = 0.9;
/** Tips may differ by this share of the blade's length. */
export const TIP_FRACTION = 0.03;
/** Blade and shank may be bowed by this share of the blade's length. */
export const BOW_FRACTION = 0.005;
/** Blade against shank: up to this is accepted. */
export const WIDEST_ANGLE_DEG = 93;

export type ForkArmFault = {
  what: 'thickness' | 'tips' | 'bow' | 'angle';
  measured: number;
  limit: number;
  unit: 'mm' | 'deg';
};

/**
 * Which measurements say that the fork arms must be withdrawn? Empty: none of those taken.
 *
 * Thickness at or below 90 % of the original (here the limit itself is rejected: 45 mm of a 50 mm shank); tips more
 * than 3 % of the blade apart; a bow of more than 0.5 % of it; an angle above 93 degrees (the limits themselves
 * accepted). ISO 5057 practice as quoted by secondary sources. Cracks, worn hooks, weld and faulty locks withdraw an
 * arm whatever is measured.
 */
export function forkArmFaults(measured: ForkArmMeasured): ForkArmFault[] {
  const { thickness, bladeLengthMm, tipDifferenceMm, bowMm, angleDeg } = measured;
  const faults: ForkArmFault[] = [];
  if (thickness !== undefined) {
    const limit = rejectThicknessMm(thickness.originalMm);
    if (thickness.nowMm <= limit) {
      faults.push({ what: 'thickness', measured: thickness.nowMm, limit, unit: 'mm' });
    }
  }
  if (bladeLengthMm !== undefined && tipDifferenceMm !== undefined) {
    const limit = tipLimitMm(bladeLengthMm);
    if (tipDifferenceMm > limit) faults.push({ what: 'tips', measured: tipDifferenceMm, limit, unit: 'mm' });
  }
  if (bladeLengthMm !== undefined && bowMm !== undefined) {
    const limit = bowLimitMm(bladeLengthMm);
    if (bowMm > limit) faults.push({ what: 'bow', measured: bowMm, limit, unit: 'mm' });
  }
  if (angleDeg !== undefined && angleDeg > WIDEST_ANGLE_DEG) {
    faults.push({ what: 'angle', measured: angleDeg, limit: WIDEST_ANGLE_DEG, unit: 'deg' });
  }
  return faults;
}

/** At this thickness, mm, an arm is withdrawn. */
export function rejectThicknessMm(originalMm: number): number {
  return WORN_FRACTION * originalMm;
}

/** So far apart, mm, the tips of a pair may stand. */
export function tipLimitMm(bladeLengthMm: number): number {
  return TIP_FRACTION * bladeLengthMm;
}

/** So far, mm, a blade may be bowed. */
export function bowLimitMm(bladeLengthMm: number): number {
  return BOW_FRACTION * bladeLengthMm;
}

/** What is left of an arm's bending strength at this thickness, as a fraction? (now/original)^2: a rectangle in bending. */
export function strengthLeft(thickness: { originalMm: number; nowMm: number }): number {
  return (thickness.nowMm / thickness.originalMm) ** 2;
}
