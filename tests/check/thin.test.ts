import { describe, expect, it } from 'vitest';
import { isThin } from '../../lib/check/thin.ts';
import { makeLoad } from '../site-builder.ts';
import { stepOf } from './judge.ts';

describe('thin', () => {
  it.each([
    { needKg: 899.999, thin: false },
    { needKg: 900, thin: false },
    { needKg: 900.001, thin: true },
    { needKg: 1000, thin: true },
  ])('$needKg kg of 1000 kg at 10 %: $thin', ({ needKg, thin }) => {
    expect(isThin(needKg, 1000, 10)).toBe(thin);
  });

  it('does not round the fraction: 930 kg of 1000 kg at 7 % is exactly at the edge', () => {
    expect(930 / 1000 > 1 - 7 / 100).toBe(true); // what rounding would make of it
    expect(isThin(930, 1000, 7)).toBe(false);
  });

  it('is never so at 0 %, and always at 100 %', () => {
    expect(isThin(1000, 1000, 0)).toBe(false);
    expect(isThin(0.001, 1000, 100)).toBe(true);
  });

  it('is judged by the policy of the site', () => {
    const load = makeLoad({ grossKg: 1000 });
    const site = (thinPercent: number) => ({ site: { name: 'Harbour store', policy: { thinPercent } } });
    expect(stepOf('unit-load', { load, site: site(16) }).outcome).toBe('pass');
    expect(stepOf('unit-load', { load, site: site(17) }).outcome).toBe('thin');
  });
});
