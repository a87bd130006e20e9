import type { LiftAnswer } from '../check/step.ts';
import { type DisplayUnits, formatMass } from '../units/format-quantity.ts';
import { answerLead, leadSentence } from './room.ts';
import { verdictWord } from './verdict.ts';

/** The verdict with what a reader is told first about it, in one line. */
export function answerSentence(answer: LiftAnswer, units: DisplayUnits): string {
  return `${verdictWord(answer.verdict)}. ${leadSentence(answerLead(answer, units))}`;
}

/** The largest mass that would be clear or thin here with a load of this size. */
export function mostSentence(mostKg: number | null, units: DisplayUnits): string {
  if (mostKg === null)
    return 'What could be lifted here at most cannot be said until the missing facts are known.';
  if (mostKg === 0) return 'No load of this size may be lifted here by this truck, whatever it weighs.';
  return `A load of this size may weigh up to ${formatMass(mostKg, units, 'down')} here with this truck.`;
}
