import type { Condition } from '../../model/racking.ts';
import type { LiftCase } from '../lift-case.ts';
import { origin } from '../origins.ts';
import type { RuleAnswer } from '../rule-answer.ts';

/**
 * Is the steel sound where the load goes?
 *
 * Placing fails when the level or either frame of the bay is amber or red; the worst is named. Taking down passes in
 * any condition, with the warning `red-take-down-only` when one of them is red. The floor is asked too.
 * Source: EN 15635, amber is not reloaded once emptied, red is emptied at once.
 */
export function checkRackCondition({ place, context }: LiftCase): RuleAnswer {
  const worst = worstOf([place.level.condition, place.leftFrame.condition, place.rightFrame.condition]);
  const answer = {
    rule: 'rack-condition',
    unit: 'state',
    have: worst,
    needFrom: [origin('standard', 'EN 15635', 'condition', 'sound', 'state')],
    haveFrom: [
      origin(
        'rack',
        `${place.bay.id} level ${place.level.level}`,
        'condition',
        place.level.condition,
        'state',
      ),
      origin('rack', `frame ${place.leftFrame.id}`, 'condition', place.leftFrame.condition, 'state'),
      origin('rack', `frame ${place.rightFrame.id}`, 'condition', place.rightFrame.condition, 'state'),
    ],
  } as const;
  if (context.operation === 'retrieve') {
    const taken = { ...answer, outcome: 'pass', need: 'any condition', needFrom: [] } as const;
    return worst === 'red' ? { ...taken, cause: 'red-take-down-only' } : taken;
  }
  if (worst === 'sound') return { ...answer, need: 'sound', outcome: 'pass' };
  return { ...answer, need: 'sound', outcome: 'fail', cause: worst };
}

function worstOf(conditions: readonly Condition[]): Condition {
  if (conditions.includes('red')) return 'red';
  return conditions.includes('amber') ? 'amber' : 'sound';
}
