import { VERDICTS, type Verdict } from '@/lib/check/step.ts';
import { NO_ANSWER } from '@/lib/grid/question.ts';
import type { LocationSummary } from '@/lib/grid/summary.ts';
import { MASS_RULES, RULE_IDS, type RuleId } from '@/lib/model/rule-ids.ts';
import type { Place, SiteIndex } from '@/lib/model/site-index.ts';

/** What the racks answer, with what is needed to read it row by row. */
export type RacksAnswer = {
  index: SiteIndex;
  /** The places in site order. */
  places: readonly Place[];
  summary: LocationSummary;
  /** The trucks asked, by column. */
  trucks: readonly string[];
  /** Assessed mass asked about: one for all, or one per place; -1 unknown. */
  assessedKg: Float64Array;
};

/** Mass asked about at a place, kg; null when it is not known or nothing is asked. */
export function assessedAt(answer: RacksAnswer, place: number): number | null {
  const kg = answer.assessedKg.length === 1 ? answer.assessedKg[0]! : (answer.assessedKg[place] ?? -1);
  return kg < 0 ? null : kg;
}

/** The most that the best truck could lift at a place, kg; null where it cannot be said. */
export function mostAt({ summary }: RacksAnswer, place: number): number | null {
  const kg = summary.bestMostKg[place] ?? -1;
  return kg < 0 ? null : kg;
}

/**
 * What is left of it beyond the load asked about, kg; negative where it is too heavy. null where it cannot be said, and
 * where no mass decides: a place that no load may have is not a number of kilograms short.
 */
export function spareAt(answer: RacksAnswer, place: number): number | null {
  const most = mostAt(answer, place);
  const assessed = assessedAt(answer, place);
  if (most === null || assessed === null) return null;
  if (most === 0 && !MASS_RULES.some((rule) => rule === ruleAt(answer, place))) return null;
  return most - assessed;
}

/** The rule that decided for the best truck at a place, or null where nothing is asked. */
export function ruleAt({ summary }: RacksAnswer, place: number): RuleId | null {
  return RULE_IDS[summary.bestRule[place] ?? NO_ANSWER] ?? null;
}

export function verdictAt({ summary }: RacksAnswer, place: number): Verdict | null {
  const code = summary.best[place];
  return code === undefined || code === NO_ANSWER ? null : VERDICTS[code]!;
}

/** The truck that does best at a place, or null where nothing is asked. */
export function truckAt(answer: RacksAnswer, place: number): string | null {
  if (verdictAt(answer, place) === null) return null;
  return answer.trucks[answer.summary.bestTruck[place]!] ?? null;
}
