import { describe, expect, it } from 'vitest';
import { rankTrucks } from '../../lib/check/rank-trucks.ts';
import { makeContext, makeIndex, makeLoad, makeTruck, placeOf } from '../site-builder.ts';

const plate = (capacityKg: number) => ({
  verticalLoadCentreMm: null,
  ratings: [
    { mast: 'vertical' as const, attachment: null, liftHeightMm: 6000, loadCentreMm: 600, capacityKg },
  ],
});

describe('trucks in order of choice', () => {
  it('come clear, thin, unproven, refused, and within a verdict by what they could still lift', () => {
    const trucks = [
      makeTruck({ id: 'too-weak', plate: plate(700) }),
      makeTruck({ id: 'no-plate', plate: { verticalLoadCentreMm: null, ratings: [] } }),
      makeTruck({ id: 'just', plate: plate(850) }),
      makeTruck({ id: 'good', plate: plate(1000) }),
      makeTruck({ id: 'same-as-good', plate: plate(1000) }),
      makeTruck({ id: 'strong', plate: plate(1100) }),
      makeTruck({ id: 'too-low', maxLiftMm: 1000 }),
    ];
    const index = makeIndex({ trucks, checks: [] });
    const ranked = rankTrucks(index, {
      load: makeLoad(),
      place: placeOf(index, 'a1-1-1'),
      context: makeContext(),
    });
    expect(ranked.map(({ truck, verdict }) => `${truck} ${verdict}`)).toEqual([
      'strong clear',
      'good clear',
      'same-as-good clear',
      'just thin',
      'no-plate unproven',
      'too-weak refuse',
      'too-low refuse',
    ]);
  });
});
