import type { LiftCase } from '../lift-case.ts';
import { mastTopMm } from '../mast-top.ts';
import { liftFrom, origin, policyFact, truckFact } from '../origins.ts';
import { compareLengths, notApplicable, type RuleAnswer } from '../rule-answer.ts';

/**
 * Does the mast clear what hangs over the aisle at this lift?
 *
 * mastTopMm(truck, liftMm) + overheadMarginMm <= aisle.overheadClearMm; equality passes. "none": not applicable. Not
 * surveyed, or a mast of unknown height: unknown. Source: common practice; see mast-top.ts.
 */
export function checkMastOverhead(lift: LiftCase): RuleAnswer {
  const { aisle, truck, liftMm, policy } = lift;
  if (aisle.overheadClearMm === 'none') return notApplicable('mast-overhead', 'mm', 'nothing-overhead');
  const topMm = mastTopMm(truck, liftMm);
  return compareLengths('mast-overhead', {
    need: topMm === null ? null : topMm + policy.overheadMarginMm,
    have: aisle.overheadClearMm,
    unknownCause: aisle.overheadClearMm === null ? 'overhead-not-surveyed' : 'mast-height-unknown',
    needFrom: [
      truckFact(lift, 'loweredMm', truck.loweredMm),
      truckFact(lift, 'extendedMm', truck.extendedMm),
      truckFact(lift, 'freeLiftMm', truck.freeLiftMm),
      truckFact(lift, 'maxLiftMm', truck.maxLiftMm),
      ...liftFrom(lift),
      policyFact(lift, 'overheadMarginMm'),
    ],
    haveFrom: [origin('aisle', aisle.id, 'overheadClearMm', aisle.overheadClearMm, 'mm')],
  });
}
