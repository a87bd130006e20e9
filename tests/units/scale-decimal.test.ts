import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { KG_PER_POUND, MM_PER_INCH } from '../../lib/units/conversions.ts';
import { KG_IN, MM_IN, scaleDecimal } from '../../lib/units/scale-decimal.ts';

describe('a decimal times an exact factor', () => {
  // NIST Handbook 44, appendix C: 1 inch = 25.4 mm, 1 foot = 304.8 mm, 1 pound = 0.453 592 37 kg, all exactly.
  it.each([
    ['1', MM_IN.in, 25.4],
    ['96', MM_IN.in, 2438.4],
    ['0.5', MM_IN.in, 12.7],
    ['1', MM_IN.ft, 304.8],
    ['8.5', MM_IN.ft, 2590.8],
    ['1.005', MM_IN.m, 1005],
    ['2.4', MM_IN.m, 2400],
    ['240.3', MM_IN.cm, 2403],
    ['1', KG_IN.lb, 0.45359237],
    ['5000', KG_IN.lb, 2267.96185],
    ['2000', KG_IN.lb, 907.18474],
    ['1.2', KG_IN.t, 1200],
    ['.25', KG_IN.t, 250],
    ['5.', KG_IN.kg, 5],
    ['1.2e+3', MM_IN.cm, 12_000],
    ['12e-1', MM_IN.m, 1200],
  ])('%s x %s is %d to the last digit', (decimal, factor, product) => {
    expect(scaleDecimal(decimal, factor)).toBe(product);
  });

  it('rounds once where two doubles multiplied would round three times', () => {
    expect(96 * MM_PER_INCH).not.toBe(2438.4);
    expect(scaleDecimal('96', MM_IN.in)).toBe(2438.4);
  });

  it('uses the factors of the other conversions', () => {
    expect(Number(MM_IN.in)).toBe(MM_PER_INCH);
    expect(Number(MM_IN.ft)).toBeCloseTo(12 * MM_PER_INCH, 10);
    expect(Number(KG_IN.lb)).toBe(KG_PER_POUND);
  });

  it('is never further than a hair from the plain product, for any double', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 1e7, noNaN: true }),
        fc.constantFrom(...Object.values(MM_IN)),
        (value, factor) => {
          const plain = value * Number(factor);
          expect(Math.abs(scaleDecimal(String(value), factor) - plain)).toBeLessThanOrEqual(plain * 1e-15);
        },
      ),
    );
  });

  it.each(['', '.', '-1', '+1', '1,5', 'e3', '1 2'])('%j is no plain decimal', (text) => {
    expect(() => scaleDecimal(text, MM_IN.in)).toThrow('not a decimal');
  });
});
