import { describe, expect, it } from 'vitest';
import { makeCounterbalance, makeLoad } from '../../site-builder.ts';
import { core, stepOf } from '../judge.ts';

const truck = makeCounterbalance();

describe('tilt-capacity', () => {
  it.each([
    { grossKg: 1699, outcome: 'thin' },
    { grossKg: 1700, outcome: 'thin' },
    { grossKg: 1701, outcome: 'fail' },
  ])('$grossKg kg with 1700 kg proven tilted forward: $outcome', ({ grossKg, outcome }) => {
    expect(core(stepOf('tilt-capacity', { truck, load: makeLoad({ grossKg }) }))).toEqual({
      outcome,
      need: grossKg,
      have: 1700,
    });
  });

  it('is not asked where the mast is kept vertical', () => {
    const site = { site: { name: 'Harbour store', policy: { tilt: 'mast-kept-vertical' as const } } };
    expect(stepOf('tilt-capacity', { truck, site })).toMatchObject({
      outcome: 'not-applicable',
      cause: 'mast-kept-vertical',
    });
  });

  it('is not asked without a forward-tilt line for what is fitted', () => {
    expect(stepOf('tilt-capacity').cause).toBe('no-tilt-ratings');
    const clamped = makeCounterbalance({ fittedAttachment: 'clamp' });
    expect(stepOf('tilt-capacity', { truck: clamped }).cause).toBe('no-tilt-ratings');
  });

  it.each([
    { liftHeightMm: 1700, loadCentreMm: 600, cause: 'height-beyond-plate' },
    { liftHeightMm: 4500, loadCentreMm: 599, cause: 'load-centre-beyond-plate' },
  ])('is unknown beyond its own lines: $cause', ({ cause, ...line }) => {
    const ratings = [
      ...truck.plate.ratings.filter(({ mast }) => mast === 'vertical'),
      { mast: 'forward-tilt' as const, attachment: null, capacityKg: 1700, ...line },
    ];
    const short = makeCounterbalance({ plate: { verticalLoadCentreMm: null, ratings } });
    expect(stepOf('tilt-capacity', { truck: short })).toMatchObject({
      outcome: 'unknown',
      have: null,
      cause,
    });
    expect(stepOf('plate-capacity', { truck: short }).have).toBe(2000);
  });

  it('is asked when taking down too', () => {
    expect(stepOf('tilt-capacity', { truck, context: { operation: 'retrieve' } }).outcome).toBe('pass');
  });
});
