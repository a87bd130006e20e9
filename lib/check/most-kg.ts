import { MASS_RULES, type RuleId } from '../model/rule-ids.ts';
import type { RuleAnswer } from './rule-answer.ts';

/**
 * What is the largest assessed mass that would be clear or thin here with this geometry, kg?
 *
 * 0 if a rule other than the mass rules fails; else null if a rule of mustKnow is unknown for a reason other than this
 * load's own mass; else the least of what the mass rules that apply and know their limit allow; null if none does.
 * A mass rule knows when `allowsKg` is a number, whatever this load weighs. Equality: the answer itself passes.
 */
export function mostKg(answers: readonly RuleAnswer[], mustKnow: readonly RuleId[]): number | null {
  const isMass = (answer: RuleAnswer) => MASS_RULES.some((rule) => rule === answer.rule);
  if (answers.some((answer) => answer.outcome === 'fail' && !isMass(answer))) return 0;
  const open = answers.some((answer) => {
    if (answer.outcome === 'not-applicable' || !mustKnow.includes(answer.rule)) return false;
    return isMass(answer) ? answer.allowsKg === null : answer.outcome === 'unknown';
  });
  if (open) return null;
  let least: number | null = null;
  for (const answer of answers) {
    if (answer.allowsKg === undefined || answer.allowsKg === null) continue;
    if (least === null || answer.allowsKg < least) least = answer.allowsKg;
  }
  return least;
}
