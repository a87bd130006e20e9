import { centreHeightMm } from '../../model/load.ts';
import type { LiftCase } from '../lift-case.ts';
import { loadFact, origin } from '../origins.ts';
import { compareLengths, notApplicable, type RuleAnswer } from '../rule-answer.ts';

/**
 * Is the load's centre of gravity no higher above the forks than the plate assumes?
 *
 * centreHeightMm (not stated: heightMm / 2) <= plate.verticalLoadCentreMm; equality passes. Not asked where the plate
 * states none. Source: ISO 22915-1, the load centre distance is measured both ways.
 */
export function checkCentreHeight(lift: LiftCase): RuleAnswer {
  const { load, truck } = lift;
  const statedMm = truck.plate.verticalLoadCentreMm;
  if (statedMm === null) return notApplicable('centre-height', 'mm', 'plate-states-none');
  const need = centreHeightMm(load);
  return compareLengths('centre-height', {
    need,
    have: statedMm,
    needFrom:
      load.centreHeightMm === null
        ? [
            loadFact(lift, 'heightMm', load.heightMm),
            origin('formula', 'uniform load', 'heightMm / 2', need, 'mm'),
          ]
        : [loadFact(lift, 'centreHeightMm', load.centreHeightMm)],
    haveFrom: [origin('plate', truck.id, 'verticalLoadCentreMm', statedMm, 'mm')],
  });
}
