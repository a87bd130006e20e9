import { UNKNOWN_KG } from './load-columns.ts';
import { ASK_ALL, STEPS } from './mass-steps.ts';
import { NO_ANSWER } from './question.ts';
import { NO_TRUCK } from './summary.ts';
import { CANNOT_SAY, codeOf, mostKgOf, REFUSE, type Tally, THIN, verdictOf } from './tally.ts';
import { type TruckSide, weighAllLimits } from './truck-side.ts';

/** What all trucks together say of one load of a kind. */
export type BestTruck = {
  /** How many are clear or thin. */
  able: number;
  /** The best: best verdict, then the most mass, then the first; NO_TRUCK where none is asked. */
  truck: number;
  code: number;
  /** What it could lift, kg; NaN where it cannot be said. */
  mostKg: number;
};

/**
 * The steps of one kind: `says[i]` holds for masses up to and including `upToKg[i]`; the last one, with no mass, is for
 * a load of unknown mass. `clean` is false where two limits of a truck lie so near that steps cannot tell them apart.
 */
export type KindSteps = { upToKg: number[]; says: BestTruck[]; clean: boolean };

/** Finds the masses between fromKg and toKg at which any truck changes its mind, and asks all trucks between them. */
export function stepsOfKind(side: TruckSide, tally: Tally, fromKg: number, toKg: number): KindSteps {
  const unknown = bestTruckFor(side, tally, UNKNOWN_KG);
  if (side.code.includes(ASK_ALL)) {
    return { upToKg: [Number.POSITIVE_INFINITY, Number.NaN], says: [unknown, unknown], clean: false };
  }
  const ends = side.aboveKg.filter((kg) => kg >= fromKg && kg < toKg).sort();
  const upToKg: number[] = [];
  const says: BestTruck[] = [];
  for (let i = 0; i <= ends.length; i += 1) {
    const end = ends[i] ?? toKg;
    if (i > 0 && end === ends[i - 1]) continue;
    const here = bestTruckFor(side, tally, end);
    const before = says.at(-1);
    if (before !== undefined && isSame(before, here)) upToKg.pop();
    else says.push(here);
    upToKg.push(end);
  }
  upToKg[upToKg.length - 1] = Number.POSITIVE_INFINITY;
  return { upToKg: [...upToKg, Number.NaN], says: [...says, unknown], clean: true };
}

function isSame(a: BestTruck, b: BestTruck): boolean {
  return a.able === b.able && a.truck === b.truck && a.code === b.code && Object.is(a.mostKg, b.mostKg);
}

/** Asks every truck about one mass (UNKNOWN_KG: not known). A mass that cannot be said ranks below all that can. */
export function bestTruckFor(side: TruckSide, tally: Tally, massKg: number): BestTruck {
  let able = 0;
  let truck = NO_TRUCK;
  let bestVerdict = REFUSE + 1;
  let code = codeOf(NO_ANSWER, NO_ANSWER);
  let mostKg = CANNOT_SAY;
  for (let row = 0; row < side.verdict.length; row += 1) {
    const said = codeFor(side, tally, row, massKg);
    const verdict = verdictOf(said);
    if (verdict <= THIN) able += 1;
    if (verdict > bestVerdict) continue;
    const kg = mostKgOf(side.mostKg[row]!);
    if (verdict === bestVerdict && kg <= mostKg) continue;
    bestVerdict = verdict;
    truck = row;
    code = said;
    mostKg = kg;
  }
  return { able, truck, code, mostKg: mostKg === CANNOT_SAY ? Number.NaN : mostKg };
}

function codeFor(side: TruckSide, tally: Tally, row: number, massKg: number): number {
  const at = row * STEPS;
  const { aboveKg } = side;
  const step = massKg > aboveKg[at + 2]! ? 3 : massKg > aboveKg[at + 1]! ? 2 : massKg > aboveKg[at]! ? 1 : 0;
  const code = side.code[row * (STEPS + 1) + step]!;
  if (code !== ASK_ALL && massKg !== UNKNOWN_KG) return code;
  weighAllLimits(tally, side, row, massKg);
  return codeOf(tally.verdict, tally.rule);
}
