import { makeLiftCase } from '../check/lift-case.ts';
import type { RuleAnswer } from '../check/rule-answer.ts';
import { checkBayLoad } from '../check/rules/bay-load.ts';
import { checkBeamLevel } from '../check/rules/beam-level.ts';
import { checkFrameLoad } from '../check/rules/frame-load.ts';
import { checkOpeningHeight } from '../check/rules/opening-height.ts';
import { checkOpeningWidth } from '../check/rules/opening-width.ts';
import { checkPalletSupport } from '../check/rules/pallet-support.ts';
import { checkRackCondition } from '../check/rules/rack-condition.ts';
import { checkSprinklerClearance } from '../check/rules/sprinkler-clearance.ts';
import { checkUnitLoad } from '../check/rules/unit-load.ts';
import type { Context, Outcome, Step } from '../check/step.ts';
import { found, indexSite, type SiteIndex } from '../model/site-index.ts';
import type { Truck } from '../model/truck.ts';
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

const RACK_RULES = [
  checkOpeningHeight,
  checkSprinklerClearance,
  checkOpeningWidth,
  checkPalletSupport,
  checkUnitLoad,
  checkBeamLevel,
  checkBayLoad,
  checkFrameLoad,
  checkRackCondition,
];

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
    const then = judgeStanding(was, savedId.get(location)!);
    for (const [rule, now] of judgeStanding(is, location).entries()) {
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

/** Every rule of the racks for the pallet that stands in a location, as if it were placed back there; thin is not marked. */
export function judgeStanding(index: SiteIndex, location: string): Step[] {
  const place = found(index.places, location, 'location');
  const load = found(index.stockAt, location, 'pallet in');
  const context: Context = { operation: 'place', asOf: null, operator: null, stock: 'as-is', from: location };
  const lift = makeLiftCase(index, { load, truck: NO_TRUCK, place, context });
  return RACK_RULES.map((rule) => withoutAllowance(rule(lift)));
}

function withoutAllowance({ allowsKg: _, ...step }: RuleAnswer): Step {
  return step;
}

function isTrouble(outcome: Outcome): boolean {
  return outcome === 'fail' || outcome === 'unknown';
}

/** A rule that did not apply was kept. */
function rank(outcome: Outcome): number {
  return outcome === 'not-applicable' ? 1 : WORST_LAST.indexOf(outcome);
}

/** The rules of the racks read nothing of it. */
const NO_TRUCK: Truck = {
  id: '',
  name: '',
  kind: 'reach',
  power: 'electric',
  maxLiftMm: 1,
  loweredMm: null,
  extendedMm: null,
  freeLiftMm: null,
  reachDepth: 1,
  turning: null,
  statedAisleMm: null,
  forks: { lengthMm: null, armCapacityKg: null, armLoadCentreMm: null },
  fittedAttachment: null,
  hold: null,
  speeds: null,
  plate: { verticalLoadCentreMm: null, ratings: [] },
};
