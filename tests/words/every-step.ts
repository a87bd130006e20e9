import type { Step } from '../../lib/check/step.ts';
import { type Ask, answerTo } from '../check/judge.ts';
import {
  makeBay,
  makeCounterbalance,
  makeFrame,
  makeLevel,
  makeLoad,
  makeRun,
  makeTruck,
} from '../site-builder.ts';

const asOf = '2026-03-02T10:00:00Z';
const noPlate = { verticalLoadCentreMm: null, ratings: [] };
const line = {
  mast: 'vertical' as const,
  attachment: null,
  liftHeightMm: 6000,
  loadCentreMm: 600,
  capacityKg: 1600,
};
const deep = makeLevel('a1', 1, { depthPositions: 2, locations: ['f1', 'f2', 'r1', 'r2'] });
const run = (...levels: ReturnType<typeof makeLevel>[]) => ({
  runs: [makeRun({ bays: [makeBay('a1', { levels }), makeBay('a2')] })],
});
const steel = (condition: 'amber' | 'red') => ({
  runs: [
    makeRun({ frames: [makeFrame({ condition }), makeFrame({ id: 'a-f2' }), makeFrame({ id: 'a-f3' })] }),
  ],
});
const aisle = (surveyed: number | 'none' | null, clearWidthMm = 4200) => ({
  aisles: [{ id: 'aisle-1', clearWidthMm, overheadClearMm: surveyed, sprinklerMm: surveyed }],
});
const heavy = makeLoad({ id: 'heavy', grossKg: 9000 });
const stock = [
  { location: 'a1-1-2', load: 'crates' },
  { location: 'a1-2-1', load: 'crates' },
];
const mystery = { loads: [makeLoad({ id: 'crates', grossKg: null })], stock };

/** Lifts that between them bring about every outcome of every rule and every cause. */
const ASKS: Ask[] = [
  {},
  { context: { asOf, operator: 'op-1' } },
  { at: 'a1-2-1', context: { asOf, operator: 'op-1' }, truck: makeCounterbalance(), site: { stock } },
  { at: 'a1-0-1' },
  { at: 'a1-2-1' },
  { context: { operation: 'retrieve' } },
  { context: { stock: 'empty' } },
  { load: makeLoad({ grossKg: 1190 }), site: { stock } },
  ...[1450, 1590, 1690].map((grossKg) => ({
    load: makeLoad({ grossKg }),
    truck: makeCounterbalance(),
    site: { stock },
  })),
  { load: makeLoad({ grossKg: 1590 }), at: 'a1-0-1' },
  { load: heavy, truck: makeCounterbalance(), site: { stock } },
  {
    site: {
      ...run(makeLevel('a1', 1, { pairCapacityKg: 810, maxUnitKg: 820 })),
      frameTypes: [{ id: 'f90', ratings: [{ maxGapMm: 1500, capacityKg: 410 }] }],
    },
    truck: makeTruck({ forks: { lengthMm: 850, armCapacityKg: 410, armLoadCentreMm: 600 } }),
  },
  { site: { frameTypes: [{ id: 'f90', ratings: [{ maxGapMm: 1500, capacityKg: 399 }] }] } },
  { site: { runs: [makeRun({ bays: [makeBay('a1', { maxBayLoadKg: 810 }), makeBay('a2')] })] } },
  { site: { runs: [makeRun({ bays: [makeBay('a1', { maxBayLoadKg: null }), makeBay('a2')] })] } },
  { load: makeLoad({ grossKg: null }), truck: makeCounterbalance() },
  { site: mystery },
  { site: { stock: [{ location: 'a1-1-1', load: 'crates' }] } },
  {
    site: { ...run(deep), stock: [{ location: 'f1', load: 'crates' }] },
    at: 'r1',
    truck: makeTruck({ reachDepth: 2 }),
  },
  { site: run(deep), at: 'r1' },
  { load: makeLoad({ heightMm: 1300, widthMm: 1500 }) },
  { truck: makeTruck({ maxLiftMm: 1000 }) },
  { site: aisle(1000, 2000), at: 'a1-2-1' },
  { site: aisle(null), at: 'a1-2-1' },
  { site: aisle('none'), at: 'a1-2-1' },
  {
    truck: makeTruck({
      turning: null,
      loweredMm: null,
      plate: noPlate,
      forks: { lengthMm: null, armCapacityKg: null, armLoadCentreMm: null },
    }),
  },
  {
    truck: makeTruck({
      kind: 'stacker',
      turning: { outsideRadiusMm: 1500, loadDistanceMm: 1300, insideOffsetMm: 0 },
    }),
  },
  { truck: makeTruck({ plate: { verticalLoadCentreMm: 400, ratings: [{ ...line, liftHeightMm: 1000 }] } }) },
  {
    truck: makeTruck({
      plate: {
        verticalLoadCentreMm: 400,
        ratings: [
          { ...line, loadCentreMm: 500 },
          { ...line, mast: 'forward-tilt', loadCentreMm: 500 },
        ],
      },
    }),
  },
  {
    truck: makeTruck({
      plate: { verticalLoadCentreMm: 400, ratings: [{ ...line, mast: 'forward-tilt', capacityKg: 700 }] },
    }),
  },
  {
    truck: makeTruck({
      plate: { verticalLoadCentreMm: 400, ratings: [{ ...line, mast: 'forward-tilt', capacityKg: 810 }] },
    }),
  },
  {
    truck: makeCounterbalance(),
    site: { site: { name: 'Harbour store', policy: { tilt: 'mast-kept-vertical' } } },
  },
  { site: run(makeLevel('a1', 1, { maxUnitKg: null, pairCapacityKg: null, decked: true })) },
  { site: { frameTypes: [{ id: 'f90', ratings: [] }] } },
  { site: { runs: [makeRun({ frameDepthMm: 1300 })] } },
  { site: steel('amber') },
  { site: steel('red') },
  { site: steel('amber'), context: { operation: 'retrieve' } },
  { site: steel('red'), context: { operation: 'retrieve' } },
  { truck: makeTruck({ hold: { since: '2026-03-01', reason: 'mast chain' } }), context: { asOf } },
  { site: { checks: [] }, context: { asOf } },
  { context: { asOf: '2026-04-02T10:00:00Z', operator: 'op-1' } },
  { context: { asOf: '2026-07-02T10:00:00Z', operator: 'op-1' } },
  { truck: makeTruck({ kind: 'order-picker', statedAisleMm: 1600 }), context: { asOf, operator: 'op-1' } },
  {
    site: { checks: [{ truck: 'reach-1', at: asOf, by: 'Operator one', result: 'fail' }] },
    context: { asOf },
  },
];

/** Every answer to those lifts. */
export const everyAnswer = () => ASKS.map((ask) => answerTo(ask));

/** Every step of them. */
export const everyStep = (): Step[] => everyAnswer().flatMap(({ steps }) => [...steps]);
