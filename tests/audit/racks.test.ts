import { describe, expect, it } from 'vitest';
import { makeBay, makeFrame, makeLevel, makeLoad, makeRun } from '../site-builder.ts';
import { find, findAll, inShort } from './find.ts';

const stand = (...locations: string[]) => locations.map((location) => ({ location, load: 'crates' }));
const weighing = (grossKg: number | null) => ({ loads: [makeLoad({ grossKg })] });

it('finds nothing on the small sound site with two crates in it', () => {
  expect(findAll({ loads: [makeLoad()], stock: stand('a1-1-1', 'a1-1-2') })).toEqual([]);
});

describe('overloads', () => {
  it.each([
    { kg: 1199, found: [] },
    { kg: 1200, found: [] },
    { kg: 1200.5, found: [['stop', 1200.5, 1200]] },
  ])('a pallet of $kg kg where the notice allows 1200 for one unit', ({ kg, found }) => {
    expect(inShort(find('unit-overload', { ...weighing(kg), stock: stand('a1-1-1') }))).toEqual(found);
  });

  it.each([
    { kg: 1199, found: [] },
    { kg: 1200, found: [] }, // 2 x 1200 = 2400, the pair's capacity
    { kg: 1200.5, found: [['stop', 2401, 2400]] },
  ])('two pallets of $kg kg on a pair that carries 2400', ({ kg, found }) => {
    const site = { ...weighing(kg), stock: stand('a1-1-1', 'a1-1-2') };
    expect(inShort(find('beam-level-overload', site))).toEqual(found);
  });

  it.each([
    { maxBayLoadKg: 3201, found: [] },
    { maxBayLoadKg: 3200, found: [] }, // 4 x 800
    { maxBayLoadKg: 3199, found: [['stop', 3200, 3199]] },
  ])('four crates in a bay that carries $maxBayLoadKg kg', ({ maxBayLoadKg, found }) => {
    const runs = [makeRun({ bays: [makeBay('a1', { maxBayLoadKg }), makeBay('a2')] })];
    const stock = stand('a1-1-1', 'a1-1-2', 'a1-2-1', 'a1-2-2');
    expect(inShort(find('bay-overload', { runs, stock }))).toEqual(found);
  });

  it.each([
    { capacityKg: 801, found: [] },
    { capacityKg: 800, found: [] }, // half of one crate in each bay beside frame a-f2
    { capacityKg: 799, found: [['stop', 800, 799]] },
  ])('a frame that carries $capacityKg kg between two bays of one crate', ({ capacityKg, found }) => {
    const frameTypes = [{ id: 'f90', ratings: [{ maxGapMm: 1500, capacityKg }] }];
    const findings = find('frame-overload', { frameTypes, stock: stand('a1-1-1', 'a2-1-1') });
    expect(inShort(findings)).toEqual(found);
    expect(findings.every(({ subject }) => subject.of === 'frame' && subject.frame === 'a-f2')).toBe(true);
  });

  it('counts the floor as no load of the bay', () => {
    const runs = [makeRun({ bays: [makeBay('a1', { maxBayLoadKg: 800 }), makeBay('a2')] })];
    expect(find('bay-overload', { runs, stock: stand('a1-0-1', 'a1-0-2', 'a1-1-1') })).toEqual([]);
  });

  it('is sure of an overload that the known masses make alone, and says so', () => {
    const level = makeLevel('a1', 1, { pairCapacityKg: 700 });
    const [overload] = find('beam-level-overload', {
      runs: [makeRun({ bays: [makeBay('a1', { levels: [level] }), makeBay('a2')] })],
      loads: [makeLoad(), makeLoad({ id: 'sacks', grossKg: null })],
      stock: [...stand('a1-1-1'), { location: 'a1-1-2', load: 'sacks' }],
    });
    expect(overload).toMatchObject({
      figures: { need: 800, have: 700, excess: 100, needIs: 'at-least' },
      advice: 'weigh-then-take-off',
    });
  });
});

describe('damaged steel', () => {
  const frames = (condition: 'amber' | 'red') => [
    makeFrame({ id: 'a-f1' }),
    makeFrame({ id: 'a-f2', condition }),
    makeFrame({ id: 'a-f3' }),
  ];

  it('is found while loaded: red to stop for, amber to plan', () => {
    const runs = (condition: 'amber' | 'red') => [makeRun({ frames: frames(condition) })];
    const stock = stand('a1-1-1', 'a2-2-2', 'a1-0-1');
    expect(inShort(find('red-steel-loaded', { runs: runs('red'), stock }))).toEqual([['stop', 2, 0]]);
    expect(inShort(find('amber-steel-loaded', { runs: runs('amber'), stock }))).toEqual([['plan', 2, 0]]);
  });

  it('is not found once it is empty, nor a frame that only the floor stands beside', () => {
    const runs = [makeRun({ frames: frames('red') })];
    expect(find('red-steel-loaded', { runs })).toEqual([]);
    expect(find('red-steel-loaded', { runs, stock: stand('a1-0-1') })).toEqual([]);
  });

  it('is found on the level that carries pallets and not on the one beside it', () => {
    const levels = [makeLevel('a1', 0), makeLevel('a1', 1, { condition: 'red' }), makeLevel('a1', 2)];
    const runs = [makeRun({ bays: [makeBay('a1', { levels }), makeBay('a2')] })];
    const found = find('red-steel-loaded', { runs, stock: stand('a1-1-1', 'a1-2-1') });
    expect(found.map(({ subject }) => subject)).toEqual([{ of: 'level', run: 'a', bay: 'a1', level: 1 }]);
  });
});

