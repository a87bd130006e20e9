import type { LiftCase } from '../lift-case.ts';
import { assessedFrom } from '../origins.ts';
import { plateFrom } from '../plate-origins.ts';
import { plateRating } from '../plate-rating.ts';
import { compareMass, type RuleAnswer } from '../rule-answer.ts';

/**
 * Does the capacity plate prove this mass at this lift and load centre, mast vertical?
 *
 * assessedKg <= the largest capacityKg among the vertical-mast ratings of the fitted attachment with
 * liftHeightMm >= liftMm and loadCentreMm >= the load's; equality passes. Nothing is stretched beyond the plate.
 * Source: the maker's plate governs (OSHA 1910.178(a)(4)-(5); ISO 3691-1, from memory). See plate-rating.ts.
 */
export function checkPlateCapacity(lift: LiftCase): RuleAnswer {
  const plate = plateRating(lift.truck, 'vertical', lift.liftMm, lift.loadCentreMm);
  const capacityKg = plate.kind === 'proven' ? plate.rating.capacityKg : null;
  return compareMass('plate-capacity', {
    needKg: lift.assessedKg,
    haveKg: capacityKg,
    allowsKg: capacityKg,
    limitCause: plate.kind === 'proven' ? 'no-rating' : plate.cause,
    needFrom: assessedFrom(lift),
    haveFrom: plateFrom(lift, 'vertical', plate),
  });
}
