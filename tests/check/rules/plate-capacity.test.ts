import { describe, expect, it } from 'vitest';
import { makeDrums, makeLoad, makeTruck } from '../../site-builder.ts';
import { core, stepOf } from '../judge.ts';

const rating = (
  liftHeightMm: number,
  loadCentreMm: number,
  capacityKg: number,
  attachment: string | null = null,
) => ({
  mast: 'vertical' as const,
  attachment,
  liftHeightMm,
  loadCentreMm,
  capacityKg,
});
const withPlate = (...ratings: ReturnType<typeof rating>[]) =>
  makeTruck({ plate: { verticalLoadCentreMm: null, ratings } });

describe('plate-capacity', () => {
  it.each([
    { grossKg: 1599, outcome: 'thin' },
    { grossKg: 1600, outcome: 'thin' },
    { grossKg: 1600.001, outcome: 'fail' },
  ])('$grossKg kg on a plate of 1600 kg: $outcome', ({ grossKg, outcome }) => {
    expect(core(stepOf('plate-capacity', { load: makeLoad({ grossKg }) }))).toEqual({
      outcome,
      need: grossKg,
      have: 1600,
    });
  });

  it.each([
    { liftHeightMm: 1749, have: 1000, why: 'a millimetre below the lift: the next line' },
    { liftHeightMm: 1750, have: 1600, why: 'exactly the lift' },
    { liftHeightMm: 1751, have: 1600, why: 'above the lift' },
  ])('a line to $liftHeightMm mm for a lift of 1750 proves $have kg: $why', ({ liftHeightMm, have }) => {
    const truck = withPlate(rating(liftHeightMm, 600, 1600), rating(6000, 600, 1000));
    expect(stepOf('plate-capacity', { truck }).have).toBe(have);
  });

  it.each([
    { loadCentreMm: 599, have: 1000 },
    { loadCentreMm: 600, have: 1600 },
    { loadCentreMm: 601, have: 1600 },
  ])('a line at $loadCentreMm mm for a load centre of 600 proves $have kg', ({ loadCentreMm, have }) => {
    const truck = withPlate(rating(3000, loadCentreMm, 1600), rating(3000, 700, 1000));
    expect(stepOf('plate-capacity', { truck }).have).toBe(have);
  });

  it('lets a line prove its mass for a lower lift even where a lower line says less', () => {
    expect(
      stepOf('plate-capacity', { truck: withPlate(rating(2000, 600, 900), rating(5000, 600, 1400)) }).have,
    ).toBe(1400);
  });

  it.each([
    { truck: withPlate(), cause: 'no-rating', why: 'an empty plate' },
    { truck: withPlate(rating(6000, 600, 1000, 'clamp')), cause: 'no-rating', why: 'only for an attachment' },
    {
      truck: withPlate(rating(1749, 600, 1600)),
      cause: 'height-beyond-plate',
      why: 'no line reaches the lift',
    },
    {
      truck: withPlate(rating(1749, 500, 1600)),
      cause: 'height-beyond-plate',
      why: 'both short: height first',
    },
    {
      truck: withPlate(rating(6000, 500, 1600)),
      cause: 'load-centre-beyond-plate',
      why: 'reaches, too short a centre',
    },
    {
      truck: withPlate(rating(1749, 600, 1600), rating(6000, 500, 1000)),
      cause: 'load-centre-beyond-plate',
      why: 'one line has the height, another the centre, none both',
    },
  ])('is unknown, $cause: $why', ({ truck, cause }) => {
    expect(core(stepOf('plate-capacity', { truck }))).toEqual({
      outcome: 'unknown',
      need: 800,
      have: null,
      cause,
    });
  });

  it('reads the lines of what is fitted and no others', () => {
    const truck = makeTruck({
      fittedAttachment: 'clamp',
      plate: {
        verticalLoadCentreMm: null,
        ratings: [rating(6000, 600, 1600), rating(6000, 600, 900, 'clamp')],
      },
    });
    expect(stepOf('plate-capacity', { truck }).have).toBe(900);
  });

  it('judges four 250 kg drums on a 60 kg pallet as 1060 kg', () => {
    expect(stepOf('plate-capacity', { load: makeDrums() }).need).toBe(1060);
  });

  it('adds ten in the hundred to a declared mass, exactly', () => {
    expect(stepOf('plate-capacity', { load: makeLoad({ grossKg: 1000, massBasis: 'declared' }) }).need).toBe(
      1100,
    );
  });

  it('names the limit before the mass when both are unknown', () => {
    const load = makeLoad({ grossKg: null });
    expect(core(stepOf('plate-capacity', { load }))).toEqual({
      outcome: 'unknown',
      need: null,
      have: 1600,
      cause: 'mass-unknown',
    });
    expect(stepOf('plate-capacity', { load, truck: withPlate() }).cause).toBe('no-rating');
  });

  it('names the line of the plate that was read', () => {
    const fields = stepOf('plate-capacity', { at: 'a1-2-1' }).haveFrom.map(({ field, value }) => [
      field,
      value,
    ]);
    expect(fields).toContainEqual(['ratings[1].capacityKg', 1000]);
    expect(fields).toContainEqual(['ratings[1].liftHeightMm', 6000]);
    expect(fields).toContainEqual(['placingClearanceMm', 150]);
  });
});
