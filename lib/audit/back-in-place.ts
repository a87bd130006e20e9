import { makeLiftCase } from '../check/lift-case.ts';
import { checkBayLoad } from '../check/rules/bay-load.ts';
import { checkBeamLevel } from '../check/rules/beam-level.ts';
import { checkFrameLoad } from '../check/rules/frame-load.ts';
import { checkOpeningHeight } from '../check/rules/opening-height.ts';
import { checkOpeningWidth } from '../check/rules/opening-width.ts';
import { checkPalletSupport } from '../check/rules/pallet-support.ts';
import { checkSprinklerClearance } from '../check/rules/sprinkler-clearance.ts';
import { checkUnitLoad } from '../check/rules/unit-load.ts';
import type { Context, Step } from '../check/step.ts';
import { markThin } from '../check/thin.ts';
import type { CompiledSite } from '../grid/compiled-site.ts';
import { judgeLevel } from '../grid/rack-side.ts';
import { CLEAR, REFUSE, Tally } from '../grid/tally.ts';
import { grossMass, type Load } from '../model/load.ts';
import type { RuleId } from '../model/rule-ids.ts';
import { type Place, palletOf, type SiteIndex } from '../model/site-index.ts';
import type { Truck } from '../model/truck.ts';

/** A pallet that stands somewhere; `at` is its row in the columns of lib/grid. */
export type StoredLoad = { at: number; place: Place; load: Load };

/** A stored load with the racks' steps of placing it back where it stands. */
export type NotClear = StoredLoad & { steps: ReadonlyMap<RuleId, Step> };

/** Placing what stands back where it stands: `from` is its own location. */
const BACK_IN_PLACE: Context = { operation: 'place', asOf: null, operator: null, stock: 'as-is', from: null };

/** Asks the racks' rules of lib/grid of all that stands, and those of lib/check for the working of what they name. */
export function notClearInPlace(site: CompiledSite, stored: readonly StoredLoad[]): NotClear[] {
  const { index } = site;
  const tally = new Tally(index.policy);
  const found: NotClear[] = [];
  for (const one of stored) {
    const row = site.standing[one.at]!;
    const rackLoad = {
      shape: site.loads.shapes[site.loads.shapeOf[row]!]!,
      assessedKg: site.loads.assessedKg[row]!,
    };
    tally.start();
    judgeLevel(tally, site, site.levelOf[one.at]!, rackLoad, BACK_IN_PLACE, one.at);
    if (tally.verdict === CLEAR || (tally.verdict !== REFUSE && !isDeclared(index, one.load))) continue;
    found.push({ ...one, steps: stepsBackInPlace(index, one) });
  }
  return found;
}

/** Rules that look at the racks and the load, never at the truck. */
const RACK_RULES = [
  checkOpeningHeight,
  checkSprinklerClearance,
  checkOpeningWidth,
  checkPalletSupport,
  checkUnitLoad,
  checkBeamLevel,
  checkBayLoad,
  checkFrameLoad,
];

/** The racks' steps of placing a stored load back where it stands: those of checkLift, without asking the rest of it. */
function stepsBackInPlace(index: SiteIndex, { place, load }: StoredLoad): ReadonlyMap<RuleId, Step> {
  const context: Context = { ...BACK_IN_PLACE, from: place.id };
  const lift = makeLiftCase(index, { load, place, truck: NO_TRUCK, context });
  const steps = RACK_RULES.map((check) => markThin(check(lift), index.policy.thinPercent));
  return new Map(steps.map((step) => [step.rule, step]));
}

/** Stands in where only the racks' rules are read: none of them looks at the truck, and a site may have none. */
const NO_TRUCK: Truck = {
  id: '',
  name: '',
  kind: 'counterbalance',
  power: 'manual',
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

/** Does the load's mass rest on what somebody declared, so that it carries an allowance? */
export function isDeclared(index: SiteIndex, load: Load): boolean {
  return grossMass(load, palletOf(index, load))?.basis === 'declared';
}
