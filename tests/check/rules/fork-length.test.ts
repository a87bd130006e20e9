import { describe, expect, it } from 'vitest';
import { makeTruck } from '../../site-builder.ts';
import { core, stepOf } from '../judge.ts';

const forks = (lengthMm: number | null) =>
  makeTruck({ forks: { lengthMm, armCapacityKg: 1000, armLoadCentreMm: 600 } });

describe('fork-length', () => {
  // AS 2359.2:2013 cl. 3.7(e): a 1200 mm load needs 900 mm of fork
  it.each([
    { lengthMm: 899, outcome: 'fail' },
    { lengthMm: 900, outcome: 'pass' },
    { lengthMm: 901, outcome: 'pass' },
  ])('forks of $lengthMm mm under 1200 mm: $outcome', ({ lengthMm, outcome }) => {
    expect(core(stepOf('fork-length', { truck: forks(lengthMm) }))).toEqual({
      outcome,
      need: 900,
      have: lengthMm,
    });
  });

  it('is unknown when the length is not recorded', () => {
    expect(core(stepOf('fork-length', { truck: forks(null) }))).toEqual({
      outcome: 'unknown',
      need: 900,
      have: null,
      cause: 'fork-length-unknown',
    });
  });

  it('takes the supported part from the policy', () => {
    const site = { site: { name: 'Harbour store', policy: { forkSupportFraction: 0.5 } } };
    expect(stepOf('fork-length', { site }).need).toBe(600);
  });
});
