import { forkArmKg } from '../fork-arm.ts';
import type { LiftCase } from '../lift-case.ts';
import { assessedFrom, loadCentreFrom, origin, truckFact } from '../origins.ts';
import { compareMass, type RuleAnswer } from '../rule-answer.ts';

/**
 * Is each of the two fork arms strong enough for its half of the load?
 *
 * assessedKg / 2 <= armCapacityKg x min(1, armLoadCentreMm / loadCentreMm); equality passes. Unknown when the arms'
 * marking is not recorded. Source: ISO 2330 marking, mass per arm at a load centre; see fork-arm.ts.
 */
export function checkForkArms(lift: LiftCase): RuleAnswer {
  const { truck, assessedKg, loadCentreMm } = lift;
  const { armCapacityKg, armLoadCentreMm } = truck.forks;
  const haveKg = forkArmKg(truck.forks, loadCentreMm);
  return compareMass('fork-arms', {
    needKg: assessedKg === null ? null : assessedKg / 2,
    haveKg,
    allowsKg: haveKg === null ? null : 2 * haveKg,
    limitCause: 'fork-arm-rating-unknown',
    needFrom: [...assessedFrom(lift), origin('formula', 'two fork arms', 'assessed / 2', 2, 'count')],
    haveFrom: [
      truckFact(lift, 'forks.armCapacityKg', armCapacityKg, 'kg'),
      truckFact(lift, 'forks.armLoadCentreMm', armLoadCentreMm),
      ...loadCentreFrom(lift),
    ],
  });
}
