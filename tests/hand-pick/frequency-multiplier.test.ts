import { describe, expect, it } from 'vitest';
import {
  averagedLiftsPerMinute,
  durationBand,
  FREQUENCY_TABLE,
  frequencyMultiplier,
} from '../../lib/hand-pick/frequency-multiplier.ts';

describe('frequencyMultiplier', () => {
  it.each([
    { liftsPerMinute: 0, value: 1, why: 'below 0.2 the first row counts' },
    { liftsPerMinute: 0.19, value: 1, why: 'just below the first row' },
    { liftsPerMinute: 0.2, value: 1, why: 'on the first row' },
    { liftsPerMinute: 0.21, value: 0.97, why: 'just above it: the row of 0.5' },
    { liftsPerMinute: 2.99, value: 0.88, why: 'between rows the next higher' },
    { liftsPerMinute: 3, value: 0.88, why: 'on the row of 3' },
    { liftsPerMinute: 3.01, value: 0.84, why: 'just above it: the row of 4' },
    { liftsPerMinute: 14.9, value: 0.28, why: 'below the last row' },
    { liftsPerMinute: 15, value: 0.28, why: 'on the last row' },
    { liftsPerMinute: 15.1, value: 0, why: 'past the table nothing is recommended' },
  ])(
    'is $value at $liftsPerMinute lifts a minute, hands high, up to an hour: $why',
    ({ liftsPerMinute, value }) => {
      expect(frequencyMultiplier({ liftsPerMinute, durationHours: 1, handHeightMm: 1000 })).toBe(value);
    },
  );

  it.each([
    { handHeightMm: 749, value: 0 },
    { handHeightMm: 750, value: 0.34 },
    { handHeightMm: 751, value: 0.34 },
  ])('reads 13 lifts a minute as $value with the hands at $handHeightMm mm', ({ handHeightMm, value }) => {
    expect(frequencyMultiplier({ liftsPerMinute: 13, durationHours: 1, handHeightMm })).toBe(value);
  });

  it.each([
    { durationHours: 0.01, band: 1, value: 0.94 },
    { durationHours: 1, band: 1, value: 0.94 },
    { durationHours: 1.01, band: 2, value: 0.88 },
    { durationHours: 2, band: 2, value: 0.88 },
    { durationHours: 2.01, band: 8, value: 0.75 },
    { durationHours: 8, band: 8, value: 0.75 },
    { durationHours: 8.01, band: null, value: 0 },
  ])('puts $durationHours h in the band up to $band h', ({ durationHours, band, value }) => {
    expect(durationBand(durationHours)).toBe(band);
    expect(frequencyMultiplier({ liftsPerMinute: 1, durationHours, handHeightMm: 0 })).toBe(value);
  });

  it('never rises with a higher rate, a longer time or lower hands', () => {
    for (const [at, { multipliers }] of FREQUENCY_TABLE.entries()) {
      const next = FREQUENCY_TABLE[at + 1]?.multipliers ?? [0, 0, 0, 0, 0, 0];
      for (const column of [0, 1, 2, 3, 4, 5] as const) {
        expect(next[column]).toBeLessThanOrEqual(multipliers[column]);
        if (column < 4) expect(multipliers[column + 2]).toBeLessThanOrEqual(multipliers[column]);
        if (column % 2 === 0) expect(multipliers[column]).toBeLessThanOrEqual(multipliers[column + 1]!);
      }
    }
  });
});

describe('averagedLiftsPerMinute', () => {
  it('spreads the lifts of 8 minutes over the 15', () => {
    expect(averagedLiftsPerMinute({ liftsPerMinute: 10, minutesIn15: 8 })).toBeCloseTo(80 / 15, 12);
  });

  it.each([
    { liftsPerMinute: 15.1, minutesIn15: 8 },
    { liftsPerMinute: 10, minutesIn15: 15.1 },
    { liftsPerMinute: 10, minutesIn15: -1 },
    { liftsPerMinute: Number.NaN, minutesIn15: 8 },
  ])('refuses $liftsPerMinute lifts a minute for $minutesIn15 minutes', (whileLifting) => {
    expect(() => averagedLiftsPerMinute(whileLifting)).toThrow(RangeError);
  });
});
