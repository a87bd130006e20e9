import { clearanceSource, clearancesFor } from '../clearances.ts';
import type { LiftCase } from '../lift-case.ts';
import { levelFact, loadFact, origin, policyFact } from '../origins.ts';
import { compareLengths, notApplicable, type RuleAnswer } from '../rule-answer.ts';

/**
 * Does the load fit under the beam above, with room to lift it off?
 *
 * heightMm + max(Y, placingClearanceMm) <= next beamTopMm - next beamHeightMm - this beamTopMm; equality passes.
 * Placing only, and not on the bay's top level. The floor has an opening too.
 * Source: EN 15620 (from memory) or AS 4084 for Y; see clearances.ts.
 */
export function checkOpeningHeight(lift: LiftCase): RuleAnswer {
  const { place, load, policy, context } = lift;
  if (context.operation === 'retrieve') return notApplicable('opening-height', 'mm', 'taking-down');
  const above = place.bay.levels[place.levelIndex + 1];
  if (above === undefined) return notApplicable('opening-height', 'mm', 'top-level');
  const { yMm } = clearancesFor(policy.clearanceClass, place.level.beamTopMm, load.heightMm);
  const aboveName = `${place.bay.id} level ${above.level}`;
  return compareLengths('opening-height', {
    need: load.heightMm + Math.max(yMm, policy.placingClearanceMm),
    have: above.beamTopMm - above.beamHeightMm - place.level.beamTopMm,
    needFrom: [
      loadFact(lift, 'heightMm', load.heightMm),
      origin('standard', clearanceSource(policy.clearanceClass), 'Y', yMm, 'mm'),
      policyFact(lift, 'placingClearanceMm'),
    ],
    haveFrom: [
      origin('rack', aboveName, 'beamTopMm', above.beamTopMm, 'mm'),
      origin('rack', aboveName, 'beamHeightMm', above.beamHeightMm, 'mm'),
      levelFact(lift, 'beamTopMm'),
    ],
  });
}
