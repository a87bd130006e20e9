import { describe, expect, it } from 'vitest';
import { guessTimeStyle, readTime } from '../../lib/import/read-time.ts';
import { instant } from '../../lib/model/quantities.ts';

describe('a time', () => {
  it.each([
    ['2026-03-02', 'iso', '2026-03-02'],
    ['2026-03-02T06:30:00Z', 'iso', '2026-03-02T06:30:00Z'],
    ['2026-03-02T06:30:00.250Z', 'iso', '2026-03-02T06:30:00.250Z'],
    ['2026-03-02 06:30', 'iso', '2026-03-02T06:30:00Z'],
    ['2026-03-02T06:30:00+02:00', 'iso', '2026-03-02T04:30:00Z'],
    ['2026-03-02T00:30:00+0200', 'iso', '2026-03-01T22:30:00Z'],
    ['2.3.2026', 'dmy', '2026-03-02'],
    ['02/03/2026 6:05', 'dmy', '2026-03-02T06:05:00Z'],
    ['02/03/2026', 'mdy', '2026-02-03'],
    ['12/31/2026, 23:59:59', 'mdy', '2026-12-31T23:59:59Z'],
    ['2026-03-02', 'mdy', '2026-03-02'],
    ['29.2.2028', 'dmy', '2028-02-29'],
  ] as const)('%j read as %s is %s', (text, style, expected) => {
    expect(readTime(text, style)).toBe(expected);
    expect(instant.safeParse(readTime(text, style)).success).toBe(true);
  });

  it.each([
    ['2.3.2026', 'iso', 'an order that nobody stated'],
    ['29.2.2026', 'dmy', 'a day that the year does not have'],
    ['2026-02-29', 'iso', 'the same in ISO'],
    ['31/12/2026', 'mdy', 'a month 31'],
    ['2026-13-01', 'iso', 'a month 13'],
    ['2026-03-02T24:00:00Z', 'iso', 'an hour 24'],
    ['2.3.26', 'dmy', 'a year of two digits'],
    ['tomorrow', 'dmy', 'a word'],
    ['39448', 'dmy', 'a bare number'],
  ] as const)('%j read as %s is none: %s', (text, style, _why) => {
    expect(readTime(text, style)).toBeNull();
  });

  it.each([
    [['2026-03-02'], { style: 'iso', ambiguous: false }],
    [['13/02/2026', '01/02/2026'], { style: 'dmy', ambiguous: false }],
    [['02/13/2026', '01/02/2026'], { style: 'mdy', ambiguous: false }],
    [['02/03/2026'], { style: 'dmy', ambiguous: true }],
    [['13/02/2026', '02/13/2026'], { style: 'dmy', ambiguous: true }],
  ])('a column of %j is taken as %o', (texts, guess) => {
    expect(guessTimeStyle(texts)).toEqual(guess);
  });
});
