import { describe, expect, it } from 'vitest';
import { makeBay, makeLevel, makeLoad, makeRun } from '../../site-builder.ts';
import { core, stepOf } from '../judge.ts';

describe('unit-load', () => {
  it.each([
    { grossKg: 1080, outcome: 'pass', why: 'exactly 90 %: not yet thin' },
    { grossKg: 1081, outcome: 'thin', why: 'above 90 %' },
    { grossKg: 1199, outcome: 'thin', why: 'just below the limit' },
    { grossKg: 1200, outcome: 'thin', why: 'exactly the limit' },
    { grossKg: 1201, outcome: 'fail', why: 'past it' },
  ])('$grossKg kg with a notice of 1200 kg: $outcome, $why', ({ grossKg, outcome }) => {
    expect(core(stepOf('unit-load', { load: makeLoad({ grossKg }) }))).toEqual({
      outcome,
      need: grossKg,
      have: 1200,
    });
  });

  it('is not asked where the notice states none, on the floor, or when taking down', () => {
    const levels = [makeLevel('a1', 1, { maxUnitKg: null })];
    const site = { runs: [makeRun({ bays: [makeBay('a1', { levels }), makeBay('a2')] })] };
    const load = makeLoad({ grossKg: null });
    expect(stepOf('unit-load', { site, load })).toMatchObject({
      outcome: 'not-applicable',
      cause: 'notice-states-none',
    });
    expect(stepOf('unit-load', { at: 'a1-0-1' }).cause).toBe('floor-level');
    expect(stepOf('unit-load', { context: { operation: 'retrieve' } }).cause).toBe('taking-down');
  });

  it('is unknown for a load of unknown mass', () => {
    expect(core(stepOf('unit-load', { load: makeLoad({ grossKg: null }) }))).toEqual({
      outcome: 'unknown',
      need: null,
      have: 1200,
      cause: 'mass-unknown',
    });
  });
});
