import { VERDICTS, type Verdict } from '@/lib/check/step.ts';
import { answerGrid } from '@/lib/grid/answer-grid.ts';
import type { CompiledSite } from '@/lib/grid/compiled-site.ts';
import { NO_ANSWER } from '@/lib/grid/question.ts';
import { found } from '@/lib/model/site-index.ts';

/** How many of the pallets that stand in a run this truck may take down, by verdict. */
export type ServedRun = { run: string; aisle: string; standing: number; counts: Record<Verdict, number> };

/**
 * What can this truck take down where it stands, run by run? No time is given, so that this is what the truck can do
 * when it is fit for service: checks and holds are told apart from it.
 */
export function servedByRun(site: CompiledSite, truck: string): ServedRun[] {
  const { index } = site;
  const runs = new Map(
    index.site.runs.map(({ id, aisleId }): [string, ServedRun] => [
      id,
      { run: id, aisle: aisleId, standing: 0, counts: { clear: 0, thin: 0, unproven: 0, refuse: 0 } },
    ]),
  );
  const answer = answerGrid(site, {
    load: { kind: 'stored' },
    trucks: [truck],
    context: { operation: 'retrieve', asOf: null, operator: null, stock: 'as-is', from: null },
  });
  let at = -1;
  // the answer's rows are the locations in site order, as index.places is
  for (const place of index.places.values()) {
    at += 1;
    const code = answer.verdicts[at] ?? NO_ANSWER;
    if (code === NO_ANSWER) continue;
    const verdict = VERDICTS[code];
    if (verdict === undefined) throw new Error(`no verdict has the code ${code}`);
    const run = found(runs, place.run.id, 'run');
    run.standing += 1;
    run.counts[verdict] += 1;
  }
  return [...runs.values()];
}
