import type { RuleId } from '../model/rule-ids.ts';

export const OUTCOMES = ['pass', 'thin', 'fail', 'unknown', 'not-applicable'] as const;
export type Outcome = (typeof OUTCOMES)[number];

export const VERDICTS = ['clear', 'thin', 'unproven', 'refuse'] as const;
export type Verdict = (typeof VERDICTS)[number];

export type Operation = 'place' | 'retrieve';

/** What need and have are measured in: `row` counts rows of depth, `state` compares two words. */
export type StepUnit = 'kg' | 'mm' | 'row' | 'state';

/** Why a step is as it is, where the two values do not say it. */
export type Cause =
  // not-applicable
  | 'no-time-given'
  | 'no-operator-given'
  | 'racks-taken-as-empty'
  | 'taking-down'
  | 'floor-level'
  | 'top-level'
  | 'not-the-top-level'
  | 'decked'
  | 'nothing-overhead'
  | 'notice-states-none'
  | 'no-tilt-ratings'
  | 'mast-kept-vertical'
  | 'plate-states-none'
  // fail
  | 'held'
  | 'check-failed'
  | 'not-authorised'
  | 'authorisation-expired'
  | 'occupied'
  | 'amber'
  | 'red'
  // unknown
  | 'never-checked'
  | 'check-too-old'
  | 'no-rating'
  | 'height-beyond-plate'
  | 'load-centre-beyond-plate'
  | 'mass-unknown'
  | 'stock-mass-unknown'
  | 'no-turning-data'
  | 'load-inside-wheels'
  | 'fork-length-unknown'
  | 'fork-arm-rating-unknown'
  | 'mast-height-unknown'
  | 'overhead-not-surveyed'
  | 'sprinkler-not-surveyed'
  | 'pair-capacity-unknown'
  | 'gap-beyond-frame-ratings'
  // a pass with a warning
  | 'red-take-down-only'
  | 'front-occupied';

/** Where a number came from: whose fact, which field, its value as stored (kg, mm, a word). */
export type Origin = {
  of:
    | 'load'
    | 'plate'
    | 'truck'
    | 'notice'
    | 'rack'
    | 'frame-rating'
    | 'aisle'
    | 'stock'
    | 'policy'
    | 'check-record'
    | 'authorisation'
    | 'formula'
    | 'standard';
  /** The id of the load, truck, bay, ... or the name of the standard or formula. */
  subject: string;
  /** The field or the part, e.g. `maxLiftMm`, `ratings[2]`, `X3`. */
  field: string;
  value: number | string | null;
  unit: StepUnit | 'percent' | 'fraction' | 'hours' | 'count' | null;
};

/** One rule's answer. A number that is not known is null; a rule that does not apply has null for both. */
export type Step = {
  rule: RuleId;
  outcome: Outcome;
  need: number | string | null;
  have: number | string | null;
  unit: StepUnit;
  cause?: Cause;
  needFrom: readonly Origin[];
  haveFrom: readonly Origin[];
};

/** What is asked around a lift. */
export type Context = {
  operation: Operation;
  /** ISO time at which checks, holds and authorisations are judged; null: they are not judged. */
  asOf: string | null;
  /** An operator's id, or null: nobody named. */
  operator: string | null;
  stock: 'as-is' | 'empty';
  /** The location that the load comes from: what stands there counts neither in sums nor as occupying. */
  from: string | null;
};

/** One lift judged, with its working. */
export type LiftAnswer = {
  location: string;
  truck: string;
  load: string;
  verdict: Verdict;
  /** The step that decided the verdict. */
  governing: RuleId;
  assessedKg: number | null;
  /** The largest assessed mass that would be clear or thin here with this geometry; null when it cannot be said. */
  mostKg: number | null;
  /** All rules, in the order of RULE_IDS. */
  steps: readonly Step[];
};
