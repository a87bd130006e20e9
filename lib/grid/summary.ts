import { VERDICTS } from '../check/step.ts';
import { type GridAnswer, NO_ANSWER } from './question.ts';
import { CLEAR, REFUSE, THIN } from './tally.ts';

/** As `bestTruck`: nothing is asked at this location, or no truck was. */
export const NO_TRUCK = -1;

/** The trucks together, per location: what one cell of an overview shows. */
export type LocationSummary = {
  /** The best verdict of the chosen trucks, as an index into VERDICTS; NO_ANSWER where nothing is asked. */
  best: Uint8Array;
  /** Its truck's column: of equal verdicts the one that could lift most, of equal masses the first. */
  bestTruck: Int16Array;
  /** That truck's mostKg, kg; -1 where it cannot be said. */
  bestMostKg: Float64Array;
  /** The rule that decided for that truck, as an index into RULE_IDS; NO_ANSWER where nothing is asked. */
  bestRule: Uint8Array;
  clear: Uint16Array;
  thin: Uint16Array;
};

/**
 * How well is each location served by these trucks? `trucks` are columns of the answer (all, when left out). A mass
 * that cannot be said ranks below every mass that can.
 */
export function summariseLocations(answer: GridAnswer, trucks?: readonly number[]): LocationSummary {
  const { locationCount, truckCount, verdicts, governing, mostKg } = answer;
  const columns = trucks ?? Array.from({ length: truckCount }, (_, truck) => truck);
  const summary: LocationSummary = {
    best: new Uint8Array(locationCount).fill(NO_ANSWER),
    bestTruck: new Int16Array(locationCount).fill(NO_TRUCK),
    bestMostKg: new Float64Array(locationCount).fill(-1),
    bestRule: new Uint8Array(locationCount).fill(NO_ANSWER),
    clear: new Uint16Array(locationCount),
    thin: new Uint16Array(locationCount),
  };
  for (let location = 0; location < locationCount; location += 1) {
    let best = REFUSE + 1;
    let bestTruck = NO_TRUCK;
    let bestKg = -1;
    for (const truck of columns) {
      const cell = location * truckCount + truck;
      const verdict = verdicts[cell]!;
      if (verdict === NO_ANSWER) break;
      if (verdict === CLEAR) summary.clear[location]! += 1;
      else if (verdict === THIN) summary.thin[location]! += 1;
      const kg = mostKg[cell]!;
      if (verdict < best || (verdict === best && kg > bestKg)) {
        best = verdict;
        bestTruck = truck;
        bestKg = kg;
      }
    }
    if (bestTruck === NO_TRUCK) continue;
    summary.best[location] = best;
    summary.bestTruck[location] = bestTruck;
    summary.bestMostKg[location] = bestKg;
    summary.bestRule[location] = governing[location * truckCount + bestTruck]!;
  }
  return summary;
}

/** How many locations of a range have each best verdict; `unasked`: nothing is asked there. */
export type VerdictCounts = {
  clear: number;
  thin: number;
  unproven: number;
  refuse: number;
  unasked: number;
};

/** Counts the best verdicts of the locations from first up to, but not including, end. */
export function countVerdicts(summary: LocationSummary, first: number, end: number): VerdictCounts {
  const counts: VerdictCounts = { clear: 0, thin: 0, unproven: 0, refuse: 0, unasked: 0 };
  for (let location = first; location < end; location += 1) {
    const best = summary.best[location]!;
    counts[best === NO_ANSWER ? 'unasked' : VERDICTS[best]!] += 1;
  }
  return counts;
}

/** The counts of each run: `firstLocation` has one entry more than there are runs (runRanges of compiled-site.ts). */
export function countVerdictsByRun(
  summary: LocationSummary,
  firstLocation: ArrayLike<number>,
): VerdictCounts[] {
  return Array.from({ length: firstLocation.length - 1 }, (_, run) =>
    countVerdicts(summary, firstLocation[run]!, firstLocation[run + 1]!),
  );
}
