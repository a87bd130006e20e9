import type { RuleId } from '../model/rule-ids.ts';
import type { Step, Verdict } from './step.ts';
import { stepUse } from './step-use.ts';

/**
 * What do the steps come to, and which of them decides?
 *
 * Any fail: `refuse`. Else any unknown among mustKnow: `unproven`. Else any thin: `thin`. Else `clear`.
 * Governing: among the steps that decided it (the fails, the unknowns of mustKnow, the thins, or for `clear` the
 * passes) the one of highest use; of equal uses the first in the order of RULE_IDS, in which the steps must come.
 */
export function decideVerdict(
  steps: readonly Step[],
  mustKnow: readonly RuleId[],
): { verdict: Verdict; governing: RuleId } {
  const fails = steps.filter(({ outcome }) => outcome === 'fail');
  if (fails.length > 0) return { verdict: 'refuse', governing: highestUse(fails) };
  const unknowns = steps.filter(({ outcome, rule }) => outcome === 'unknown' && mustKnow.includes(rule));
  if (unknowns.length > 0) return { verdict: 'unproven', governing: highestUse(unknowns) };
  const thins = steps.filter(({ outcome }) => outcome === 'thin');
  if (thins.length > 0) return { verdict: 'thin', governing: highestUse(thins) };
  return { verdict: 'clear', governing: highestUse(steps.filter(({ outcome }) => outcome === 'pass')) };
}

function highestUse(steps: readonly Step[]): RuleId {
  let governing = steps[0];
  if (governing === undefined) throw new Error('no step decided the verdict: depth-reach always gives one');
  for (const step of steps) if (stepUse(step) > stepUse(governing)) governing = step;
  return governing.rule;
}
