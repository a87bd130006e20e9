import type { Cause } from '../check/step.ts';
import type { RuleId } from '../model/rule-ids.ts';
import type { PlateRating, TruckKind } from '../model/truck.ts';

/** `stop`: act before the next lift there. `plan`: mend it in the ordinary run of work. `note`: know it. */
export const SEVERITIES = ['stop', 'plan', 'note'] as const;
export type Severity = (typeof SEVERITIES)[number];

/** In the order in which findings of one severity are listed. */
export const FINDING_KINDS = [
  'unit-overload',
  'beam-level-overload',
  'bay-overload',
  'frame-overload',
  'red-steel-loaded',
  'amber-steel-loaded',
  'under-supported',
  'load-too-tall',
  'load-too-wide',
  'near-sprinklers',
  'stranded-for-fleet',
  'stranded',
  'one-truck',
  'mass-unknown',
  'declared-thin',
  'plate-contradicts',
  'plate-rises',
  'plate-lacks-attachment',
  'plate-stops-below-mast',
  'truck-check-failed',
  'truck-held',
  'truck-unchecked',
  'truck-facts-missing',
  'authorisation-ended',
  'authorisation-ending',
  'pair-capacity-missing',
  'unit-limit-missing',
  'bay-limit-missing',
  'frame-gap-beyond-ratings',
  'aisle-not-surveyed',
  'out-of-reach',
  'unplaceable',
  'hand-pick',
  'hand-pick-too-high',
] as const;
export type FindingKind = (typeof FINDING_KINDS)[number];

/** A line of a plate, as it stands there. */
export type PlateLine = Pick<PlateRating, 'liftHeightMm' | 'loadCentreMm' | 'capacityKg'>;

/** What a finding is about and where. Bays and frames are named within their run. */
export type Subject =
  | { of: 'stored-load'; location: string; load: string }
  | { of: 'level'; run: string; bay: string; level: number }
  | { of: 'bay'; run: string; bay: string }
  | { of: 'frame'; run: string; frame: string }
  | { of: 'aisle'; aisle: string; overhead: 'mast' | 'sprinklers' }
  /** A load of the site with the locations it stands in, as far as the finding concerns them. */
  | { of: 'load'; load: string; locations: readonly string[] }
  | { of: 'locations'; rule: RuleId; cause: Cause | null; locations: readonly string[] }
  /** `lacks` tells the missing facts of one truck apart. */
  | { of: 'truck'; truck: string; lacks: Cause | null }
  /** `higher` is the line of the greater lift or load centre; null where one line is not held against another. */
  | {
      of: 'plate';
      truck: string;
      mast: PlateRating['mast'];
      attachment: string | null;
      lines: { lower: PlateLine; higher: PlateLine } | null;
    }
  | { of: 'authorisation'; operator: string; truckKind: TruckKind };

export type FigureUnit =
  | 'kg'
  | 'mm'
  | 'row'
  | 'index'
  | 'days'
  | 'hours'
  | 'pallets'
  | 'trucks'
  | 'locations';

/**
 * What is needed, what there is, and by how much the one passes the other; null: not known. Where only numbers that
 * are known could be summed, `needIs` says that the true need is that or more.
 */
export type Figures = {
  need: number | null;
  have: number | null;
  excess: number | null;
  unit: FigureUnit;
  needIs: 'exact' | 'at-least';
};

/** What the finding rests on: a rule of the lift check (with its cause, if any), or a standard by name. */
export type Source = { of: 'rule'; rule: RuleId; cause: Cause | null } | { of: 'standard'; name: string };

export const ADVICE_CODES = [
  'take-load-off',
  'weigh-then-take-off',
  'empty-and-cordon',
  'do-not-reload',
  'deck-or-move',
  'move-to-taller-opening',
  'move-to-wider-bay',
  'lower-the-top',
  'bring-in-a-truck',
  'enter-missing-facts',
  'return-a-truck-to-service',
  'keep-that-truck-running',
  'weigh',
  'read-the-plate-again',
  'have-the-plate-re-rated',
  'take-out-of-service',
  'mend-and-release',
  'check-before-use',
  'renew-authorisation',
  'do-not-let-drive',
  'ask-for-the-notice',
  'ask-the-maker-about-the-gap',
  'survey-the-aisle',
  'leave-empty-or-change-fleet',
  'find-another-way-to-store',
  'lighten-the-pick',
  'bring-down-before-picking',
] as const;
export type Advice = (typeof ADVICE_CODES)[number];

/** Something about the site that a person should act on. lib/words makes the sentences. */
export type Finding = {
  /** Made from kind and subject alone: the same trouble on another day has the same id. */
  id: string;
  kind: FindingKind;
  severity: Severity;
  subject: Subject;
  figures: Figures;
  source: Source;
  advice: Advice;
  /** The truck that comes nearest, or the only one, where a finding names one. */
  truck: string | null;
};
