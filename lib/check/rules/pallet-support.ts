import type { LiftCase } from '../lift-case.ts';
import { loadFact, origin } from '../origins.ts';
import { compareLengths, notApplicable, type RuleAnswer } from '../rule-answer.ts';

/**
 * Do both beams carry the pallet?
 *
 * run.frameDepthMm <= the pallet type's depthMm (no pallet: the load's); equality passes. Placing on a beam level
 * without decking. Source: SEMA, a 1200 mm pallet on 1100 mm frames overhangs 50 mm at each side.
 */
export function checkPalletSupport(lift: LiftCase): RuleAnswer {
  const { place, load, pallet, context } = lift;
  if (context.operation === 'retrieve') return notApplicable('pallet-support', 'mm', 'taking-down');
  if (place.level.level === 0) return notApplicable('pallet-support', 'mm', 'floor-level');
  if (place.level.decked) return notApplicable('pallet-support', 'mm', 'decked');
  return compareLengths('pallet-support', {
    need: place.run.frameDepthMm,
    have: pallet?.depthMm ?? load.depthMm,
    needFrom: [origin('rack', place.run.id, 'frameDepthMm', place.run.frameDepthMm, 'mm')],
    haveFrom: [
      pallet === null
        ? loadFact(lift, 'depthMm', load.depthMm)
        : origin('load', pallet.id, 'depthMm', pallet.depthMm, 'mm'),
    ],
  });
}
