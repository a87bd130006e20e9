import type { LiftAnswer, Step } from '../../lib/check/step.ts';

/** The answers as one JSON array, one answer to a line, piece by piece. */
export function* answerAsJson(answers: Iterable<LiftAnswer>, asked: { working: boolean }): Generator<string> {
  let before = '[\n';
  for (const answer of answers) {
    yield before + answerText(answer, asked.working);
    before = ',\n';
  }
  yield before === '[\n' ? '[]\n' : '\n]\n';
}

function answerText(answer: LiftAnswer, working: boolean): string {
  const { location, truck, load, verdict, governing, assessedKg, mostKg, steps } = answer;
  const told = steps.map((step) => (working ? step : withoutOrigins(step)));
  return JSON.stringify({ location, truck, load, verdict, governing, assessedKg, mostKg, steps: told });
}

function withoutOrigins({ rule, outcome, need, have, unit, cause }: Step) {
  return { rule, outcome, need, have, unit, cause };
}
