import { describe, expect, it } from 'vitest';
import { inchesToMm, kgToPounds, mmToInches, poundsToKg } from '../../lib/units/conversions.ts';
import { formatLength, formatMass, groupDigits, THIN_SPACE } from '../../lib/units/format-quantity.ts';

/** With plain blanks, to read a table by. */
const plain = (text: string) => text.replaceAll(THIN_SPACE, ' ');

describe('conversions', () => {
  it('are exact by definition (1959): 36 in = 914.4 mm, 18 in = 457.2 mm, 1 lb = 0.45359237 kg', () => {
    expect(inchesToMm(36)).toBeCloseTo(914.4, 10);
    expect(inchesToMm(18)).toBeCloseTo(457.2, 10);
    expect(poundsToKg(1)).toBe(0.45359237);
    expect(mmToInches(25.4)).toBe(1);
    expect(kgToPounds(0.45359237)).toBe(1);
  });
});

describe('a shown quantity', () => {
  it.each([
    { kg: 2400, metric: '2 400 kg', down: '5 291 lb', up: '5 292 lb' },
    { kg: 1000, metric: '1 000 kg', down: '2 204 lb', up: '2 205 lb' },
    { kg: 999, metric: '999 kg', down: '2 202 lb', up: '2 203 lb' },
    { kg: 0, metric: '0 kg', down: '0 lb', up: '0 lb' },
  ])('$kg kg leans down as a limit and up as a need', ({ kg, metric, down, up }) => {
    expect(plain(formatMass(kg, 'metric', 'down'))).toBe(metric);
    expect(plain(formatMass(kg, 'metric', 'up'))).toBe(metric);
    expect(plain(formatMass(kg, 'lb-in', 'down'))).toBe(down);
    expect(plain(formatMass(kg, 'lb-in', 'up'))).toBe(up);
  });

  it.each([
    { mm: 6000, metric: '6 000 mm', down: '236.2 in', up: '236.3 in' },
    { mm: 25.4, metric: '25.4 mm', down: '1 in', up: '1 in' },
    { mm: -120, metric: '-120 mm', down: '-4.8 in', up: '-4.7 in' },
  ])('$mm mm leans the same way', ({ mm, metric, down, up }) => {
    expect(plain(formatLength(mm, 'metric', 'down'))).toBe(metric);
    expect(plain(formatLength(mm, 'lb-in', 'down'))).toBe(down);
    expect(plain(formatLength(mm, 'lb-in', 'up'))).toBe(up);
  });

  it('shows a tenth where a kilogram or millimetre is not whole', () => {
    expect(plain(formatMass(1666.67, 'metric', 'down'))).toBe('1 666.6 kg');
    expect(plain(formatLength(2789.414, 'metric', 'up'))).toBe('2 789.5 mm');
  });

  it('shows every whole pound that was stored in kilograms as itself, either way', () => {
    for (let lb = 1; lb <= 20_000; lb += 7) {
      for (const lean of ['down', 'up'] as const) {
        expect(plain(formatMass(poundsToKg(lb), 'lb-in', lean)).replace(/\D/g, '')).toBe(String(lb));
      }
    }
  });

  it('groups digits in threes', () => {
    expect([0, 999, 1000, 12345, 1234567, 1234.5, -4321].map((value) => plain(groupDigits(value)))).toEqual([
      '0',
      '999',
      '1 000',
      '12 345',
      '1 234 567',
      '1 234.5',
      '-4 321',
    ]);
  });
});
