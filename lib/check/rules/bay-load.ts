import { standingOnBay } from '../../rack/stand.ts';
import type { LiftCase } from '../lift-case.ts';
import { origin } from '../origins.ts';
import { compareMass, notApplicable, type RuleAnswer } from '../rule-answer.ts';
import { withStanding } from '../with-standing.ts';

/**
 * Does the bay carry the load with all that stands on its beam levels?
 *
 * all else on the bay's beam levels + assessedKg <= bay.maxBayLoadKg; equality passes. The floor does not load the
 * bay. Placing on a beam level of a bay whose notice states a limit.
 * Source: the rack's load notice (EN 15635); the order of the sum is that of lib/rack/stand.ts.
 */
export function checkBayLoad(lift: LiftCase): RuleAnswer {
  const { index, place, context, view } = lift;
  if (context.operation === 'retrieve') return notApplicable('bay-load', 'kg', 'taking-down');
  if (place.level.level === 0) return notApplicable('bay-load', 'kg', 'floor-level');
  const { id, maxBayLoadKg } = place.bay;
  if (maxBayLoadKg === null) return notApplicable('bay-load', 'kg', 'notice-states-none');
  return compareMass('bay-load', {
    ...withStanding(lift, id, standingOnBay(index, place.bay, view), maxBayLoadKg),
    limitCause: 'notice-states-none',
    haveFrom: [origin('notice', id, 'maxBayLoadKg', maxBayLoadKg, 'kg')],
  });
}
