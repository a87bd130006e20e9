import { isThin } from '../check/thin.ts';
import { CLEAR, CLOSE, codeOf, NO_RULE, REFUSE, THIN } from './tally.ts';
import type { TruckSide } from './truck-side.ts';

/** A row says up to four things: one more than it has steps. */
export const STEPS = 3;

/** As a code: two limits lie so near each other that every one has to be asked (weighAllLimits). */
export const ASK_ALL = codeOf(0, CLOSE);

/**
 * What does a row of the trucks' side say as the load grows heavier?
 *
 * Fills code[4 row + n], where n of the row's three masses aboveKg[3 row ...] are below the load's. They rise: first
 * what weighs nothing decides, then the least limit as a pass, as thin, as a failure. A step that cannot come is
 * skipped by two equal masses or by Infinity.
 */
export function fillMassSteps(side: TruckSide, row: number, thinPercent: number): void {
  const verdict = side.verdict[row]!;
  const use = side.use[row]!;
  const rule = side.rule[row]!;
  const limitKg = side.leastKg[row]!;
  const limitRule = side.leastRule[row]!;
  const codes = side.code;
  codes[row * 4] = codeOf(verdict, rule);
  codes[row * 4 + 1] = codeOf(CLEAR, limitRule);
  codes[row * 4 + 2] = codeOf(THIN, limitRule);
  codes[row * 4 + 3] = codeOf(REFUSE, limitRule);
  if (limitRule === CLOSE) codes.fill(ASK_ALL, row * 4, row * 4 + 4);
  let first = Number.POSITIVE_INFINITY;
  let second = Number.POSITIVE_INFINITY;
  let third = Number.POSITIVE_INFINITY;
  if (limitRule !== NO_RULE) {
    const outweighed = (massKg: number) => {
      const weighed = massKg / limitKg;
      return weighed > use || (weighed === use && limitRule < rule);
    };
    if (verdict === CLEAR) {
      second = largestKgWithout((limitKg * (100 - thinPercent)) / 100, (kg) =>
        isThin(kg, limitKg, thinPercent),
      );
      second = Math.min(second, limitKg);
      first = Math.min(second, largestKgWithout(use * limitKg, outweighed));
      third = limitKg;
    } else if (verdict === REFUSE) {
      if (use < Number.POSITIVE_INFINITY)
        third = Math.max(limitKg, largestKgWithout(use * limitKg, outweighed));
      first = third;
      second = third;
    } else {
      first = limitKg;
      second = limitKg;
      third = limitKg;
    }
  }
  side.aboveKg[row * STEPS] = first;
  side.aboveKg[row * STEPS + 1] = second;
  side.aboveKg[row * STEPS + 2] = third;
}

const double = new Float64Array(1);
const words = new Int32Array(double.buffer);

/**
 * The largest mass for which something that stays true from some mass on is not true yet, to the last bit: a search
 * from an estimate that rounding has moved by a few bits at most.
 */
function largestKgWithout(estimateKg: number, isTrue: (kg: number) => boolean): number {
  let kg = estimateKg;
  while (kg > 0 && isTrue(kg)) kg = neighbour(kg, -1);
  for (let next = neighbour(kg, 1); !isTrue(next); next = neighbour(next, 1)) kg = next;
  return kg;
}

/** The next double above (1) or below (-1) a mass of 0 or more. */
function neighbour(kg: number, step: 1 | -1): number {
  double[0] = kg;
  const low = words[0]!;
  words[0] = low + step;
  if (step === 1 && low === -1) words[1]! += 1;
  if (step === -1 && low === 0) words[1]! -= 1;
  return double[0];
}