describe('openings', () => {
  // level 1 to 2: 3000 - 120 - 1500 = 1380 mm; the placing clearance of 150 leaves 1230, Y of 75 leaves 1305
  it.each([
    { heightMm: 1229, found: [] },
    { heightMm: 1230, found: [] },
    { heightMm: 1231, found: [['plan', 1381, 1380]] },
    { heightMm: 1305, found: [['plan', 1455, 1380]] },
    { heightMm: 1306, found: [['stop', 1456, 1380]] },
  ])('a load of $heightMm mm below a beam at 3000', ({ heightMm, found }) => {
    const site = { loads: [makeLoad({ heightMm })], stock: stand('a1-1-1') };
    expect(inShort(find('load-too-tall', site))).toEqual(found);
  });

  // two in a row: 2 w + 3 x 75 <= 2700 where w <= 1237.5 (EN 15620 class 400, as SEMA advises for two 1200 mm loads)
  it.each([
    { widthMm: 1237, found: [] },
    { widthMm: 1237.5, found: [] },
    { widthMm: 1238, found: [['plan', 2701, 2700]] },
    { widthMm: 2550, found: [['plan', 5325, 2700]] },
    { widthMm: 2551, found: [['stop', 5327, 2700]] },
  ])('a load of $widthMm mm in a bay of 2700', ({ widthMm, found }) => {
    const site = { loads: [makeLoad({ widthMm })], stock: stand('a1-1-1') };
    expect(inShort(find('load-too-wide', site))).toEqual(found);
  });
});

describe('support', () => {
  it.each([
    { frameDepthMm: 1199, found: [] },
    { frameDepthMm: 1200, found: [] },
    { frameDepthMm: 1201, found: [['stop', 1201, 1200]] },
  ])('a pallet of 1200 mm on frames of $frameDepthMm', ({ frameDepthMm, found }) => {
    const site = { runs: [makeRun({ frameDepthMm })], stock: stand('a1-1-1', 'a1-0-1') };
    expect(inShort(find('under-supported', site))).toEqual(found);
  });
});

describe('sprinklers', () => {
  // the top of the load stands at 3000 + 1000; 914 mm above it are kept clear (NFPA 13, 36 in), 457 at the very least
  it.each([
    { sprinklerMm: 4915, found: [] },
    { sprinklerMm: 4914, found: [] },
    { sprinklerMm: 4913, found: [['plan', 4914, 4913]] },
    { sprinklerMm: 4457, found: [['plan', 4914, 4457]] },
    { sprinklerMm: 4456, found: [['stop', 4914, 4456]] },
    { sprinklerMm: 'none' as const, found: [] },
  ])('sprinklers at $sprinklerMm', ({ sprinklerMm, found }) => {
    const aisles = [{ id: 'aisle-1', clearWidthMm: 4200, overheadClearMm: 9000, sprinklerMm }];
    expect(inShort(find('near-sprinklers', { aisles, stock: stand('a1-2-1', 'a1-1-1') }))).toEqual(found);
  });
});

describe('what a notice, a frame table or a survey lacks', () => {
  const bays = (a1: Parameters<typeof makeBay>[1]) => [makeRun({ bays: [makeBay('a1', a1), makeBay('a2')] })];

  it('a pair capacity, on a beam level but not on the floor', () => {
    const runs = bays({ levels: [makeLevel('a1', 0), makeLevel('a1', 1, { pairCapacityKg: null })] });
    expect(find('pair-capacity-missing', { runs }).map(({ id }) => id)).toEqual([
      'pair-capacity-missing/a/a1/1',
    ]);
  });

  it('a bay or unit limit that the rest of the run states', () => {
    const levels = [makeLevel('a1', 0), makeLevel('a1', 1, { maxUnitKg: null })];
    const runs = bays({ maxBayLoadKg: null, levels });
    expect(find('bay-limit-missing', { runs }).map(({ subject }) => subject)).toEqual([
      { of: 'bay', run: 'a', bay: 'a1' },
    ]);
    expect(find('unit-limit-missing', { runs }).map(({ severity }) => severity)).toEqual(['note']);
  });

  it('but not one that no bay of the run states', () => {
    const none = { maxBayLoadKg: null };
    const runs = [makeRun({ bays: [makeBay('a1', none), makeBay('a2', none)] })];
    expect(find('bay-limit-missing', { runs })).toEqual([]);
  });

  it.each([
    { beamTopMm: 1999, found: [] },
    { beamTopMm: 2000, found: [] },
    { beamTopMm: 2001, found: [['plan', 2001, 2000]] },
  ])('a rating for a first beam at $beamTopMm where the table ends at 2000', ({ beamTopMm, found }) => {
    const runs = bays({ levels: [makeLevel('a1', 0), makeLevel('a1', 1, { beamTopMm })] });
    const findings = find('frame-gap-beyond-ratings', { runs });
    expect(inShort(findings)).toEqual([...found, ...found]); // both frames of the bay
  });

  it('a survey overhead: to plan only where site policy must know it', () => {
    const aisles = [{ id: 'aisle-1', clearWidthMm: 4200, overheadClearMm: null, sprinklerMm: null }];
    expect(find('aisle-not-surveyed', { aisles }).map(({ severity }) => severity)).toEqual(['note', 'note']);
  });
});
