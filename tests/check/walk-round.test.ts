import { describe, expect, it } from 'vitest';
import { forkArmFaults, strengthLeft } from '../../lib/check/walk-round/fork-arm-wear.ts';
import { inDateThrough, isDentRejected, isInDate } from '../../lib/check/walk-round/gas-cylinder.ts';
import { chainStretch, replaceLengthMm } from '../../lib/check/walk-round/lift-chain.ts';

describe('forkArmFaults', () => {
  it.each([
    { nowMm: 45.1, faults: [] },
    { nowMm: 45, faults: ['thickness'] },
    { nowMm: 44.9, faults: ['thickness'] },
  ])('of a 50 mm heel worn to $nowMm mm: $faults', ({ nowMm, faults }) => {
    expect(forkArmFaults({ thickness: { originalMm: 50, nowMm } }).map(({ what }) => what)).toEqual(faults);
  });

  it.each([
    { tipDifferenceMm: 35.9, bowMm: 5.9, angleDeg: 92.9, faults: [] },
    { tipDifferenceMm: 36, bowMm: 6, angleDeg: 93, faults: [] },
    { tipDifferenceMm: 36.1, bowMm: 6.1, angleDeg: 93.1, faults: ['tips', 'bow', 'angle'] },
  ])(
    'of a 1200 mm pair, tips $tipDifferenceMm mm, bow $bowMm mm, $angleDeg degrees: $faults',
    ({ faults, ...measured }) => {
      expect(forkArmFaults({ bladeLengthMm: 1200, ...measured }).map(({ what }) => what)).toEqual(faults);
    },
  );

  it('says nothing of what was not measured', () => {
    expect(forkArmFaults({ tipDifferenceMm: 500 })).toEqual([]);
  });

  it('leaves 81 % of the strength at nine tenths of the thickness', () => {
    expect(strengthLeft({ originalMm: 50, nowMm: 45 })).toBeCloseTo(0.81, 12);
  });
});

describe('chainStretch', () => {
  it.each([
    { measuredMm: 100, state: 'good' },
    { measuredMm: 101.9, state: 'good' },
    { measuredMm: 102, state: 'plan-replacement' },
    { measuredMm: 102.1, state: 'plan-replacement' },
    { measuredMm: 102.9, state: 'plan-replacement' },
    { measuredMm: 103, state: 'replace' },
    { measuredMm: 103.1, state: 'replace' },
  ])('of ten 10 mm pitches measured at $measuredMm mm: $state', ({ measuredMm, state }) => {
    const stretch = chainStretch({ pitchMm: 10, pinsCounted: 11, measuredMm });
    expect(stretch.state).toBe(state);
    expect(stretch.percent).toBeCloseTo(measuredMm - 100, 10);
  });

  it('is replaced exactly at the length it names', () => {
    const strand = { pitchMm: 25.4, pinsCounted: 13 };
    expect(chainStretch({ ...strand, measuredMm: replaceLengthMm(strand) }).state).toBe('replace');
  });

  it.each([
    { pinsCounted: 1, measuredMm: 100 },
    { pinsCounted: 11, measuredMm: 99 },
    { pinsCounted: 11, measuredMm: Number.NaN },
  ])('refuses $pinsCounted pins over $measuredMm mm', (strand) => {
    expect(() => chainStretch({ pitchMm: 10, ...strand })).toThrow(RangeError);
  });
});

describe('a gas cylinder', () => {
  it.each([
    { month: '2026-02', inDate: true },
    { month: '2026-03', inDate: true },
    { month: '2026-04', inDate: false },
  ])('stamped 2016-03 for ten years is in date in $month: $inDate', ({ month, inDate }) => {
    expect(isInDate({ stamped: '2016-03', rule: 'australia', month })).toBe(inDate);
  });

  it('counts five years from an external visual stamp', () => {
    expect(inDateThrough('2022-11', 'us-external-visual')).toBe('2027-11');
  });

  it('refuses a stamp it cannot read', () => {
    expect(() => inDateThrough('03/16', 'unknown')).toThrow(RangeError);
  });

  it.each([
    { depthMm: 5.9, meanDiameterMm: 60, onWeld: false, rejected: false },
    { depthMm: 6, meanDiameterMm: 60, onWeld: false, rejected: false },
    { depthMm: 6.1, meanDiameterMm: 60, onWeld: false, rejected: true },
    { depthMm: 6.5, meanDiameterMm: 80, onWeld: true, rejected: false },
    { depthMm: 6.6, meanDiameterMm: 80, onWeld: true, rejected: true },
  ])(
    'dented $depthMm mm deep, $meanDiameterMm mm wide, on a weld $onWeld, is rejected: $rejected',
    ({ rejected, ...dent }) => {
      expect(isDentRejected(dent)).toBe(rejected);
    },
  );
});
