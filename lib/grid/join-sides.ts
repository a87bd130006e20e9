import { EMPTY } from './compiled-site.ts';
import type { GridSheet } from './grid-sheet.ts';
import { UNKNOWN_KG } from './load-columns.ts';
import { ASK_ALL, STEPS } from './mass-steps.ts';
import { NO_ANSWER } from './question.ts';
import { CLEAR, mostKgOf, ruleOf, verdictOf } from './tally.ts';
import { weighAllLimits } from './truck-side.ts';

/*
 * The hot loops of the grid: every cell of the answer is written here. They read flat arrays and call nothing that
 * does not fold away, and they decide as Tally does: the worse verdict, then the higher use, then the earlier rule.
 */

/** Joins the trucks' and the racks' side into answers, for a range of locations and of trucks. */
export function joinSides(
  sheet: GridSheet,
  first: number,
  end: number,
  firstTruck: number,
  endTruck: number,
): void {
  if (sheet.asked === null) joinStored(sheet, first, end, firstTruck, endTruck);
  else joinOne(sheet, first, end, firstTruck, endTruck);
}

/** One load: the trucks' side has its mass in it already, and the free locations of a level have the same answer. */
function joinOne(sheet: GridSheet, first: number, end: number, firstTruck: number, endTruck: number): void {
  const { rackSide } = sheet;
  const { kindOf } = sheet.kinds;
  const { code: truckCode, use: truckUse, mostKg: truckKg } = sheet.truckSide;
  const { verdicts, governing, mostKg, truckCount } = sheet.answer;
  for (let location = first; location < end; location += 1) {
    const cells = location * truckCount;
    if (location > first && isSameCase(sheet, location)) {
      for (let cell = cells + firstTruck; cell < cells + endTruck; cell += 1) {
        verdicts[cell] = verdicts[cell - truckCount]!;
        governing[cell] = governing[cell - truckCount]!;
        mostKg[cell] = mostKg[cell - truckCount]!;
      }
      continue;
    }
    const rackVerdict = rackSide.verdict[location]!;
    const rackUse = rackSide.use[location]!;
    const rackRule = rackSide.rule[location]!;
    const rackKg = rackSide.mostKg[location]!;
    const kind = kindOf[location]! * truckCount;
    for (let truck = firstTruck; truck < endTruck; truck += 1) {
      const row = kind + truck;
      const cell = cells + truck;
      let verdict = verdictOf(truckCode[row]!);
      let rule = ruleOf(truckCode[row]!);
      if (rackVerdict >= verdict) {
        const use = truckUse[row]!;
        if (rackVerdict > verdict || rackUse > use || (rackUse === use && rackRule < rule)) {
          verdict = rackVerdict;
          rule = rackRule;
        }
      }
      verdicts[cell] = verdict;
      governing[cell] = rule;
      mostKg[cell] = mostKgOf(Math.min(truckKg[row]!, rackKg));
    }
  }
}

/** Is a location of the kind of the one before, and do the racks say the same there? */
function isSameCase({ kinds, rackSide }: GridSheet, location: number): boolean {
  return (
    kinds.kindOf[location] === kinds.kindOf[location - 1] &&
    rackSide.rule[location] === rackSide.rule[location - 1] &&
    rackSide.use[location] === rackSide.use[location - 1] &&
    rackSide.mostKg[location] === rackSide.mostKg[location - 1] &&
    rackSide.verdict[location] === rackSide.verdict[location - 1]
  );
}

/** What stands there: each load is looked up in the mass steps of its kind and truck as the sides are joined. */
function joinStored(
  sheet: GridSheet,
  first: number,
  end: number,
  firstTruck: number,
  endTruck: number,
): void {
  const { site, rackSide } = sheet;
  const { verdicts, governing, mostKg, assessedKg, truckCount } = sheet.answer;
  for (let location = first; location < end; location += 1) {
    const cells = location * truckCount;
    if (site.standing[location] === EMPTY) {
      verdicts.fill(NO_ANSWER, cells + firstTruck, cells + endTruck);
      governing.fill(NO_ANSWER, cells + firstTruck, cells + endTruck);
      mostKg.fill(-1, cells + firstTruck, cells + endTruck);
    } else if (rackSide.verdict[location] === CLEAR && rackSide.use[location] === 0) {
      takeTrucksSide(sheet, location, assessedKg[location]!, firstTruck, endTruck);
    } else {
      joinLocation(sheet, location, assessedKg[location]!, firstTruck, endTruck);
    }
  }
}

