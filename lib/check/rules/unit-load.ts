import type { LiftCase } from '../lift-case.ts';
import { assessedFrom, origin } from '../origins.ts';
import { compareMass, notApplicable, type RuleAnswer } from '../rule-answer.ts';

/**
 * Is the load within the notice's limit for one unit load?
 *
 * assessedKg <= level.maxUnitKg; equality passes. Placing on a beam level where the notice states a limit.
 * Source: the rack's load notice (EN 15635).
 */
export function checkUnitLoad(lift: LiftCase): RuleAnswer {
  const { place, context, assessedKg } = lift;
  if (context.operation === 'retrieve') return notApplicable('unit-load', 'kg', 'taking-down');
  if (place.level.level === 0) return notApplicable('unit-load', 'kg', 'floor-level');
  const maxUnitKg = place.level.maxUnitKg;
  if (maxUnitKg === null) return notApplicable('unit-load', 'kg', 'notice-states-none');
  return compareMass('unit-load', {
    needKg: assessedKg,
    haveKg: maxUnitKg,
    allowsKg: maxUnitKg,
    limitCause: 'notice-states-none',
    needFrom: assessedFrom(lift),
    haveFrom: [origin('notice', `${place.bay.id} level ${place.level.level}`, 'maxUnitKg', maxUnitKg, 'kg')],
  });
}
