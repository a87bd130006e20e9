import type { Context, LiftAnswer, Verdict } from '../../lib/check/step.ts';
import type { Load } from '../../lib/model/load.ts';
import type { SiteIndex } from '../../lib/model/site-index.ts';
import { formatMass } from '../../lib/units/format-quantity.ts';
import { questionCautions, STANDING_CAUTIONS } from '../../lib/words/cautions.ts';
import { ruleTitle } from '../../lib/words/rule.ts';
import { stepSentence } from '../../lib/words/step.ts';
import { VERDICT_MARKS, verdictMeaning, verdictWord } from '../../lib/words/verdict.ts';
import { printable, questionLines } from './question-lines.ts';

/** The answers as a table for people, a line each, piece by piece; then how many there are of each verdict. */
export function* answerTable(
  index: SiteIndex,
  load: Load,
  context: Context,
  answers: Iterable<LiftAnswer>,
): Generator<string> {
  yield lines([...questionLines(index, load, context), ...questionCautions(context), '']);
  const wide = widths(index);
  yield `${tableRow(wide, 'Location', 'Truck', 'Verdict', 'At most', 'Decided by')}\n`;
  const counts: Record<Verdict, number> = { clear: 0, thin: 0, unproven: 0, refuse: 0 };
  for (const answer of answers) {
    counts[answer.verdict] += 1;
    yield `${answerRow(wide, answer)}\n`;
  }
  const summary = Object.entries(counts).map(([verdict, count]) => {
    const known = verdict as Verdict;
    return `${VERDICT_MARKS[known]} ${verdictWord(known).padEnd(9)}${String(count).padStart(9)}  ${verdictMeaning(known)}`;
  });
  yield lines(['', ...summary, '', ...STANDING_CAUTIONS]);
}

type Widths = { location: number; truck: number };

function widths(index: SiteIndex): Widths {
  const longest = (ids: Iterable<string>, least: number) => {
    let width = least;
    for (const id of ids) width = Math.max(width, printable(id).length);
    return width;
  };
  return { location: longest(index.places.keys(), 8), truck: longest(index.trucks.keys(), 5) };
}

function answerRow(wide: Widths, answer: LiftAnswer): string {
  const { location, truck, verdict, governing, mostKg } = answer;
  const step = answer.steps.find(({ rule }) => rule === governing)!;
  return tableRow(
    wide,
    printable(location),
    printable(truck),
    `${VERDICT_MARKS[verdict]} ${verdictWord(verdict)}`,
    mostKg === null ? 'not known' : formatMass(mostKg, 'metric', 'down'),
    `${ruleTitle(governing)}: ${printable(stepSentence(step, 'metric'))}`,
  );
}

function tableRow(wide: Widths, location: string, truck: string, verdict: string, most: string, why: string) {
  return `${location.padEnd(wide.location)}  ${truck.padEnd(wide.truck)}  ${verdict.padEnd(10)}  ${most.padStart(10)}  ${why}`;
}

function lines(list: readonly string[]): string {
  return `${list.join('\n')}\n`;
}
