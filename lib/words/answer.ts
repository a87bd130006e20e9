import type { LiftAnswer } from '../check/step.ts';
import { type DisplayUnits, formatMass } from '../units/format-quantity.ts';
import { ruleTitle } from './rule.ts';
import { stepSentence } from './step.ts';
import { verdictWord } from './verdict.ts';

/** The verdict with the step that decided it, in one line. */
export function answerSentence(answer: LiftAnswer, units: DisplayUnits): string {
  const governing = answer.steps.find(({ rule }) => rule === answer.governing);
  if (governing === undefined) throw new Error(`no step for the governing rule ${answer.governing}`);
  return `${verdictWord(answer.verdict)}. ${ruleTitle(governing.rule)}: ${stepSentence(governing, units)}`;
}

/** The largest mass that would be clear or thin here with a load of this size. */
export function mostSentence(mostKg: number | null, units: DisplayUnits): string {
  if (mostKg === null)
    return 'What could be lifted here at most cannot be said until the missing facts are known.';
  if (mostKg === 0) return 'No load of this size may be lifted here by this truck, whatever it weighs.';
  return `A load of this size may weigh up to ${formatMass(mostKg, units, 'down')} here with this truck.`;
}
