import type { LiftCase } from '../lift-case.ts';
import { liftFrom, loadFact, origin, policyFact } from '../origins.ts';
import { compareLengths, notApplicable, type RuleAnswer } from '../rule-answer.ts';

/**
 * Does the load itself, carried in front of the mast, clear what hangs over the aisle?
 *
 * liftMm - entryMm + heightMm + overheadMarginMm <= aisle.overheadClearMm; equality passes. "none": not applicable.
 * Not surveyed: unknown. Source: what strikes the roof is whichever is higher, the mast or the load (common practice).
 */
export function checkLoadOverhead(lift: LiftCase): RuleAnswer {
  const { aisle, load, liftMm, entryMm, policy } = lift;
  if (aisle.overheadClearMm === 'none') return notApplicable('load-overhead', 'mm', 'nothing-overhead');
  return compareLengths('load-overhead', {
    need: liftMm - entryMm + load.heightMm + policy.overheadMarginMm,
    have: aisle.overheadClearMm,
    unknownCause: 'overhead-not-surveyed',
    needFrom: [
      ...liftFrom(lift),
      loadFact(lift, 'heightMm', load.heightMm),
      policyFact(lift, 'overheadMarginMm'),
    ],
    haveFrom: [origin('aisle', aisle.id, 'overheadClearMm', aisle.overheadClearMm, 'mm')],
  });
}
