import { describe, expect, it } from 'vitest';
import { mastTopMm } from '../../../lib/check/mast-top.ts';
import { makeTruck } from '../../site-builder.ts';
import { core, stepOf } from '../judge.ts';

const aisle = (overheadClearMm: number | 'none' | null) => ({
  aisles: [{ id: 'aisle-1', clearWidthMm: 4200, overheadClearMm, sprinklerMm: 'none' as const }],
});

describe('the top of the mast', () => {
  // lowered 2400 to a free lift of 1600, extended 6800 at 6000: 1 mm of mast for each mm of lift between
  it.each([
    { h: 0, top: 2400 },
    { h: 1599, top: 2400 },
    { h: 1600, top: 2400 },
    { h: 1601, top: 2401 },
    { h: 3800, top: 4600 },
    { h: 5999, top: 6799 },
    { h: 6000, top: 6800 },
    { h: 6500, top: 6800 },
  ])('with the forks at $h mm stands at $top mm', ({ h, top }) => {
    expect(mastTopMm(makeTruck(), h)).toBe(top);
  });

  it.each([
    { h: 5999, top: 2400 },
    { h: 6000, top: 2400 },
    { h: 6001, top: 6800 },
  ])('that is free to its end, with the forks at $h mm, stands at $top mm', ({ h, top }) => {
    expect(mastTopMm(makeTruck({ freeLiftMm: 6000 }), h)).toBe(top);
  });

  it('rises from the floor when no free lift is stated', () => {
    expect(mastTopMm(makeTruck({ freeLiftMm: null }), 3000)).toBe(4600);
  });

  it.each([{ loweredMm: null }, { extendedMm: null }])('is not known with %o', (gap) => {
    expect(mastTopMm(makeTruck(gap), 100)).toBeNull();
  });
});

describe('mast-overhead', () => {
  // lift 1750 at level 1: mast 2550 + 100 margin
  it.each([
    { overhead: 2649, outcome: 'fail' },
    { overhead: 2650, outcome: 'pass' },
    { overhead: 2651, outcome: 'pass' },
  ])('2650 mm needed under $overhead mm: $outcome', ({ overhead, outcome }) => {
    expect(core(stepOf('mast-overhead', { site: aisle(overhead) }))).toEqual({
      outcome,
      need: 2650,
      have: overhead,
    });
  });

  it('is not asked where the survey found nothing, and unknown where there was no survey', () => {
    expect(stepOf('mast-overhead', { site: aisle('none') }).cause).toBe('nothing-overhead');
    expect(core(stepOf('mast-overhead', { site: aisle(null) }))).toEqual({
      outcome: 'unknown',
      need: 2650,
      have: null,
      cause: 'overhead-not-surveyed',
    });
  });

  it('is unknown for a mast of unknown height', () => {
    expect(core(stepOf('mast-overhead', { truck: makeTruck({ extendedMm: null }) }))).toEqual({
      outcome: 'unknown',
      need: null,
      have: 9000,
      cause: 'mast-height-unknown',
    });
  });
});
