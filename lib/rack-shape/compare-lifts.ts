import { type Context, type Operation, VERDICTS, type Verdict } from '../check/step.ts';
import { answerGrid } from '../grid/answer-grid.ts';
import { compileSite } from '../grid/compile-site.ts';
import type { CompiledSite } from '../grid/compiled-site.ts';
import { type GridAnswer, type GridQuestion, NO_ANSWER } from '../grid/question.ts';
import type { Load } from '../model/load.ts';
import { RULE_IDS, type RuleId } from '../model/rule-ids.ts';
import type { Site } from '../model/site.ts';
import { indexSite } from '../model/site-index.ts';
import { locationsOf } from './neighbours.ts';
import type { BeforeAfter } from './site-of-run.ts';

/** What is asked of each truck at each location: what stands there, or a load to try every location with. */
export type LiftAsked = { of: 'standing' | 'reference'; operation: Operation };

/** One lift whose verdict the change turns. */
export type LiftChange = {
  asked: LiftAsked;
  truck: string;
  /** The location's id before and after. */
  before: string;
  after: string;
  from: Verdict;
  to: Verdict;
  fromRule: RuleId;
  toRule: RuleId;
};

export type LiftComparison = {
  /** How many lifts went from one verdict to another, those that stay among them. */
  counts: Record<Verdict, Record<Verdict, number>>;
  /** The lifts that change, worst turn first, at most MOST_LISTED. */
  changes: LiftChange[];
  changed: number;
  /** Verdicts of the reference load at locations that are new, by truck and location. */
  fresh: Record<Verdict, number>;
};

export const MOST_LISTED = 500;

const ASKED: readonly LiftAsked[] = [
  { of: 'standing', operation: 'retrieve' },
  { of: 'standing', operation: 'place' },
  { of: 'reference', operation: 'place' },
];

/**
 * Which lifts change their verdict? Every truck at every location of the run, by lib/grid before and after: taking down
 * what stands there, placing it back, and placing the reference load (none is tried where it is null). Locations that
 * are new or gone have no before or after and are not compared.
 */
export function compareLifts(
  { before, after, links }: BeforeAfter,
  reference: Load | null,
  asOf: string | null,
): LiftComparison {
  const result: LiftComparison = { counts: noCounts(), changes: [], changed: 0, fresh: noVerdicts() };
  if (after === null) return result;
  const is = askable(after);
  const was = before === null ? null : askable(before);
  const rowBefore = new Map(was?.locations.map((id, row) => [id, row]));
  const savedId = new Map(links.locations);
  const trucks = after.trucks.map(({ id }) => id);
  for (const asked of ASKED) {
    const question = questionOf(asked, reference, trucks, asOf);
    if (question === null) continue;
    const now = answerGrid(is.site, question);
    const then = was === null ? null : answerGrid(was.site, question);
    for (const [row, id] of is.locations.entries()) {
      const saved = savedId.get(id);
      if (saved === undefined) {
        if (asked.of === 'reference') countFresh(now, row, result.fresh);
        continue;
      }
      if (then === null) continue;
      const old = { answer: then, row: rowBefore.get(saved)!, location: saved };
      compareRow(asked, trucks, old, { answer: now, row, location: id }, result);
    }
  }
  keepWorst(result.changes);
  return result;
}

/** A site of one run in columns, with its locations in the order of the rows. */
function askable(site: Site): { site: CompiledSite; locations: string[] } {
  return { site: compileSite(indexSite(site)), locations: site.runs.flatMap(locationsOf) };
}

type Side = { answer: GridAnswer; row: number; location: string };

function compareRow(
  asked: LiftAsked,
  trucks: readonly string[],
  then: Side,
  now: Side,
  result: LiftComparison,
): void {
  const { truckCount } = now.answer;
  for (const [truck, id] of trucks.entries()) {
    const [old, cell] = [then.row * truckCount + truck, now.row * truckCount + truck];
    const [fromCode, toCode] = [then.answer.verdicts[old]!, now.answer.verdicts[cell]!];
    if (fromCode === NO_ANSWER || toCode === NO_ANSWER) continue;
    const [from, to] = [VERDICTS[fromCode]!, VERDICTS[toCode]!];
    result.counts[from][to] += 1;
    if (from === to) continue;
    result.changed += 1;
    if (result.changes.length >= 20 * MOST_LISTED) keepWorst(result.changes);
    result.changes.push({
      asked,
      truck: id,
      before: then.location,
      after: now.location,
      from,
      to,
      fromRule: RULE_IDS[then.answer.governing[old]!]!,
      toRule: RULE_IDS[now.answer.governing[cell]!]!,
    });
  }
}

/** The worst turns first, no more than are listed; equal ones as they came. */
function keepWorst(changes: LiftChange[]): void {
  changes.sort((a, b) => turn(b) - turn(a));
  changes.splice(MOST_LISTED);
}

function countFresh(answer: GridAnswer, row: number, fresh: Record<Verdict, number>): void {
  for (let truck = 0; truck < answer.truckCount; truck += 1) {
    const code = answer.verdicts[row * answer.truckCount + truck]!;
    if (code !== NO_ANSWER) fresh[VERDICTS[code]!] += 1;
  }
}

function questionOf(
  { of, operation }: LiftAsked,
  reference: Load | null,
  trucks: readonly string[],
  asOf: string | null,
): GridQuestion | null {
  const context: Context = { operation, asOf, operator: null, stock: 'as-is', from: null };
  if (of === 'standing') return { load: { kind: 'stored' }, trucks, context };
  return reference === null ? null : { load: { kind: 'one', load: reference }, trucks, context };
}

/** How far a verdict falls (or, below 0, rises). */
function turn({ from, to }: LiftChange): number {
  return VERDICTS.indexOf(to) - VERDICTS.indexOf(from);
}

function noVerdicts(): Record<Verdict, number> {
  return { clear: 0, thin: 0, unproven: 0, refuse: 0 };
}

function noCounts(): LiftComparison['counts'] {
  return { clear: noVerdicts(), thin: noVerdicts(), unproven: noVerdicts(), refuse: noVerdicts() };
}
