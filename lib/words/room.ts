import { leastRoom } from '../check/least-room.ts';
import type { LiftAnswer } from '../check/step.ts';
import type { MASS_RULES } from '../model/rule-ids.ts';
import { type DisplayUnits, formatMass } from '../units/format-quantity.ts';
import { ruleTitle } from './rule.ts';
import { stepSentence } from './step.ts';

const LIMITS: Record<(typeof MASS_RULES)[number], string> = {
  'plate-capacity': 'capacity plate of the truck',
  'tilt-capacity': 'capacity plate, mast tilted forward',
  'fork-arms': 'fork arms',
  'unit-load': 'unit load on the notice',
  'beam-level': 'pair of beams',
  'bay-load': 'load of the bay',
  'frame-load': 'upright frames',
};

/** What a reader is told first about a lift: a heading, and the sentence below it. */
export type Lead = { title: string; sentence: string };

/**
 * The lead of an answer. Of a clear lift what is left, and whose limit that is: "1 250 kg at most here: unit load on
 * the notice"; of any other the rule that decided it. What governs stays what it is, and is said after.
 */
export function answerLead(answer: LiftAnswer, units: DisplayUnits): Lead {
  const room = answer.verdict === 'clear' ? leastRoom(answer) : null;
  if (room === null) return governingLead(answer, units);
  return {
    title: `${formatMass(room.mostKg, units, 'down')} at most here: ${LIMITS[room.rule]}`,
    sentence: `This load leaves ${formatMass(room.roomKg, units, 'down')} of it.`,
  };
}

/** The rule that decided, with its step. */
export function governingLead({ governing, steps }: LiftAnswer, units: DisplayUnits): Lead {
  const step = steps.find(({ rule }) => rule === governing);
  if (step === undefined) throw new Error(`no step for the governing rule ${governing}`);
  return { title: ruleTitle(governing), sentence: stepSentence(step, units) };
}

/** "Unit load: 1 150 kg assessed; the notice allows 1 200 kg: 50 kg to spare." */
export function leadSentence({ title, sentence }: Lead): string {
  return title.includes(':') ? `${title}. ${sentence}` : `${title}: ${sentence}`;
}
