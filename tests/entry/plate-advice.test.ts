import { describe, expect, it } from 'vitest';
import { plateAdvice, usualLoadCentreMm } from '../../lib/entry/plate-advice.ts';
import type { PlateRating } from '../../lib/model/truck.ts';
import { plateAdviceSentence } from '../../lib/words/entry.ts';
import { makeCounterbalance, makeTruck } from '../site-builder.ts';

const line = (
  liftHeightMm: number,
  loadCentreMm: number,
  capacityKg: number,
  more: Partial<PlateRating> = {},
) => ({
  mast: 'vertical' as const,
  attachment: null,
  liftHeightMm,
  loadCentreMm,
  capacityKg,
  ...more,
});
const plateOf = (...ratings: PlateRating[]) => ({ plate: { verticalLoadCentreMm: null, ratings } });
const kindsOf = (truck: Parameters<typeof plateAdvice>[0]) =>
  plateAdvice(truck).map((advice) => (advice.kind === 'finding' ? advice.finding.kind : advice.kind));

describe('the advice on a plate', () => {
  it('is none for a truck whose plate is sound', () => {
    expect(plateAdvice(makeTruck())).toEqual([]);
  });

  it.each([
    ['falls with height', [line(3000, 600, 1600), line(6000, 600, 1599)], []],
    ['stays with height', [line(3000, 600, 1600), line(6000, 600, 1600)], []],
    ['rises with height', [line(3000, 600, 1600), line(6000, 600, 1601)], ['plate-rises']],
    ['rises with the load centre', [line(6000, 600, 1600), line(6000, 700, 1601)], ['plate-rises']],
    ['is stated twice and differs', [line(6000, 600, 1600), line(6000, 600, 1500)], ['plate-contradicts']],
    ['stops 1 mm short of the mast', [line(5999, 600, 1600)], ['plate-stops-below-mast']],
    ['ends with the mast', [line(6000, 600, 1600)], []],
    ['goes on 1 mm above the mast', [line(6001, 600, 1600)], ['line-above-mast']],
  ] as const)('of a capacity that %s', (_why, ratings, kinds) => {
    const truck = makeTruck({ ...plateOf(...ratings), forks: { lengthMm: 1150 } });
    expect(kindsOf(truck)).toEqual(kinds);
  });

  it('says when there is no line for what is fitted', () => {
    expect(kindsOf(makeTruck({ fittedAttachment: 'clamp' }))).toContain('plate-lacks-attachment');
  });

  it.each([
    [799, ['fork-arms-below-plate']],
    [800, []],
    [801, []],
  ])(
    'of arms of %i kg each under a plate of 1600 kg (ISO 2330: mass per arm at a load centre)',
    (armKg, kinds) => {
      const forks = { lengthMm: 1150, armCapacityKg: armKg, armLoadCentreMm: 600 };
      expect(kindsOf(makeTruck({ ...plateOf(line(6000, 600, 1600)), forks }))).toEqual(kinds);
    },
  );

  it('lowers the arms in proportion at a longer load centre: 2 x 1000 x 600 / 800 = 1500 below 1501', () => {
    const forks = { lengthMm: 1150, armCapacityKg: 1000, armLoadCentreMm: 600 };
    const truck = (kg: number) =>
      makeTruck({ ...plateOf(line(6000, 600, 1600), line(6000, 800, kg)), forks });
    expect(kindsOf(truck(1500))).toEqual([]);
    expect(kindsOf(truck(1501))).toEqual(['fork-arms-below-plate']);
  });

  // ISO 22915-1 and ISO 3691-1, standard load centres, from memory; 24 in: ASME B56.1, from memory
  it.each([
    ['counterbalance', 999, 400],
    ['counterbalance', 1000, 500],
    ['counterbalance', 4999, 500],
    ['counterbalance', 5000, 600],
    ['counterbalance', 10_000, 600],
    ['counterbalance', 10_001, 900],
    ['counterbalance', 20_000, 1200],
    ['reach', 1600, 600],
    ['stacker', 900, 600],
  ] as const)('takes for a %s truck of %i kg a load centre of %i mm as usual', (kind, ratedKg, usual) => {
    expect(usualLoadCentreMm(kind, ratedKg)).toBe(usual);
  });

  it.each([
    [450, ['load-centre-unusual']],
    [500, []],
    [600, []],
    [609.6, []],
    [700, ['load-centre-unusual']],
  ])('of a 2000 kg counterbalanced truck rated at %d mm alone', (centre, kinds) => {
    expect(kindsOf(makeCounterbalance(plateOf(line(4500, centre, 2000))))).toEqual(kinds);
  });

  it('names the facts without which a rule stays unknown', () => {
    expect(kindsOf(makeTruck({ turning: null }))).toEqual(['turning-data-missing']);
    expect(kindsOf(makeTruck({ turning: null, statedAisleMm: 2700 }))).toEqual([]);
    expect(kindsOf(makeTruck({ kind: 'narrow-aisle' }))).toEqual(['stated-aisle-missing']);
    expect(kindsOf(makeTruck({ extendedMm: null }))).toEqual(['mast-heights-missing']);
  });

  it('is told in sentences with both figures', () => {
    const forks = { lengthMm: 1150, armCapacityKg: 700, armLoadCentreMm: 600 };
    const [advice] = plateAdvice(makeTruck({ ...plateOf(line(6000, 600, 1600)), forks }));
    expect(plateAdviceSentence(advice!, 'metric').replaceAll('\u202f', ' ')).toBe(
      'The pair of fork arms carries 1 400 kg at 600 mm, the plate states 1 600 kg there. The lower one governs; look at the marking on the arms.',
    );
  });
});
