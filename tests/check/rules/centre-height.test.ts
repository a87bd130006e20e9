import { describe, expect, it } from 'vitest';
import { makeLoad, makeTruck } from '../../site-builder.ts';
import { core, stepOf } from '../judge.ts';

describe('centre-height', () => {
  it.each([
    { heightMm: 1199, need: 599.5, outcome: 'pass' },
    { heightMm: 1200, need: 600, outcome: 'pass' },
    { heightMm: 1201, need: 600.5, outcome: 'fail' },
  ])('a load $heightMm mm high has its centre at $need mm: $outcome', ({ heightMm, need, outcome }) => {
    // a 600 mm load centre is rated with a 1200 mm cube (ISO 22915-1)
    expect(core(stepOf('centre-height', { load: makeLoad({ heightMm }) }))).toEqual({
      outcome,
      need,
      have: 600,
    });
  });

  it('takes a stated height of the centre before half the height', () => {
    expect(
      stepOf('centre-height', { load: makeLoad({ heightMm: 2000, centreHeightMm: 550 }) }),
    ).toMatchObject({
      outcome: 'pass',
      need: 550,
    });
  });

  it('is not asked where the plate states none', () => {
    const plate = { ...makeTruck().plate, verticalLoadCentreMm: null };
    expect(stepOf('centre-height', { truck: makeTruck({ plate }) })).toMatchObject({
      outcome: 'not-applicable',
      cause: 'plate-states-none',
    });
  });
});
