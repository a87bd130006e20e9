import { clearanceSource, clearancesFor } from '../clearances.ts';
import type { LiftCase } from '../lift-case.ts';
import { loadFact, origin } from '../origins.ts';
import { compareLengths, notApplicable, type RuleAnswer } from '../rule-answer.ts';

/**
 * Is the bay wide enough for a full row of loads of this width?
 *
 * n x widthMm + 2 X3 + (n - 1) X4 <= bay.clearWidthMm, n = positions in a row of this level; equality passes.
 * Placing only. Source: EN 15620 (from memory) or AS 4084 for X3 and X4; two 1200 mm loads need 2625 mm (SEMA advice).
 */
export function checkOpeningWidth(lift: LiftCase): RuleAnswer {
  const { place, load, policy, context } = lift;
  if (context.operation === 'retrieve') return notApplicable('opening-width', 'mm', 'taking-down');
  const { x3Mm, x4Mm } = clearancesFor(policy.clearanceClass, place.level.beamTopMm, load.heightMm);
  const perRow = place.level.locations.length / place.level.depthPositions;
  const source = clearanceSource(policy.clearanceClass);
  return compareLengths('opening-width', {
    need: openingWidthMm(perRow, load.widthMm, x3Mm, x4Mm),
    have: place.bay.clearWidthMm,
    needFrom: [
      origin('rack', `${place.bay.id} level ${place.level.level}`, 'positions in a row', perRow, 'count'),
      loadFact(lift, 'widthMm', load.widthMm),
      origin('standard', source, 'X3', x3Mm, 'mm'),
      origin('standard', source, 'X4', x4Mm, 'mm'),
    ],
    haveFrom: [origin('rack', place.bay.id, 'clearWidthMm', place.bay.clearWidthMm, 'mm')],
  });
}

/** Clear width that a row of `count` loads needs, mm: count x widthMm + 2 x3Mm + (count - 1) x4Mm. */
export function openingWidthMm(count: number, widthMm: number, x3Mm: number, x4Mm: number): number {
  return count * widthMm + 2 * x3Mm + (count - 1) * x4Mm;
}
