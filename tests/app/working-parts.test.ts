import { describe, expect, it } from 'vitest';
import { stepOrder } from '../../app/_parts/step-order.ts';
import { showStepValue } from '../../app/_parts/step-value.ts';
import { estimateBeyondPlate } from '../../app/working/lift-estimates.ts';
import { usedPlateLines } from '../../app/working/used-plate-lines.ts';
import { checkLift } from '../../lib/check/check-lift.ts';
import type { Step } from '../../lib/check/step.ts';
import { RULE_IDS } from '../../lib/model/rule-ids.ts';
import { found } from '../../lib/model/site-index.ts';
import { makeContext, makeCounterbalance, makeIndex, makeLoad, makeTruck, placeOf } from '../site-builder.ts';

const index = makeIndex({ loads: [makeLoad(), makeLoad({ id: 'slabs', grossKg: 1500 })] });
const answer = (load: string) =>
  checkLift(index, {
    load: found(index.loads, load, 'load'),
    truck: found(index.trucks, 'reach-1', 'truck'),
    place: placeOf(index, 'a1-2-1'),
    context: makeContext(),
  });

describe('stepOrder', () => {
  it('puts what decided first, then fails, unknowns, thins and passes, and leaves no rule out', () => {
    const { governing, others, notAsked } = stepOrder(answer('slabs'));
    expect(governing.rule).toBe('plate-capacity');
    expect(governing.outcome).toBe('fail');
    const rank = { fail: 0, unknown: 1, thin: 2, pass: 3, 'not-applicable': 4 };
    const ranks = others.map(({ outcome }) => rank[outcome]);
    expect(ranks).toEqual(ranks.toSorted());
    const rules = [governing, ...others, ...notAsked].map(({ rule }) => rule);
    expect(rules.toSorted()).toEqual([...RULE_IDS].toSorted());
  });
});

describe('showStepValue', () => {
  const step = (need: Step['need'], have: Step['have'], unit: Step['unit']): Step => ({
    rule: 'plate-capacity',
    outcome: 'pass',
    need,
    have,
    unit,
    needFrom: [],
    haveFrom: [],
  });
  it('rounds a need up and what there is down, so that neither flatters', () => {
    expect(showStepValue(step(1000.01, 1000.09, 'kg'), 'need', 'metric')).toBe('1\u202f000.1\u202fkg');
    expect(showStepValue(step(1000.01, 1000.09, 'kg'), 'have', 'metric')).toBe('1\u202f000\u202fkg');
  });

  it('says that a value is not known, rather than nothing', () => {
    expect(showStepValue(step(null, null, 'mm'), 'have', 'metric')).toBe('not known');
  });

  it('leaves rows and states as words', () => {
    expect(showStepValue(step(2, 1, 'row'), 'need', 'metric')).toBe('row 2');
    expect(showStepValue(step('sound', 'amber', 'state'), 'have', 'metric')).toBe('amber');
  });
});

describe('usedPlateLines', () => {
  it('finds the line that the capacity rule read: at 3250 mm the one for 6000 mm', () => {
    expect(usedPlateLines(answer('crates'))).toEqual([1]);
  });
});

describe('estimateBeyondPlate', () => {
  // OSHA powered industrial trucks, load composition: 4000 lb at 24 in, carried at 36 in: about 2666 lb by the field rule
  const truck = makeCounterbalance({
    turning: { outsideRadiusMm: 2200, loadDistanceMm: 400, insideOffsetMm: 600 },
    plate: {
      verticalLoadCentreMm: null,
      ratings: [
        {
          mast: 'vertical',
          attachment: null,
          liftHeightMm: 4500,
          loadCentreMm: 609.6,
          capacityKg: 1814.36948,
        },
      ],
    },
  });
  const POUND_KG = 0.45359237;

  it('gives OSHA’s worked figure for a longer load centre, and the moment form above it', () => {
    const estimate = estimateBeyondPlate(truck, 3000, 914.4);
    expect(Math.floor((estimate?.fieldRuleKg ?? 0) / POUND_KG)).toBe(2666);
    // (400 + 609.6) / (400 + 914.4) of 1814.37 kg
    expect(estimate?.momentKg).toBeCloseTo((1814.36948 * 1009.6) / 1314.4, 6);
  });

  it.each([
    { loadCentreMm: 609.5, given: false, why: 'the plate covers a shorter load centre' },
    { loadCentreMm: 609.6, given: false, why: 'the plate covers exactly its own' },
    { loadCentreMm: 609.7, given: true, why: 'the plate ends below it' },
  ])('estimates only what the plate does not cover: $why', ({ loadCentreMm, given }) => {
    expect(estimateBeyondPlate(truck, 3000, loadCentreMm) !== null).toBe(given);
  });

  it('does not estimate above the height that the plate reaches', () => {
    expect(estimateBeyondPlate(truck, 4500, 914.4)).not.toBeNull();
    expect(estimateBeyondPlate(truck, 4501, 914.4)).toBeNull();
  });

  it('leaves the moment form out for a truck whose load travels between the wheels', () => {
    expect(estimateBeyondPlate(makeTruck(), 3000, 700)?.momentKg).toBeNull();
  });
});
