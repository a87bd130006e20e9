import type { Context, LiftAnswer } from '../../lib/check/step.ts';
import { grossMass, type Load } from '../../lib/model/load.ts';
import { palletOf, type SiteIndex } from '../../lib/model/site-index.ts';
import { answerSentence, mostSentence } from '../../lib/words/answer.ts';
import { cautions } from '../../lib/words/cautions.ts';
import { originSentence } from '../../lib/words/origin.ts';
import { ruleTitle } from '../../lib/words/rule.ts';
import { stepSentence } from '../../lib/words/step.ts';
import { outcomeWord, VERDICT_MARKS } from '../../lib/words/verdict.ts';
import { printable, questionLines } from './question-lines.ts';

/** One lift with its whole working: each rule, what it needs, what it has, and where each number came from. */
export function answerWorking(index: SiteIndex, load: Load, context: Context, answer: LiftAnswer): string {
  const basis = grossMass(load, palletOf(index, load))?.basis ?? null;
  const steps = answer.steps.flatMap((step) => [
    `${outcomeWord(step.outcome).padEnd(9)}  ${ruleTitle(step.rule)}`,
    `           ${stepSentence(step, 'metric')}`,
    ...[...step.needFrom, ...step.haveFrom].map((from) => `             ${originSentence(from, 'metric')}`),
  ]);
  const text = [
    ...questionLines(index, load, context),
    `Location ${answer.location}, truck ${answer.truck}`,
    '',
    `${VERDICT_MARKS[answer.verdict]} ${answerSentence(answer, 'metric')}`,
    mostSentence(answer.mostKg, 'metric'),
    '',
    ...steps,
    '',
    ...cautions(answer, context, basis),
  ];
  return `${text.map(printable).join('\n')}\n`;
}
