import { racksInPlace } from '../check/racks-in-place.ts';
import type { Outcome, Step } from '../check/step.ts';
import { indexSite } from '../model/site-index.ts';
import type { BeforeAfter } from './site-of-run.ts';

/** A rule of the racks that a standing pallet breaks, or can no longer be shown to keep, after the change. */
export type StandingTrouble = {
  /** The location's id after the change. */
  location: string;
  load: string;
  step: Step;
  /** What the rule said before the change. */
  before: Outcome;
};

/** `worse`: what is broken before what is no longer proven, each in the order of the stock. */
export type StandingComparison = { worse: StandingTrouble[]; asBefore: number; better: number };

const WORST_LAST: readonly Outcome[] = ['not-applicable', 'pass', 'thin', 'unknown', 'fail'];

/**
 * Which pallets that stand in the run break a rule of the racks after the change that they kept before? Each is judged
 * as if it were placed back where it stands, by the rules of lib/check; the truck plays no part in them. `asBefore`:
 * faults that the change leaves; `better`: those that it mends.
 */
export function compareStanding({ before, after, links }: BeforeAfter): StandingComparison {
  const result: StandingComparison = { worse: [], asBefore: 0, better: 0 };
  if (before === null || after === null) return result;
  const [was, is] = [indexSite(before), indexSite(after)];
  const savedId = new Map(links.locations);
  for (const { location, load } of after.stock) {
    const then = racksInPlace(was, savedId.get(location)!);
    for (const [rule, now] of racksInPlace(is, location).entries()) {
      const old = then[rule]!.outcome;
      const change = rank(now.outcome) - rank(old);
      if (change < 0 && isTrouble(old)) result.better += 1;
      if (!isTrouble(now.outcome)) continue;
      if (change > 0) result.worse.push({ location, load, step: now, before: old });
      else if (change === 0) result.asBefore += 1;
    }
  }
  return result;
}

function isTrouble(outcome: Outcome): boolean {
  return outcome === 'fail' || outcome === 'unknown';
}

/** A rule that did not apply was kept. */
function rank(outcome: Outcome): number {
  return outcome === 'not-applicable' ? 1 : WORST_LAST.indexOf(outcome);
}
