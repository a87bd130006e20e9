import { describe, expect, it } from 'vitest';
import {
  asymmetryMultiplier,
  couplingMultiplier,
  distanceMultiplier,
  horizontalMultiplier,
  verticalMultiplier,
} from '../../lib/hand-pick/multipliers.ts';

describe('the multipliers around their bounds', () => {
  it.each([
    { mm: 249, value: 1 },
    { mm: 250, value: 1 },
    { mm: 251, value: 250 / 251 },
    { mm: 629, value: 250 / 629 },
    { mm: 630, value: 250 / 630 },
    { mm: 631, value: 0 },
  ])('hands $mm mm out leave $value', ({ mm, value }) => {
    expect(horizontalMultiplier(mm)).toBe(value);
  });

  it.each([
    { mm: 0, value: 0.775 },
    { mm: 749, value: 0.9997 },
    { mm: 750, value: 1 },
    { mm: 751, value: 0.9997 },
    { mm: 1749, value: 0.7003 },
    { mm: 1750, value: 0.7 },
    { mm: 1751, value: 0 },
  ])('hands $mm mm high leave $value', ({ mm, value }) => {
    expect(verticalMultiplier(mm)).toBeCloseTo(value, 12);
  });

  it.each([
    { mm: 0, value: 1 },
    { mm: 250, value: 1 },
    { mm: 251, value: 0.82 + 4.5 / 25.1 },
    { mm: 1749, value: 0.82 + 4.5 / 174.9 },
    { mm: 1750, value: 0.82 + 4.5 / 175 },
    { mm: 1751, value: 0 },
  ])('a travel of $mm mm leaves $value', ({ mm, value }) => {
    expect(distanceMultiplier(mm)).toBeCloseTo(value, 12);
  });

  it.each([
    { deg: 0, value: 1 },
    { deg: 134, value: 1 - 0.0032 * 134 },
    { deg: 135, value: 0.568 },
    { deg: 136, value: 0 },
  ])('a twist of $deg degrees leaves $value', ({ deg, value }) => {
    expect(asymmetryMultiplier(deg)).toBeCloseTo(value, 12);
  });

  it.each([
    { coupling: 'good', mm: 749, value: 1 },
    { coupling: 'good', mm: 750, value: 1 },
    { coupling: 'fair', mm: 749, value: 0.95 },
    { coupling: 'fair', mm: 750, value: 1 },
    { coupling: 'fair', mm: 751, value: 1 },
    { coupling: 'poor', mm: 749, value: 0.9 },
    { coupling: 'poor', mm: 750, value: 0.9 },
  ] as const)('a $coupling hold with hands at $mm mm leaves $value', ({ coupling, mm, value }) => {
    expect(couplingMultiplier(coupling, mm)).toBe(value);
  });
});
