import type { LiftCase } from '../lift-case.ts';
import { liftFrom, truckFact } from '../origins.ts';
import { compareLengths, type RuleAnswer } from '../rule-answer.ts';

/**
 * Do the forks go high enough to set down or take up at this level?
 *
 * liftMm = beamTopMm + entryMm + placingClearanceMm <= truck.maxLiftMm; equality passes. Source: fork height needed =
 * beam top + pallet entry + clearance to lift off (common practice).
 */
export function checkLiftHeight(lift: LiftCase): RuleAnswer {
  const { liftMm, truck } = lift;
  return compareLengths('lift-height', {
    need: liftMm,
    have: truck.maxLiftMm,
    needFrom: liftFrom(lift),
    haveFrom: [truckFact(lift, 'maxLiftMm', truck.maxLiftMm)],
  });
}
