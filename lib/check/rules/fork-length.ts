import type { LiftCase } from '../lift-case.ts';
import { loadFact, policyFact, truckFact } from '../origins.ts';
import { compareLengths, type RuleAnswer } from '../rule-answer.ts';

/**
 * Do the forks support enough of the load's depth?
 *
 * forkSupportFraction x depthMm <= forks.lengthMm; equality passes. Unknown when the length is not recorded.
 * Source: AS 2359.2:2013 cl. 3.7(e), three quarters of the load.
 */
export function checkForkLength(lift: LiftCase): RuleAnswer {
  const { load, truck, policy } = lift;
  return compareLengths('fork-length', {
    need: policy.forkSupportFraction * load.depthMm,
    have: truck.forks.lengthMm,
    unknownCause: 'fork-length-unknown',
    needFrom: [policyFact(lift, 'forkSupportFraction', 'fraction'), loadFact(lift, 'depthMm', load.depthMm)],
    haveFrom: [truckFact(lift, 'forks.lengthMm', truck.forks.lengthMm)],
  });
}
