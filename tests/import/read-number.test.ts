import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guessNumberStyle } from '../../lib/import/guess-numbers.ts';
import type { NumberStyle } from '../../lib/import/mapping.ts';
import { cutUnit, inModelUnits, plainDecimal, unitOfWord } from '../../lib/import/read-number.ts';

const style = (decimal: '.' | ',', group: NumberStyle['group']): NumberStyle => ({ decimal, group });

describe('a number in the style of its column', () => {
  it.each([
    ['1234.5', style('.', ''), '1234.5'],
    ['1,234.5', style('.', ','), '1234.5'],
    ['1234.5', style('.', ','), '1234.5'],
    ['1.234,5', style(',', '.'), '1234.5'],
    ['1 234,5', style(',', ' '), '1234.5'],
    ['1\u202f234,5', style(',', ' '), '1234.5'],
    ['1\u00a0234', style('.', ' '), '1234'],
    ['1’234.5', style('.', "'"), '1234.5'],
    ['12,345,678', style('.', ','), '12345678'],
    ['1,5', style(',', ''), '1.5'],
    [',5', style(',', ''), '0.5'],
    ['5.', style('.', ''), '5'],
    ['1.2E+4', style('.', ''), '1.2e+4'],
    [' 7 ', style('.', ''), '7'],
  ])('%j is read', (text, how, decimal) => {
    expect(plainDecimal(text, how)).toBe(decimal);
  });

  it.each([
    ['1,5', style('.', ','), 'a decimal comma is not a thousands mark'],
    ['1,23', style('.', ','), 'two digits behind it neither'],
    ['1,2345', style('.', ','), 'nor four'],
    ['1234,567', style('.', ','), 'nor after four digits'],
    [',567', style('.', ','), 'nor with nothing before it'],
    ['1.234.5', style('.', ','), 'two decimal points'],
    ['1 234', style('.', ''), 'a blank that the style does not have'],
    ['1,234.5', style(',', '.'), 'the other way round'],
    ['-5', style('.', ''), 'a sign'],
    ['+5', style('.', ''), 'a plus sign'],
    ['', style('.', ''), 'nothing'],
    ['.', style('.', ''), 'a mark alone'],
    ['0x10', style('.', ''), 'a hexadecimal'],
    ['Infinity', style('.', ''), 'no end'],
    ['NaN', style('.', ''), 'no number'],
    ['１２', style('.', ''), 'full-width digits'],
    ['1e9999', style('.', ''), 'an exponent of four digits'],
  ])('%j is refused: %o (%s)', (text, how) => {
    expect(plainDecimal(text, how)).toBeNull();
  });

  it('whatever is written in a style is read back in it, grouped or not', () => {
    const styles = fc.constantFrom(
      style('.', ','),
      style(',', '.'),
      style(',', ' '),
      style('.', "'"),
      style('.', ''),
    );
    fc.assert(
      fc.property(
        fc.nat({ max: 10_000_000 }),
        fc.nat({ max: 999 }),
        styles,
        fc.boolean(),
        (whole, thousandths, how, grouped) => {
          const fraction = String(thousandths).padStart(3, '0');
          const digits = grouped ? String(whole).replace(/\B(?=(\d{3})+$)/g, how.group) : String(whole);
          expect(plainDecimal(`${digits}${how.decimal}${fraction}`, how)).toBe(`${whole}.${fraction}`);
        },
      ),
    );
  });
});

describe('a unit behind a number', () => {
  it.each([
    ['2400 mm', '2400', 'mm'],
    ['2400mm', '2400', 'mm'],
    ['96"', '96', 'in'],
    ['96 in.', '96', 'in'],
    ['5,000 lbs', '5,000', 'lb'],
    ['1.2 t', '1.2', 't'],
    ['8\'6"', '102', 'in'],
    ['8 ft 6.5 in', '102.5', 'in'],
    ['2400', '2400', null],
    ['2400 tons', '2400 tons', null],
    ['x', 'x', null],
  ])('%j is cut', (text, number, unit) => {
    expect(cutUnit(text)).toEqual({ number, unit });
  });

  it('a ton is three different masses, so it is none', () => {
    expect(unitOfWord('ton')).toBeNull();
    expect(unitOfWord('tons')).toBeNull();
    expect(unitOfWord('Tonnes')).toBe('t');
  });

  it('gives millimetres and kilograms exactly', () => {
    expect(inModelUnits('102', 'in')).toBe(2590.8);
    expect(inModelUnits('5000', 'lb')).toBe(2267.96185);
  });
});

describe('the guess of how a column writes numbers', () => {
  it.each([
    [['2400', '12'], '.', style('.', ''), false],
    [['1,200.5', '900'], '.', style('.', ','), false],
    [['1.200,5', '900'], '.', style(',', '.'), false],
    [['1,5', '12,25'], '.', style(',', ''), false],
    [['1.5', '12.25'], ',', style('.', ''), false],
    [['1,200,000'], ',', style('.', ','), false],
    [['1 200,5'], '.', style(',', ' '), false],
    [['1 200', '900'], '.', style('.', ' '), false],
    [["1'200.5"], ',', style('.', "'"), false],
    [['1,200', '2,400'], '.', style('.', ','), true],
    [['1,200', '2,400'], ',', style(',', ''), true],
    [['1.200', '2.400'], ',', style(',', '.'), true],
    [['1,200', '2,40'], '.', style(',', ''), false],
    [['96"', '120.5 in'], ',', style('.', ''), false],
    [['A-1', 'B,2'], '.', style('.', ''), false],
  ] as const)('%j, the file leaning to %j: %o, ambiguous %s', (texts, lean, expected, ambiguous) => {
    expect(guessNumberStyle(texts, lean)).toEqual({ style: expected, ambiguous });
  });
});
