import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { axisMarks, lengthIn, massIn, spreadLabels } from '../../app/_parts/chart-scale.ts';

describe('axisMarks', () => {
  it.each([
    {
      most: 6000,
      marks: 8,
      first: [0, 1000, 2000],
      last: 6000,
      why: 'a whole number of steps ends on the most',
    },
    { most: 6001, marks: 8, first: [0, 1000, 2000], last: 7000, why: 'a little more needs a mark more' },
    { most: 5999, marks: 8, first: [0, 1000, 2000], last: 6000, why: 'a little less keeps the last mark' },
    {
      most: 3500,
      marks: 6,
      first: [0, 1000, 2000],
      last: 4000,
      why: 'steps are 1, 2 or 5 times a power of ten',
    },
    { most: 0.3, marks: 3, first: [0, 0.1, 0.2], last: 0.3, why: 'tenths do not drift' },
  ])('marks 0 to $most: $why', ({ most, marks, first, last }) => {
    const found = axisMarks(most, marks);
    expect(found.slice(0, 3)).toEqual(first);
    expect(found.at(-1)).toBe(last);
  });

  it.each([0, -1, Number.NaN])('has one mark, 0, when there is nothing to show (%s)', (most) => {
    expect(axisMarks(most, 5)).toEqual([0]);
  });

  it('always reaches the most, with no more steps than were asked for', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 1e7, noNaN: true }),
        fc.integer({ min: 1, max: 12 }),
        (most, marks) => {
          const found = axisMarks(most, marks);
          expect(found.at(-1)).toBeGreaterThanOrEqual(most * (1 - 1e-9));
          expect(found.length - 1).toBeLessThanOrEqual(marks);
        },
      ),
    );
  });
});

describe('spreadLabels', () => {
  it('leaves labels that are far enough apart where they belong', () => {
    expect(spreadLabels([20, 50, 80], { apart: 15, from: 0, to: 100 })).toEqual([20, 50, 80]);
  });

  it('moves those that would touch, and keeps the order they were given in', () => {
    expect(spreadLabels([52, 50], { apart: 15, from: 0, to: 100 })).toEqual([65, 50]);
  });

  it('pushes back up what would fall off the end', () => {
    expect(spreadLabels([95, 98], { apart: 15, from: 0, to: 100 })).toEqual([85, 100]);
  });

  it('never lets two labels touch while there is room for all', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 200 }), { minLength: 1, maxLength: 10 }), (wanted) => {
        const placed = spreadLabels(wanted, { apart: 15, from: 0, to: 200 }).sort((a, b) => a - b);
        for (const [at, height] of placed.entries()) {
          expect(height).toBeGreaterThanOrEqual(0);
          expect(height).toBeLessThanOrEqual(200);
          if (at > 0) expect(height - (placed[at - 1] ?? 0)).toBeGreaterThanOrEqual(15);
        }
      }),
    );
  });
});

describe('massIn and lengthIn', () => {
  it('leave kilograms and millimetres as they are', () => {
    expect(massIn(1250, 'metric')).toBe(1250);
    expect(lengthIn(1250, 'metric')).toBe(1250);
  });

  it('turn them into pounds and inches by the exact definitions of 1959', () => {
    expect(massIn(453.59237, 'lb-in')).toBeCloseTo(1000, 9);
    expect(lengthIn(609.6, 'lb-in')).toBeCloseTo(24, 12);
  });
});
