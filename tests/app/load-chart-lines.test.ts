import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chartLines } from '../../app/_parts/load-chart-lines.ts';
import { plateRating } from '../../lib/check/plate-rating.ts';
import type { PlateRating } from '../../lib/model/truck.ts';
import { makeCounterbalance, makeTruck } from '../site-builder.ts';

const rating = (liftHeightMm: number, loadCentreMm: number, capacityKg: number): PlateRating => ({
  mast: 'vertical',
  attachment: null,
  liftHeightMm,
  loadCentreMm,
  capacityKg,
});
const truckWith = (...ratings: PlateRating[]) =>
  makeTruck({ plate: { verticalLoadCentreMm: null, ratings } });

describe('chartLines', () => {
  it('steps down at each height that the plate states, and ends where the plate ends', () => {
    expect(chartLines(makeTruck())).toEqual([
      {
        mast: 'vertical',
        loadCentreMm: 600,
        steps: [
          { fromMm: 0, toMm: 3000, capacityKg: 1600 },
          { fromMm: 3000, toMm: 6000, capacityKg: 1000 },
        ],
      },
    ]);
  });

  it('draws forward tilt as lines of its own, and none where the plate rates none', () => {
    expect(chartLines(makeCounterbalance()).map(({ mast }) => mast)).toEqual(['vertical', 'forward-tilt']);
    expect(chartLines(makeTruck()).map(({ mast }) => mast)).toEqual(['vertical']);
  });

  it('lends a shorter load centre what a longer one proves, never the other way', () => {
    const lines = chartLines(truckWith(rating(3000, 600, 1500), rating(5000, 700, 900)));
    expect(lines.find(({ loadCentreMm }) => loadCentreMm === 600)?.steps).toEqual([
      { fromMm: 0, toMm: 3000, capacityKg: 1500 },
      { fromMm: 3000, toMm: 5000, capacityKg: 900 },
    ]);
    expect(lines.find(({ loadCentreMm }) => loadCentreMm === 700)?.steps).toEqual([
      { fromMm: 0, toMm: 5000, capacityKg: 900 },
    ]);
  });

  it('draws nothing for an attachment that the plate does not rate', () => {
    expect(chartLines(makeTruck({ fittedAttachment: 'clamp' }))).toEqual([]);
  });

  it('shows at every height below its end exactly what the capacity rule would find', () => {
    const plates = fc.array(
      fc.tuple(
        fc.integer({ min: 1, max: 8 }),
        fc.integer({ min: 1, max: 4 }),
        fc.integer({ min: 1, max: 30 }),
      ),
      { minLength: 1, maxLength: 8 },
    );
    fc.assert(
      fc.property(plates, fc.double({ min: 1, max: 8000, noNaN: true }), (rows, liftMm) => {
        const truck = truckWith(...rows.map(([h, c, kg]) => rating(h * 1000, c * 200, kg * 100)));
        for (const line of chartLines(truck)) {
          const step = line.steps.find(({ fromMm, toMm }) => fromMm < liftMm && liftMm <= toMm);
          const found = plateRating(truck, 'vertical', liftMm, line.loadCentreMm);
          expect(step?.capacityKg ?? null).toBe(found.kind === 'proven' ? found.rating.capacityKg : null);
        }
      }),
    );
  });
});
