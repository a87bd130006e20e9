import { found, type SiteIndex } from '../model/site-index.ts';
import type { Truck } from '../model/truck.ts';
import { makeLiftCase } from './lift-case.ts';
import type { RuleAnswer } from './rule-answer.ts';
import { checkBayLoad } from './rules/bay-load.ts';
import { checkBeamLevel } from './rules/beam-level.ts';
import { checkFrameLoad } from './rules/frame-load.ts';
import { checkOpeningHeight } from './rules/opening-height.ts';
import { checkOpeningWidth } from './rules/opening-width.ts';
import { checkPalletSupport } from './rules/pallet-support.ts';
import { checkRackCondition } from './rules/rack-condition.ts';
import { checkSprinklerClearance } from './rules/sprinkler-clearance.ts';
import { checkUnitLoad } from './rules/unit-load.ts';
import type { Context, Step } from './step.ts';

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
  checkRackCondition,
];

/**
 * What do the racks say of the pallet that stands in a location, as if it were placed back there?
 *
 * The racks' steps of checkLift, without asking the rest of it; thin is not marked. The pallet itself does not count in
 * what else stands. Throws when nothing stands there.
 */
export function racksInPlace(index: SiteIndex, location: string): Step[] {
  const place = found(index.places, location, 'location');
  const load = found(index.stockAt, location, 'pallet in');
  const context: Context = { operation: 'place', asOf: null, operator: null, stock: 'as-is', from: location };
  const lift = makeLiftCase(index, { load, truck: NO_TRUCK, place, context });
  return RACK_RULES.map((rule) => withoutAllowance(rule(lift)));
}

function withoutAllowance({ allowsKg: _, ...step }: RuleAnswer): Step {
  return step;
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
