import { describe, expect, it } from 'vitest';
import { frameLoad, largestGapMm } from '../../lib/rack/frame-load.ts';
import { type StockView, standingOnBay, standingOnLevel } from '../../lib/rack/stand.ts';
import { makeBay, makeIndex, makeLevel, makeLoad, makeRun, placeOf } from '../site-builder.ts';

const asIs: StockView = { stock: 'as-is', from: null };
const loads = [1, 2, 4, 8, 16, 32, 64].map((kg) => makeLoad({ id: `kg-${kg}`, grossKg: kg }));
const stand = (rows: Record<string, number>) =>
  Object.entries(rows).map(([location, kg]) => ({ location, load: `kg-${kg}` }));
const stock = stand({
  'a1-0-1': 1,
  'a1-1-1': 2,
  'a1-1-2': 4,
  'a1-2-2': 8,
  'a2-0-2': 16,
  'a2-1-1': 32,
  'a2-2-1': 64,
});

describe('what stands', () => {
  const index = makeIndex({ loads, stock });
  const { bay, level, run } = placeOf(index, 'a1-1-1');

  it('on a level is all its locations hold', () => {
    expect(standingOnLevel(index, level, asIs)).toEqual({ count: 2, kg: 6 });
  });

  it('on a bay is what its beam levels hold, not its floor', () => {
    expect(standingOnBay(index, bay, asIs)).toEqual({ count: 3, kg: 14 });
  });

  it('beside a frame is the beam levels of both bays, or of one at the end of the run', () => {
    expect([0, 1, 2].map((frame) => frameLoad(index, run, frame, asIs).standing.kg)).toEqual([14, 110, 96]);
  });

  it('leaves out the pallet being moved, and everything when the racks are taken as empty', () => {
    expect(standingOnBay(index, bay, { stock: 'as-is', from: 'a1-1-2' })).toEqual({ count: 2, kg: 10 });
    expect(standingOnBay(index, bay, { stock: 'empty', from: null })).toEqual({ count: 0, kg: 0 });
  });

  it('is assessed: a declared mass counts with its allowance', () => {
    const declared = makeIndex({
      loads: [makeLoad({ id: 'kg-1', grossKg: 1000, massBasis: 'declared' })],
      stock: stand({ 'a1-1-1': 1 }),
    });
    expect(standingOnBay(declared, bay, asIs).kg).toBe(1100);
  });

  it('is unknown as soon as one pallet of it has no known mass, and still counted', () => {
    const mystery = makeIndex({
      loads: [...loads, makeLoad({ id: 'kg-0', grossKg: null })],
      stock: stand({ 'a1-1-1': 0, 'a1-1-2': 4 }),
    });
    expect(standingOnLevel(mystery, level, asIs)).toEqual({ count: 2, kg: null });
    expect(frameLoad(mystery, run, 1, asIs).standing).toEqual({ count: 2, kg: null });
    expect(frameLoad(mystery, run, 2, asIs).standing).toEqual({ count: 0, kg: 0 });
  });

  it('is summed level by level, then bay by bay, in the order of the site', () => {
    const masses = { 'a1-1-1': 0.1, 'a1-1-2': 0.2, 'a1-2-1': 0.3, 'a2-1-1': 0.4, 'a2-2-1': 0.7 };
    const tenths = makeIndex({
      loads: Object.values(masses).map((kg) => makeLoad({ id: `kg-${kg}`, grossKg: kg })),
      stock: stand(masses),
    });
    const left = 0.1 + 0.2 + 0.3;
    expect(standingOnBay(tenths, bay, asIs).kg).toBe(left);
    expect(frameLoad(tenths, run, 1, asIs).standing.kg).toBe(left + (0.4 + 0.7));
  });
});

describe('the largest gap of a bay', () => {
  const bayWith = (...beamTops: number[]) =>
    makeBay('a1', {
      levels: [
        makeLevel('a1', 0),
        ...beamTops.map((beamTopMm, at) => makeLevel('a1', at + 1, { beamTopMm })),
      ],
    });

  it.each([
    { tops: [1800, 3000], gap: 1800, why: 'the first beam above the floor' },
    { tops: [1500, 3400, 4600], gap: 1900, why: 'between successive beams' },
    { tops: [1500, 3000], gap: 1500, why: 'both alike' },
  ])('with beams at $tops is $gap mm: $why', ({ tops, gap }) => {
    expect(largestGapMm(bayWith(...tops))).toBe(gap);
  });

  it('does not exist without beams, and such a bay adds none to its frames', () => {
    expect(largestGapMm(bayWith())).toBeNull();
    const index = makeIndex({
      runs: [makeRun({ bays: [makeBay('a1', { levels: [makeLevel('a1', 0)] }), makeBay('a2')] })],
    });
    const { run } = placeOf(index, 'a1-0-1');
    expect(frameLoad(index, run, 0, asIs)).toMatchObject({ largestGapMm: null, rating: null });
    expect(frameLoad(index, run, 1, asIs)).toMatchObject({
      largestGapMm: 1500,
      rating: { capacityKg: 9000 },
    });
  });
});

describe('the rating of a frame', () => {
  it.each([
    { gap: 1499, capacityKg: 9000 },
    { gap: 1500, capacityKg: 9000 },
    { gap: 1501, capacityKg: 7000 },
    { gap: 2000, capacityKg: 7000 },
  ])(
    'at a gap of $gap mm is $capacityKg kg, in whatever order the table is written',
    ({ gap, capacityKg }) => {
      const ratings = [
        { maxGapMm: 2000, capacityKg: 7000 },
        { maxGapMm: 1500, capacityKg: 9000 },
      ];
      const levels = [makeLevel('a1', 1, { beamTopMm: gap })];
      const index = makeIndex({
        frameTypes: [{ id: 'f90', ratings }],
        runs: [makeRun({ bays: [makeBay('a1', { levels }), makeBay('a2')] })],
      });
      expect(frameLoad(index, index.site.runs[0]!, 0, asIs).rating?.capacityKg).toBe(capacityKg);
    },
  );

  it('is none past the end of the table', () => {
    const levels = [makeLevel('a1', 1, { beamTopMm: 2001 })];
    const index = makeIndex({ runs: [makeRun({ bays: [makeBay('a1', { levels }), makeBay('a2')] })] });
    expect(frameLoad(index, index.site.runs[0]!, 0, asIs).rating).toBeNull();
  });

  it('is the smaller of two for the same gap', () => {
    const ratings = [
      { maxGapMm: 1500, capacityKg: 9000 },
      { maxGapMm: 1500, capacityKg: 8000 },
    ];
    const index = makeIndex({ frameTypes: [{ id: 'f90', ratings }] });
    expect(frameLoad(index, index.site.runs[0]!, 0, asIs).rating).toMatchObject({ capacityKg: 8000, at: 1 });
  });
});
