import { describe, expect, it } from 'vitest';
import { damageClass } from '../../lib/rack/damage-class.ts';

describe('damageClass', () => {
  it.each([
    { kind: 'upright-down-aisle', bowMm: 4.9, damage: 'green' },
    { kind: 'upright-down-aisle', bowMm: 5, damage: 'green' },
    { kind: 'upright-down-aisle', bowMm: 5.1, damage: 'amber' },
    { kind: 'upright-down-aisle', bowMm: 9.9, damage: 'amber' },
    { kind: 'upright-down-aisle', bowMm: 10, damage: 'amber' },
    { kind: 'upright-down-aisle', bowMm: 10.1, damage: 'red' },
    { kind: 'upright-cross-aisle', bowMm: 2.9, damage: 'green' },
    { kind: 'upright-cross-aisle', bowMm: 3, damage: 'green' },
    { kind: 'upright-cross-aisle', bowMm: 3.1, damage: 'amber' },
    { kind: 'upright-cross-aisle', bowMm: 5.9, damage: 'amber' },
    { kind: 'upright-cross-aisle', bowMm: 6, damage: 'amber' },
    { kind: 'upright-cross-aisle', bowMm: 6.1, damage: 'red' },
    { kind: 'bracing', bowMm: 9.9, damage: 'green' },
    { kind: 'bracing', bowMm: 10, damage: 'green' },
    { kind: 'bracing', bowMm: 10.1, damage: 'amber' },
    { kind: 'bracing', bowMm: 19.9, damage: 'amber' },
    { kind: 'bracing', bowMm: 20, damage: 'amber' },
    { kind: 'bracing', bowMm: 20.1, damage: 'red' },
  ] as const)('$kind bowed $bowMm mm over 1 m is $damage', ({ kind, bowMm, damage }) => {
    expect(damageClass({ kind, bowMm }).damage).toBe(damage);
  });

  it.each([
    { lengthMm: 500, bowMm: 1.4, damage: 'green' },
    { lengthMm: 500, bowMm: 1.5, damage: 'green' },
    { lengthMm: 500, bowMm: 1.6, damage: 'amber' },
    { lengthMm: 500, bowMm: 3.1, damage: 'red' },
  ] as const)(
    'cross-aisle over $lengthMm mm the limits shrink: $bowMm mm is $damage',
    ({ lengthMm, bowMm, damage }) => {
      expect(damageClass({ kind: 'upright-cross-aisle', bowMm, lengthMm }).damage).toBe(damage);
    },
  );

  it('does not grow the limits for a bend longer than the straight edge', () => {
    expect(damageClass({ kind: 'bracing', bowMm: 11, lengthMm: 3000 })).toEqual({
      damage: 'amber',
      greenLimitMm: 10,
      amberLimitMm: 20,
    });
  });

  it.each([
    { bowMm: Number.NaN, lengthMm: 1000 },
    { bowMm: -1, lengthMm: 1000 },
    { bowMm: 1, lengthMm: 0 },
  ])('refuses a bow of $bowMm mm over $lengthMm mm', ({ bowMm, lengthMm }) => {
    expect(() => damageClass({ kind: 'bracing', bowMm, lengthMm })).toThrow(RangeError);
  });
});
