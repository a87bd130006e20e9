import { describe, expect, it } from 'vitest';
import { makeLoad } from '../../site-builder.ts';
import { core, stepOf } from '../judge.ts';

const policy = (own: object) => ({ site: { name: 'Harbour store', policy: own } });

describe('opening-height', () => {
  // level 1 to level 2: 3000 - 120 - 1500 = 1380; clearance the larger of Y 75 and 150
  it.each([
    { heightMm: 1229, outcome: 'pass' },
    { heightMm: 1230, outcome: 'pass' },
    { heightMm: 1231, outcome: 'fail' },
  ])('a load $heightMm mm high in an opening of 1380 mm: $outcome', ({ heightMm, outcome }) => {
    expect(core(stepOf('opening-height', { load: makeLoad({ heightMm }) }))).toEqual({
      outcome,
      need: heightMm + 150,
      have: 1380,
    });
  });

  it('takes Y where it is larger than the placing clearance', () => {
    const site = policy({ placingClearanceMm: 60, clearanceClass: 'AS4084' });
    expect(stepOf('opening-height', { site }).need).toBe(1100);
  });

  it('is asked on the floor', () => {
    expect(stepOf('opening-height', { at: 'a1-0-1' })).toMatchObject({ outcome: 'pass', have: 1380 });
  });

  it('is not asked on the top level or when taking down', () => {
    expect(stepOf('opening-height', { at: 'a1-2-1' }).cause).toBe('top-level');
    expect(stepOf('opening-height', { context: { operation: 'retrieve' } }).cause).toBe('taking-down');
  });
});
