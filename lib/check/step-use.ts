import { STATE_RULES } from '../model/rule-ids.ts';
import type { Step } from './step.ts';

/**
 * How much of what it has does a step use up? need / have.
 *
 * A failed yes/no rule and have <= 0 count as Infinity; a passed yes/no rule, an unknown and a rule that does not
 * apply as 0.
 */
export function stepUse(step: Pick<Step, 'rule' | 'outcome' | 'need' | 'have'>): number {
  if (step.outcome === 'unknown' || step.outcome === 'not-applicable') return 0;
  if (STATE_RULES.some((rule) => rule === step.rule))
    return step.outcome === 'fail' ? Number.POSITIVE_INFINITY : 0;
  if (typeof step.need !== 'number' || typeof step.have !== 'number') {
    throw new Error(`${step.rule}: ${step.outcome} without two numbers`);
  }
  return step.have <= 0 ? Number.POSITIVE_INFINITY : step.need / step.have;
}
