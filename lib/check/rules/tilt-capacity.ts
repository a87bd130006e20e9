import type { LiftCase } from '../lift-case.ts';
import { assessedFrom } from '../origins.ts';
import { plateFrom } from '../plate-origins.ts';
import { plateRating, ratesForwardTilt } from '../plate-rating.ts';
import { compareMass, notApplicable, type RuleAnswer } from '../rule-answer.ts';

/**
 * Does the capacity plate prove this mass with the mast tilted forward?
 *
 * As plate-capacity, among the forward-tilt ratings of the fitted attachment; equality passes. Not asked where the
 * site keeps the mast vertical at height or where the plate has no such rating.
 * Source: capacity with forward tilt is lower and stated apart where it is needed (ISO 22915-8, scope).
 */
export function checkTiltCapacity(lift: LiftCase): RuleAnswer {
  if (lift.policy.tilt === 'mast-kept-vertical')
    return notApplicable('tilt-capacity', 'kg', 'mast-kept-vertical');
  if (!ratesForwardTilt(lift.truck)) return notApplicable('tilt-capacity', 'kg', 'no-tilt-ratings');
  const plate = plateRating(lift.truck, 'forward-tilt', lift.liftMm, lift.loadCentreMm);
  const capacityKg = plate.kind === 'proven' ? plate.rating.capacityKg : null;
  return compareMass('tilt-capacity', {
    needKg: lift.assessedKg,
    haveKg: capacityKg,
    allowsKg: capacityKg,
    limitCause: plate.kind === 'proven' ? 'no-rating' : plate.cause,
    needFrom: assessedFrom(lift),
    haveFrom: plateFrom(lift, 'forward-tilt', plate),
  });
}
