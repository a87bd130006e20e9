import { describe, expect, it } from 'vitest';
import { makeLoad, makeTruck } from '../../site-builder.ts';
import { answerTo, core, stepOf } from '../judge.ts';

const arms = (armCapacityKg: number | null, armLoadCentreMm: number | null) =>
  makeTruck({ forks: { lengthMm: 1150, armCapacityKg, armLoadCentreMm } });

describe('fork-arms', () => {
  it.each([
    { grossKg: 899, outcome: 'pass', why: 'below the thin band' },
    { grossKg: 900, outcome: 'pass', why: 'at the edge of the thin band' },
    { grossKg: 901, outcome: 'thin', why: 'in it' },
    { grossKg: 1000, outcome: 'thin', why: 'exactly the pair' },
    { grossKg: 1000.2, outcome: 'fail', why: 'past it' },
  ])('$grossKg kg on two arms of 500 kg: $outcome, $why', ({ grossKg, outcome }) => {
    const step = stepOf('fork-arms', { truck: arms(500, 600), load: makeLoad({ grossKg }) });
    expect(core(step)).toEqual({ outcome, need: grossKg / 2, have: 500 });
  });

  it('lowers the arm for a longer load centre: a pair of 1250 kg at 500 mm carries 2083.3 kg at 600 mm', () => {
    // in proportion to the load centre (fork arm practice under ISO 2330, from memory)
    expect(2 * Number(stepOf('fork-arms', { truck: arms(1250, 500) }).have)).toBeCloseTo(2083.3, 1);
  });

  it('never raises the arm for a shorter load centre', () => {
    expect(stepOf('fork-arms', { truck: arms(1250, 600), load: makeLoad({ depthMm: 800 }) }).have).toBe(1250);
  });

  it('is unknown without the marking, and then does not decide by default', () => {
    expect(core(stepOf('fork-arms', { truck: arms(null, null) }))).toEqual({
      outcome: 'unknown',
      need: 400,
      have: null,
      cause: 'fork-arm-rating-unknown',
    });
    expect(answerTo({ truck: arms(null, null) }).verdict).toBe('clear');
  });
});
