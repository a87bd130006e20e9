import { describe, expect, it } from 'vitest';
import { answerTo, core, stepOf } from '../judge.ts';

const aisle = (overheadClearMm: number | 'none' | null) => ({
  aisles: [{ id: 'aisle-1', clearWidthMm: 4200, overheadClearMm, sprinklerMm: 'none' as const }],
});

describe('load-overhead', () => {
  // lift 1750 - entry 100 + load 1000 + margin 100
  it.each([
    { overhead: 2749, outcome: 'fail' },
    { overhead: 2750, outcome: 'pass' },
    { overhead: 2751, outcome: 'pass' },
  ])('2750 mm needed under $overhead mm: $outcome', ({ overhead, outcome }) => {
    expect(core(stepOf('load-overhead', { site: aisle(overhead) }))).toEqual({
      outcome,
      need: 2750,
      have: overhead,
    });
  });

  it('refuses a load that would strike where the mast alone would pass, placing and taking down', () => {
    for (const operation of ['place', 'retrieve'] as const) {
      const answer = answerTo({ site: aisle(2700), context: { operation } });
      expect(answer).toMatchObject({ verdict: 'refuse', governing: 'load-overhead', mostKg: 0 });
    }
    expect(stepOf('mast-overhead', { site: aisle(2700) }).outcome).toBe('pass');
  });

  it('is not asked where the survey found nothing, and unknown where there was no survey', () => {
    expect(stepOf('load-overhead', { site: aisle('none') }).cause).toBe('nothing-overhead');
    expect(stepOf('load-overhead', { site: aisle(null) })).toMatchObject({
      outcome: 'unknown',
      need: 2750,
      cause: 'overhead-not-surveyed',
    });
  });
});
