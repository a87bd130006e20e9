import type { RuleId } from '../model/rule-ids.ts';
import type { Cause, Origin, Step, StepUnit } from './step.ts';

/**
 * What a rule says before thinness is judged. A mass rule that applies adds `allowsKg`: the largest assessed mass it
 * would allow, whatever this load weighs; null when it cannot say. Other rules leave it out.
 */
export type RuleAnswer = Step & { allowsKg?: number | null };

type From = { needFrom: readonly Origin[]; haveFrom: readonly Origin[] };

/** The rule has nothing to say about this lift, and why. */
export function notApplicable(rule: RuleId, unit: StepUnit, cause: Cause): RuleAnswer {
  return { rule, outcome: 'not-applicable', need: null, have: null, unit, cause, needFrom: [], haveFrom: [] };
}

/**
 * Is need <= have? Exact doubles; equality passes. A side that is null makes the step unknown, for `unknownCause`.
 * Throws on NaN: a bug, since lib/model lets none in.
 */
export function compareLengths(
  rule: RuleId,
  values: { need: number | null; have: number | null; unit?: StepUnit; unknownCause?: Cause } & From,
): RuleAnswer {
  const { need, have, needFrom, haveFrom, unknownCause } = values;
  const step = { rule, need, have, unit: values.unit ?? 'mm', needFrom, haveFrom } as const;
  if (need === null || have === null) {
    if (unknownCause === undefined) throw new Error(`${rule}: a value is missing and no cause is named`);
    return { ...step, outcome: 'unknown', cause: unknownCause };
  }
  return { ...step, outcome: passes(rule, need, have) ? 'pass' : 'fail' };
}

/**
 * Does a mass stay within its limit? Exact doubles; equality passes. An unknown limit is named before an unknown
 * mass, since it still stands once the load is weighed.
 */
export function compareMass(
  rule: RuleId,
  values: {
    needKg: number | null;
    haveKg: number | null;
    /** What the rule allows for the load alone; null when the limit or what else stands is unknown. */
    allowsKg: number | null;
    /** Named when have is null. */
    limitCause: Cause;
    /** Named when only need is null; default: the load's own mass. */
    needCause?: Cause;
  } & From,
): RuleAnswer {
  const { needKg, haveKg, allowsKg, limitCause, needCause, needFrom, haveFrom } = values;
  const step = { rule, need: needKg, have: haveKg, unit: 'kg', needFrom, haveFrom, allowsKg } as const;
  if (haveKg === null) return { ...step, outcome: 'unknown', cause: limitCause };
  if (needKg === null) return { ...step, outcome: 'unknown', cause: needCause ?? 'mass-unknown' };
  return { ...step, outcome: passes(rule, needKg, haveKg) ? 'pass' : 'fail' };
}

function passes(rule: RuleId, need: number, have: number): boolean {
  if (Number.isNaN(need) || Number.isNaN(have)) throw new Error(`${rule}: need ${need}, have ${have}`);
  return need <= have;
}
