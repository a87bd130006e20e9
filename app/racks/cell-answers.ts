import { VERDICTS } from '@/lib/check/step.ts';
import { type GridAnswer, NO_ANSWER } from '@/lib/grid/question.ts';

/** The best that the chosen trucks can do at each location, in site order. */
export type CellAnswers = {
  /** Index into VERDICTS of the best truck; NO_ANSWER where nothing stands. */
  verdicts: Uint8Array;
  /** Column of the best truck; meaningless where there is no answer. */
  bestTruck: Uint16Array;
  /** How many trucks are clear or thin. */
  ableTrucks: Uint16Array;
  /** Index into RULE_IDS of the best truck's governing step. */
  governing: Uint8Array;
  /** Most kg with the best truck, -1 where it cannot be said. */
  mostKg: Float64Array;
  /** Assessed mass asked about at each location, -1 unknown. */
  assessedKg: Float64Array;
};

const THIN = VERDICTS.indexOf('thin');

/**
 * What is the best verdict at each location over the trucks asked about? The best verdict counts first (clear, thin,
 * unproven, refuse), then the larger most-kg, then the earlier truck.
 */
export function bestOfTrucks(answer: GridAnswer): CellAnswers {
  const { locationCount, truckCount } = answer;
  const out: CellAnswers = {
    verdicts: new Uint8Array(locationCount).fill(NO_ANSWER),
    bestTruck: new Uint16Array(locationCount),
    ableTrucks: new Uint16Array(locationCount),
    governing: new Uint8Array(locationCount).fill(NO_ANSWER),
    mostKg: new Float64Array(locationCount).fill(-1),
    assessedKg: new Float64Array(locationCount),
  };
  for (let place = 0; place < locationCount; place++) {
    out.assessedKg[place] = answer.assessedKg[answer.assessedKg.length === 1 ? 0 : place] ?? -1;
    let best = -1;
    for (let truck = 0; truck < truckCount; truck++) {
      const cell = place * truckCount + truck;
      const verdict = answer.verdicts[cell]!;
      if (verdict === NO_ANSWER) continue;
      if (verdict <= THIN) out.ableTrucks[place]!++;
      if (best === -1 || isBetter(answer, cell, best)) best = cell;
    }
    if (best === -1) continue;
    out.verdicts[place] = answer.verdicts[best]!;
    out.governing[place] = answer.governing[best]!;
    out.mostKg[place] = answer.mostKg[best]!;
    out.bestTruck[place] = best - place * truckCount;
  }
  return out;
}

function isBetter(answer: GridAnswer, cell: number, than: number): boolean {
  const verdict = answer.verdicts[cell]!;
  const other = answer.verdicts[than]!;
  return verdict !== other ? verdict < other : answer.mostKg[cell]! > answer.mostKg[than]!;
}

/** How many locations have each verdict, and how many have none; over a span of site order. */
export function countVerdicts(
  verdicts: Uint8Array,
  from = 0,
  count = verdicts.length - from,
): { each: number[]; none: number } {
  const each = VERDICTS.map(() => 0);
  let none = 0;
  for (let place = from; place < from + count; place++) {
    const verdict = verdicts[place]!;
    if (verdict === NO_ANSWER) none++;
    else each[verdict]!++;
  }
  return { each, none };
}
