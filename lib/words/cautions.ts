import type { Context, LiftAnswer } from '../check/step.ts';
import type { MassBasis } from '../model/policy.ts';
import { causeWords } from './cause.ts';
import { asSentence } from './plain-words.ts';
import { ruleTitle } from './rule.ts';

/** What every answer is read under, whatever it says. */
export const STANDING_CAUTIONS: readonly string[] = [
  "The truck's capacity plate and the rack's load notice govern. Where they differ from these facts, they are right.",
  "Local rules, the maker's instructions and competent persons come first.",
];

/** Said beside every estimated mass. */
export const ESTIMATE_CAUTION =
  'An estimate is not a rating. Only the maker can rate a truck beyond its plate or with another attachment.';

/**
 * What a person must bear in mind with this one answer: what was not judged, what is not known, what has to happen
 * first. The standing cautions come last.
 */
export function cautions(answer: LiftAnswer, context: Context, massBasis: MassBasis | null): string[] {
  return [
    ...warnings(answer),
    ...notJudged(answer, context),
    ...massCaution(answer, massBasis),
    ...STANDING_CAUTIONS,
  ];
}

function warnings({ steps }: LiftAnswer): string[] {
  return steps
    .filter(({ outcome, cause }) => outcome === 'pass' && cause !== undefined)
    .map(({ cause }) => asSentence(causeWords(cause!)));
}

/** What the question itself leaves unjudged, the same for every answer to it. */
export function questionCautions(context: Context): string[] {
  const said: string[] = [];
  if (context.asOf === null) {
    said.push('No time was given: checks, holds and the end of authorisations were not judged.');
  }
  if (context.operator === null) said.push('Nobody was named: authorisation was not judged.');
  if (context.stock === 'empty')
    said.push('The racks were taken as empty: what stands in them was not counted.');
  return said;
}

function notJudged(answer: LiftAnswer, context: Context): string[] {
  const said = questionCautions(context);
  const open = answer.steps.filter(({ outcome }) => outcome === 'unknown').map(({ rule }) => ruleTitle(rule));
  if (open.length > 0 && (answer.verdict === 'clear' || answer.verdict === 'thin')) {
    said.push(
      open.length === 1
        ? `One rule could not be judged and did not decide: ${open[0]}.`
        : `${open.length} rules could not be judged and did not decide: ${open.join(', ')}.`,
    );
  }
  return said;
}

function massCaution(answer: LiftAnswer, basis: MassBasis | null): string[] {
  if (answer.assessedKg === null) return ["The load's mass is not known: weigh it."];
  if (basis === 'declared') {
    const weigh = answer.verdict === 'thin' ? ' The margin is thin: weigh it before lifting.' : '';
    return [`The mass is declared, not weighed.${weigh}`];
  }
  return [];
}
