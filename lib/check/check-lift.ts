import { RULE_IDS, type RuleId } from '../model/rule-ids.ts';
import type { SiteIndex } from '../model/site-index.ts';
import { type Lift, type LiftCase, makeLiftCase } from './lift-case.ts';
import { mostKg } from './most-kg.ts';
import type { RuleAnswer } from './rule-answer.ts';
import { checkAisleTurn } from './rules/aisle-turn.ts';
import { checkBayLoad } from './rules/bay-load.ts';
import { checkBeamLevel } from './rules/beam-level.ts';
import { checkCentreHeight } from './rules/centre-height.ts';
import { checkDepthReach } from './rules/depth-reach.ts';
import { checkForkArms } from './rules/fork-arms.ts';
import { checkForkLength } from './rules/fork-length.ts';
import { checkFrameLoad } from './rules/frame-load.ts';
import { checkLiftHeight } from './rules/lift-height.ts';
import { checkLoadOverhead } from './rules/load-overhead.ts';
import { checkMastOverhead } from './rules/mast-overhead.ts';
import { checkOpeningHeight } from './rules/opening-height.ts';
import { checkOpeningWidth } from './rules/opening-width.ts';
import { checkOperatorAuthorised } from './rules/operator-authorised.ts';
import { checkPalletSupport } from './rules/pallet-support.ts';
import { checkPlateCapacity } from './rules/plate-capacity.ts';
import { checkRackCondition } from './rules/rack-condition.ts';
import { checkSlotFree } from './rules/slot-free.ts';
import { checkSprinklerClearance } from './rules/sprinkler-clearance.ts';
import { checkTiltCapacity } from './rules/tilt-capacity.ts';
import { checkTruckFit } from './rules/truck-fit.ts';
import { checkUnitLoad } from './rules/unit-load.ts';
import type { LiftAnswer, Step } from './step.ts';
import { markThin } from './thin.ts';
import { decideVerdict } from './verdict.ts';

const RULES: Record<RuleId, (lift: LiftCase) => RuleAnswer> = {
  'truck-fit': checkTruckFit,
  'operator-authorised': checkOperatorAuthorised,
  'slot-free': checkSlotFree,
  'depth-reach': checkDepthReach,
  'lift-height': checkLiftHeight,
  'aisle-turn': checkAisleTurn,
  'plate-capacity': checkPlateCapacity,
  'tilt-capacity': checkTiltCapacity,
  'centre-height': checkCentreHeight,
  'fork-length': checkForkLength,
  'fork-arms': checkForkArms,
  'mast-overhead': checkMastOverhead,
  'load-overhead': checkLoadOverhead,
  'opening-height': checkOpeningHeight,
  'sprinkler-clearance': checkSprinklerClearance,
  'opening-width': checkOpeningWidth,
  'pallet-support': checkPalletSupport,
  'unit-load': checkUnitLoad,
  'beam-level': checkBeamLevel,
  'bay-load': checkBayLoad,
  'frame-load': checkFrameLoad,
  'rack-condition': checkRackCondition,
};

/**
 * May this truck place this load in this location, or take it down from there, and why?
 *
 * Runs every rule in the order of RULE_IDS, marks what is thin, decides. Pure: time comes in as context.asOf. Throws
 * on an asOf that is not a time and on an operator or a context.from that the site does not have.
 */
export function checkLift(index: SiteIndex, lift: Lift): LiftAnswer {
  const liftCase = makeLiftCase(index, lift);
  const answers = RULE_IDS.map((rule) => RULES[rule](liftCase));
  const { mustKnow, thinPercent } = index.policy;
  const steps = answers.map((answer) => markThin(withoutAllowance(answer), thinPercent));
  return {
    location: lift.place.id,
    truck: lift.truck.id,
    load: lift.load.id,
    ...decideVerdict(steps, mustKnow),
    assessedKg: liftCase.assessedKg,
    mostKg: mostKg(answers, mustKnow),
    steps,
  };
}

function withoutAllowance({ allowsKg: _, ...step }: RuleAnswer): Step {
  return step;
}
