import type { LiftCase } from '../lift-case.ts';
import { levelFact, loadFact, origin, policyFact } from '../origins.ts';
import { compareLengths, notApplicable, type RuleAnswer } from '../rule-answer.ts';

/**
 * Does the top of the load stay far enough below the sprinklers?
 *
 * beamTopMm + heightMm + sprinklerClearanceMm <= aisle.sprinklerMm; equality passes. Placing on a bay's top level
 * only. "none": not applicable; not surveyed: unknown.
 * Source: NFPA 13, 36 in (914 mm) for ESFR and large-drop storage sprinklers, 18 in (457 mm) for standard spray.
 */
export function checkSprinklerClearance(lift: LiftCase): RuleAnswer {
  const { place, load, aisle, policy, context } = lift;
  if (context.operation === 'retrieve') return notApplicable('sprinkler-clearance', 'mm', 'taking-down');
  if (place.levelIndex < place.bay.levels.length - 1) {
    return notApplicable('sprinkler-clearance', 'mm', 'not-the-top-level');
  }
  if (aisle.sprinklerMm === 'none') return notApplicable('sprinkler-clearance', 'mm', 'nothing-overhead');
  return compareLengths('sprinkler-clearance', {
    need: place.level.beamTopMm + load.heightMm + policy.sprinklerClearanceMm,
    have: aisle.sprinklerMm,
    unknownCause: 'sprinkler-not-surveyed',
    needFrom: [
      levelFact(lift, 'beamTopMm'),
      loadFact(lift, 'heightMm', load.heightMm),
      policyFact(lift, 'sprinklerClearanceMm'),
    ],
    haveFrom: [origin('aisle', aisle.id, 'sprinklerMm', aisle.sprinklerMm, 'mm')],
  });
}
