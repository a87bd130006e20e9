import type { PlateRating, Truck } from '../model/truck.ts';

/** The line of the plate that proves most, with its place on the plate; or why none does. */
export type PlateAnswer =
  | { kind: 'proven'; rating: PlateRating; at: number }
  | { kind: 'unproven'; cause: 'no-rating' | 'height-beyond-plate' | 'load-centre-beyond-plate' };

/**
 * What mass does the plate prove at this lift and load centre?
 *
 * The largest capacityKg among the ratings of this mast position and of the attachment that is fitted (null: forks)
 * with liftHeightMm >= liftMm and loadCentreMm >= loadCentreMm of the load; equality proves. A rating proves its mass
 * for every lower lift and shorter load centre, and nothing beyond: no line is stretched or interpolated.
 * None: `no-rating` when there is none of this mast and attachment, else `height-beyond-plate` when none reaches the
 * lift, else `load-centre-beyond-plate`. Of equal capacities the first on the plate.
 * Source: ISO 3691-1 marking of rated and actual capacities (from memory).
 */
export function plateRating(
  truck: Truck,
  mast: PlateRating['mast'],
  liftMm: number,
  loadCentreMm: number,
): PlateAnswer {
  let best: { rating: PlateRating; at: number } | null = null;
  let cause: Extract<PlateAnswer, { kind: 'unproven' }>['cause'] = 'no-rating';
  for (const [at, rating] of truck.plate.ratings.entries()) {
    if (rating.mast !== mast || rating.attachment !== truck.fittedAttachment) continue;
    if (cause === 'no-rating') cause = 'height-beyond-plate';
    if (rating.liftHeightMm < liftMm) continue;
    cause = 'load-centre-beyond-plate';
    if (rating.loadCentreMm < loadCentreMm) continue;
    if (best === null || rating.capacityKg > best.rating.capacityKg) best = { rating, at };
  }
  return best === null ? { kind: 'unproven', cause } : { kind: 'proven', ...best };
}

/** Has the plate any forward-tilt rating for what is fitted? Without one the tilt rule has nothing to read. */
export function ratesForwardTilt(truck: Truck): boolean {
  return truck.plate.ratings.some(
    (rating) => rating.mast === 'forward-tilt' && rating.attachment === truck.fittedAttachment,
  );
}