/**
 * Where the racks only pass, with no use (taking down), the truck's side is the answer: depth-reach, which every truck
 * is asked, always has a use above 0.
 */
function takeTrucksSide(
  sheet: GridSheet,
  location: number,
  massKg: number,
  firstTruck: number,
  endTruck: number,
): void {
  const { code: truckCode, aboveKg, mostKg: truckKg } = sheet.truckSide;
  const { verdicts, governing, mostKg, truckCount } = sheet.answer;
  const kind = sheet.kinds.kindOf[location]! * truckCount;
  const cells = location * truckCount;
  for (let truck = firstTruck; truck < endTruck; truck += 1) {
    const row = kind + truck;
    const code = truckCode[row * (STEPS + 1) + stepsBelow(aboveKg, row, massKg)]!;
    verdicts[cells + truck] = verdictOf(code);
    governing[cells + truck] = ruleOf(code);
    mostKg[cells + truck] = mostKgOf(truckKg[row]!);
    if (code === ASK_ALL || massKg === UNKNOWN_KG) {
      weighAllLimits(sheet.tally, sheet.truckSide, row, massKg);
      verdicts[cells + truck] = sheet.tally.verdict;
      governing[cells + truck] = sheet.tally.rule;
    }
  }
}

function joinLocation(
  sheet: GridSheet,
  location: number,
  massKg: number,
  firstTruck: number,
  endTruck: number,
): void {
  const { tally, rackSide, truckSide } = sheet;
  const { code: truckCode, aboveKg, use: truckUse, leastKg, mostKg: truckKg } = truckSide;
  const { verdicts, governing, mostKg, truckCount } = sheet.answer;
  const rackVerdict = rackSide.verdict[location]!;
  const rackUse = rackSide.use[location]!;
  const rackRule = rackSide.rule[location]!;
  const rackKg = rackSide.mostKg[location]!;
  const kind = sheet.kinds.kindOf[location]! * truckCount;
  const cells = location * truckCount;
  for (let truck = firstTruck; truck < endTruck; truck += 1) {
    const row = kind + truck;
    const step = stepsBelow(aboveKg, row, massKg);
    const code = truckCode[row * (STEPS + 1) + step]!;
    let verdict = verdictOf(code);
    let rule = ruleOf(code);
    let use = -1;
    if (code === ASK_ALL || massKg === UNKNOWN_KG) {
      weighAllLimits(tally, truckSide, row, massKg);
      ({ verdict, use, rule } = tally);
    } else if (rackVerdict === verdict) {
      use = step === 0 ? truckUse[row]! : massKg / leastKg[row]!;
    }
    if (
      rackVerdict > verdict ||
      (rackVerdict === verdict && (rackUse > use || (rackUse === use && rackRule < rule)))
    ) {
      verdict = rackVerdict;
      rule = rackRule;
    }
    verdicts[cells + truck] = verdict;
    governing[cells + truck] = rule;
    mostKg[cells + truck] = mostKgOf(Math.min(truckKg[row]!, rackKg));
  }
}

/** How many of a row's mass steps lie below a mass: added up without branches, which no processor could foresee. */
function stepsBelow(aboveKg: Float64Array, row: number, massKg: number): number {
  const at = row * STEPS;
  return (
    (massKg > aboveKg[at]! ? 1 : 0) +
    (massKg > aboveKg[at + 1]! ? 1 : 0) +
    (massKg > aboveKg[at + 2]! ? 1 : 0)
  );
}
