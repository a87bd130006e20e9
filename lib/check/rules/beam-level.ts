import { standingOnLevel } from '../../rack/stand.ts';
import type { LiftCase } from '../lift-case.ts';
import { origin } from '../origins.ts';
import { compareMass, notApplicable, type RuleAnswer } from '../rule-answer.ts';
import { withStanding } from '../with-standing.ts';

/**
 * Does the pair of beams carry the load with what else stands on it?
 *
 * what else stands on the level + assessedKg <= level.pairCapacityKg; equality passes. Both rows of a double-deep
 * level count on the one figure. Placing on a beam level. Unknown when the notice gives no pair capacity.
 * Source: the rack's load notice (EN 15635); the order of the sum is that of lib/rack/stand.ts.
 */
export function checkBeamLevel(lift: LiftCase): RuleAnswer {
  const { index, place, context, view } = lift;
  if (context.operation === 'retrieve') return notApplicable('beam-level', 'kg', 'taking-down');
  if (place.level.level === 0) return notApplicable('beam-level', 'kg', 'floor-level');
  const name = `${place.bay.id} level ${place.level.level}`;
  const { pairCapacityKg } = place.level;
  return compareMass('beam-level', {
    ...withStanding(lift, name, standingOnLevel(index, place.level, view), pairCapacityKg),
    limitCause: 'pair-capacity-unknown',
    haveFrom: [origin('notice', name, 'pairCapacityKg', pairCapacityKg, 'kg')],
  });
}
