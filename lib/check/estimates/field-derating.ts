import type { Truck } from '../../model/truck.ts';

/** A plate line and the longer load centre it is estimated for. */
export type Derating = { capacityKg: number; plateLoadCentreMm: number; loadCentreMm: number };

/**
 * About what mass would a truck carry at a load centre beyond its plate, kg? Advice only: no rule reads it.
 *
 * capacityKg x plateLoadCentreMm / loadCentreMm; no more than capacityKg when the load centre is not longer
 * (equality included): a shorter one adds nothing. Source: field rule, OSHA powered industrial trucks eTool, load
 * composition, and 1910.178 appendix A-5.
 *
 * @example fieldDeratedKg({ capacityKg: 2000, plateLoadCentreMm: 500, loadCentreMm: 600 }) //=> 1666.66...
 */
export function fieldDeratedKg({ capacityKg, plateLoadCentreMm, loadCentreMm }: Derating): number {
  if (loadCentreMm <= plateLoadCentreMm) return capacityKg;
  return (capacityKg * plateLoadCentreMm) / loadCentreMm;
}

export type MomentEstimate =
  | { kind: 'estimate'; kg: number }
  | { kind: 'refused'; cause: 'load-behind-wheels' };

/**
 * The same by moments about the front axle: capacityKg (x + D1) / (x + D2), x = axleToForkFaceMm.
 *
 * Never below the field rule, so it is the bolder of the two. Refused for a negative x (the fork face behind the load
 * wheels, as on a reach truck): tipping about the axle is not what limits such a truck. Source: statics.
 */
export function momentDeratedKg(derating: Derating, axleToForkFaceMm: number): MomentEstimate {
  const { capacityKg, plateLoadCentreMm, loadCentreMm } = derating;
  if (axleToForkFaceMm < 0) return { kind: 'refused', cause: 'load-behind-wheels' };
  if (loadCentreMm <= plateLoadCentreMm) return { kind: 'estimate', kg: capacityKg };
  const kg = (capacityKg * (axleToForkFaceMm + plateLoadCentreMm)) / (axleToForkFaceMm + loadCentreMm);
  return { kind: 'estimate', kg };
}

/**
 * What would the field rule make of this truck's plate for a load centre that the plate does not cover, kg?
 *
 * The largest field-rule figure among the vertical-mast ratings of the fitted attachment that reach the lift
 * (equality reaches); null when none does: no estimate goes beyond the plate's height.
 */
export function beyondPlateKg(truck: Truck, liftMm: number, loadCentreMm: number): number | null {
  let most: number | null = null;
  for (const rating of truck.plate.ratings) {
    if (rating.mast !== 'vertical' || rating.attachment !== truck.fittedAttachment) continue;
    if (rating.liftHeightMm < liftMm) continue;
    const kg = fieldDeratedKg({
      capacityKg: rating.capacityKg,
      plateLoadCentreMm: rating.loadCentreMm,
      loadCentreMm,
    });
    if (most === null || kg > most) most = kg;
  }
  return most;
}
