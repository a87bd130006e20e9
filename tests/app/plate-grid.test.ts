import { describe, expect, it } from 'vitest';
import { plateGrids } from '../../app/_parts/plate-grid.ts';
import { plateCautions } from '../../app/trucks/[id]/plate-cautions.ts';
import type { PlateRating } from '../../lib/model/truck.ts';
import { makeCounterbalance, makeTruck } from '../site-builder.ts';

const rating = (
  liftHeightMm: number,
  loadCentreMm: number,
  capacityKg: number,
  more: Partial<PlateRating> = {},
): PlateRating => ({ mast: 'vertical', attachment: null, liftHeightMm, loadCentreMm, capacityKg, ...more });
const truckWith = (...ratings: PlateRating[]) =>
  makeTruck({ plate: { verticalLoadCentreMm: null, ratings } });

describe('plateGrids', () => {
  it('reads heights down from the highest, load centres across from the shortest', () => {
    const [grid] = plateGrids(
      truckWith(rating(3000, 700, 1400), rating(6000, 600, 1000), rating(3000, 600, 1600)).plate,
    );
    expect(grid?.loadCentresMm).toEqual([600, 700]);
    expect(grid?.rows).toEqual([
      { liftHeightMm: 6000, cells: [[{ capacityKg: 1000, at: 1 }], []] },
      { liftHeightMm: 3000, cells: [[{ capacityKg: 1600, at: 2 }], [{ capacityKg: 1400, at: 0 }]] },
    ]);
  });

  it('keeps mast positions and attachments apart', () => {
    const truck = truckWith(
      rating(3000, 600, 1200, { attachment: 'clamp' }),
      rating(3000, 600, 1600, { mast: 'forward-tilt' }),
      rating(3000, 600, 1600),
    );
    expect(plateGrids(truck.plate).map(({ mast, attachment }) => [mast, attachment])).toEqual([
      ['vertical', 'clamp'],
      ['vertical', null],
      ['forward-tilt', null],
    ]);
  });

  it('shows both of two lines for one height and load centre', () => {
    const [grid] = plateGrids(truckWith(rating(3000, 600, 1600), rating(3000, 600, 1500)).plate);
    expect(grid?.rows[0]?.cells[0]?.map(({ capacityKg }) => capacityKg)).toEqual([1600, 1500]);
  });

  it('is empty for an empty plate', () => {
    expect(plateGrids(truckWith().plate)).toEqual([]);
  });
});

describe('plateCautions', () => {
  const kinds = (...ratings: PlateRating[]) => plateCautions(truckWith(...ratings)).map(({ kind }) => kind);

  it('finds nothing on a sound plate', () => {
    expect(plateCautions(makeTruck())).toEqual([]);
    expect(plateCautions(makeCounterbalance())).toEqual([]);
  });

  it.each([
    { toMm: 5999, found: ['stops-short'], why: 'a millimetre below the largest lift (6000)' },
    { toMm: 6000, found: [], why: 'exactly at it' },
    { toMm: 6001, found: [], why: 'above it' },
  ])('asks whether the plate reaches the largest lift: $why', ({ toMm, found }) => {
    expect(kinds(rating(toMm, 600, 1000))).toEqual(found);
  });

  it.each([
    { higherKg: 999, found: [] },
    { higherKg: 1000, found: [] },
    { higherKg: 1001, found: ['rises-with-height'] },
  ])('names a capacity that rises with height ($higherKg kg above 1000 kg)', ({ higherKg, found }) => {
    expect(kinds(rating(3000, 600, 1000), rating(6000, 600, higherKg))).toEqual(found);
  });

  it.each([
    { furtherKg: 999, found: [] },
    { furtherKg: 1000, found: [] },
    { furtherKg: 1001, found: ['rises-with-load-centre'] },
  ])(
    'names a capacity that rises with load centre ($furtherKg kg beyond 1000 kg)',
    ({ furtherKg, found }) => {
      expect(kinds(rating(6000, 600, 1000), rating(6000, 700, furtherKg))).toEqual(found);
    },
  );

  it('names two lines that differ for one height and load centre, once', () => {
    expect(kinds(rating(6000, 600, 1000), rating(6000, 600, 1100))).toEqual(['lines-differ']);
    expect(kinds(rating(6000, 600, 1000), rating(6000, 600, 1000))).toEqual([]);
  });

  it('says that nothing is rated for what is fitted, and does not compare across attachments', () => {
    const truck = makeTruck({
      fittedAttachment: 'clamp',
      plate: { verticalLoadCentreMm: null, ratings: [rating(6000, 600, 1000)] },
    });
    expect(plateCautions(truck)).toEqual([{ kind: 'no-rating-for-fitted' }]);
    expect(kinds(rating(6000, 600, 1000), rating(6000, 600, 900, { attachment: 'clamp' }))).toEqual([]);
  });
});
