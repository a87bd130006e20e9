import type { LiftCase } from '../lift-case.ts';
import { origin, truckFact } from '../origins.ts';
import { compareLengths, type RuleAnswer } from '../rule-answer.ts';

/**
 * Can the truck reach the row where the location stands?
 *
 * row (1 front, 2 rear) <= truck.reachDepth; equality passes. A rear location behind a standing front pallet passes
 * with the warning `front-occupied`: the front pallet has to be moved first. Source: common practice.
 */
export function checkDepthReach(lift: LiftCase): RuleAnswer {
  const { place, truck } = lift;
  const step = compareLengths('depth-reach', {
    need: place.row,
    have: truck.reachDepth,
    unit: 'row',
    needFrom: [origin('rack', place.id, 'row', place.row, 'row')],
    haveFrom: [truckFact(lift, 'reachDepth', truck.reachDepth, 'row')],
  });
  return step.outcome === 'pass' && standsInFront(lift) ? { ...step, cause: 'front-occupied' } : step;
}

/** Does a pallet other than the one being moved stand in the front location of the same column? */
function standsInFront({ index, place, context }: LiftCase): boolean {
  if (place.row === 1 || context.stock === 'empty') return false;
  const front = place.level.locations[place.column];
  return front !== undefined && front !== context.from && index.stockAt.has(front);
}
