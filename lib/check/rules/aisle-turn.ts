import type { LiftCase } from '../lift-case.ts';
import { loadFact, origin, policyFact, truckFact } from '../origins.ts';
import { compareLengths, type RuleAnswer } from '../rule-answer.ts';
import { certainAisleMm, type StackingAisle, stackingAisle } from '../stacking-aisle.ts';
import type { Origin } from '../step.ts';

/**
 * Is the aisle wide enough for the truck to turn square into the face with this load?
 *
 * stackingAisle(truck, load) <= aisle.clearWidthMm; equality passes. Unknown without turning data and without a
 * stated aisle, and when a reach truck's or stacker's load lies inside the wheel line, unless the aisle is narrower
 * even than the stated aisle: that fails.
 * Source: VDI 2198 / FEM 4.005 (from memory); see stacking-aisle.ts.
 */
export function checkAisleTurn(lift: LiftCase): RuleAnswer {
  const { truck, load, aisle, policy } = lift;
  const needed = stackingAisle(truck, {
    loadDepthMm: load.depthMm,
    loadWidthMm: load.widthMm,
    aisleClearanceMm: policy.aisleClearanceMm,
  });
  return compareLengths('aisle-turn', {
    need: certainAisleMm(needed, aisle.clearWidthMm),
    have: aisle.clearWidthMm,
    ...(needed.kind === 'unknown' ? { unknownCause: needed.cause } : {}),
    needFrom: neededFrom(lift, needed),
    haveFrom: [origin('aisle', aisle.id, 'clearWidthMm', aisle.clearWidthMm, 'mm')],
  });
}

function neededFrom(lift: LiftCase, needed: StackingAisle): Origin[] {
  const { truck, load } = lift;
  if (needed.kind === 'unknown' && needed.cause === 'no-turning-data') {
    return [truckFact(lift, 'turning', null, null), truckFact(lift, 'statedAisleMm', truck.statedAisleMm)];
  }
  if (needed.kind === 'unknown') {
    const stated = needed.atLeastMm === null ? [] : [truckFact(lift, 'statedAisleMm', needed.atLeastMm)];
    return [
      ...stated,
      truckFact(lift, 'turning.loadDistanceMm', truck.turning?.loadDistanceMm ?? null),
      loadFact(lift, 'depthMm', load.depthMm),
    ];
  }
  const stated = truck.statedAisleMm === null ? [] : [truckFact(lift, 'statedAisleMm', truck.statedAisleMm)];
  if (needed.formulaMm === null || truck.turning === null) return stated;
  const offset =
    truck.kind === 'counterbalance'
      ? [truckFact(lift, 'turning.insideOffsetMm', truck.turning.insideOffsetMm)]
      : [];
  return [
    origin('formula', 'VDI 2198 stacking aisle', truck.kind, needed.formulaMm, 'mm'),
    truckFact(lift, 'turning.outsideRadiusMm', truck.turning.outsideRadiusMm),
    truckFact(lift, 'turning.loadDistanceMm', truck.turning.loadDistanceMm),
    ...offset,
    loadFact(lift, 'depthMm', load.depthMm),
    loadFact(lift, 'widthMm', load.widthMm),
    policyFact(lift, 'aisleClearanceMm'),
    ...stated,
  ];
}
