import { describe, expect, it } from 'vitest';
import { formatMass } from '../../lib/units/format-quantity.ts';
import { parseLengthMm, parseMassKg } from '../../lib/units/parse-quantity.ts';

describe('a mass as a person writes it', () => {
  it.each([
    { text: '2400', metric: 2400 },
    { text: ' 2 400 kg ', metric: 2400 },
    { text: '2.4 t', metric: 2400 },
    { text: '1000 lb', metric: 453.59237 },
    { text: '1060.5kg', metric: 1060.5 },
  ])('$text is $metric kg', ({ text, metric }) => {
    expect(parseMassKg(text, 'metric')).toBe(metric);
  });

  it('is read in the display units where it names none', () => {
    expect(parseMassKg('1000', 'lb-in')).toBe(453.59237);
    expect(parseMassKg('1000 kg', 'lb-in')).toBe(1000);
  });

  it.each(['', 'heavy', '1,200', '1.2.3', '-5', '24 00', '1e3', '12 stone', 'NaN', '5 mm'])(
    '%o is refused',
    (text) => {
      expect(parseMassKg(text, 'metric')).toBeNull();
    },
  );

  it('reads back what is shown', () => {
    expect(parseMassKg(formatMass(12_400, 'metric', 'down'), 'metric')).toBe(12_400);
  });
});

describe('a length as a person writes it', () => {
  it.each([
    { text: '1 200', mm: 1200 },
    { text: '1.2 m', mm: 1200 },
    { text: '120 cm', mm: 1200 },
    { text: '96 in', mm: 2438.4 },
    { text: '48"', mm: 1219.2 },
    { text: '8 ft', mm: 2438.4 },
    { text: '8 ft 6 in', mm: 2590.8 },
    { text: `8'6"`, mm: 2590.8 },
  ])('$text is $mm mm', ({ text, mm }) => {
    expect(parseLengthMm(text, 'metric')).toBeCloseTo(mm, 9);
  });

  it('is read in the display units where it names none', () => {
    expect(parseLengthMm('42', 'lb-in')).toBe(1066.8);
  });

  it.each(['', '1,2 m', '6 in 8 ft', '5 kg', 'ft'])('%o is refused', (text) => {
    expect(parseLengthMm(text, 'metric')).toBeNull();
  });
});
