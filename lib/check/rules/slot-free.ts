import type { LiftCase } from '../lift-case.ts';
import { origin } from '../origins.ts';
import { notApplicable, type RuleAnswer } from '../rule-answer.ts';

/**
 * Is the location free to place in?
 *
 * Fails when a pallet stands there, the same unit load included, unless it is the one being moved (context.from).
 * Not asked when taking down or when the racks are taken as empty. Source: a location holds one pallet.
 */
export function checkSlotFree({ index, place, context }: LiftCase): RuleAnswer {
  if (context.operation === 'retrieve') return notApplicable('slot-free', 'state', 'taking-down');
  if (context.stock === 'empty') return notApplicable('slot-free', 'state', 'racks-taken-as-empty');
  const standing = place.id === context.from ? undefined : index.stockAt.get(place.id);
  const answer = {
    rule: 'slot-free',
    unit: 'state',
    need: 'empty',
    needFrom: [],
    haveFrom: [origin('stock', place.id, 'load', standing?.id ?? null, 'state')],
  } as const;
  return standing === undefined
    ? { ...answer, outcome: 'pass', have: 'empty' }
    : { ...answer, outcome: 'fail', have: 'occupied', cause: 'occupied' };
}
