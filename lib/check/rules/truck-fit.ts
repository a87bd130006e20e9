import type { LiftCase } from '../lift-case.ts';
import { origin, policyFact } from '../origins.ts';
import { notApplicable, type RuleAnswer } from '../rule-answer.ts';
import type { Cause } from '../step.ts';
import { type TruckFitState, truckFitState } from '../truck-fit-state.ts';

/**
 * Is the truck fit for service at asOf?
 *
 * Fails on any hold and when the newest check at or before asOf failed; unknown without a check or with one older
 * than checkValidHours. Equality: an age of exactly checkValidHours counts. Not asked without asOf.
 * Source: examination before each shift (OSHA 1910.178(q)(7)); checkValidHours is the site's.
 */
export function checkTruckFit(lift: LiftCase): RuleAnswer {
  const { index, truck, asOfMs, context } = lift;
  if (asOfMs === null) return notApplicable('truck-fit', 'state', 'no-time-given');
  const fit = truckFitState(index, truck, asOfMs);
  const found = {
    rule: 'truck-fit',
    unit: 'state',
    need: 'in service',
    have: fit.state === 'never checked' ? null : fit.state,
    needFrom: [
      policyFact(lift, 'checkValidHours', 'hours'),
      origin('formula', 'asOf', 'asOf', context.asOf, 'state'),
    ],
    haveFrom:
      truck.hold === null
        ? [
            origin('check-record', truck.id, 'at', fit.check?.at ?? null, 'state'),
            origin('check-record', truck.id, 'result', fit.check?.result ?? null, 'state'),
          ]
        : [
            origin('truck', truck.id, 'hold.since', truck.hold.since, 'state'),
            origin('truck', truck.id, 'hold.reason', truck.hold.reason, 'state'),
          ],
  } as const;
  return fit.state === 'in service' ? { ...found, outcome: 'pass' } : { ...found, ...judged(fit.state) };
}

function judged(state: Exclude<TruckFitState['state'], 'in service'>): {
  outcome: 'fail' | 'unknown';
  cause: Cause;
} {
  switch (state) {
    case 'held':
      return { outcome: 'fail', cause: 'held' };
    case 'check failed':
      return { outcome: 'fail', cause: 'check-failed' };
    case 'never checked':
      return { outcome: 'unknown', cause: 'never-checked' };
    case 'check too old':
      return { outcome: 'unknown', cause: 'check-too-old' };
  }
}
