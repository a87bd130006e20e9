import { describe, expect, it } from 'vitest';
import { plateGrids } from '../../app/_parts/plate-grid.ts';
import type { PlateRating } from '../../lib/model/truck.ts';
import { makeTruck } from '../site-builder.ts';

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
