import type { Check, PlateRating, Truck } from '../model/truck.ts';

type Row = [liftHeightMm: number, loadCentreMm: number, capacityKg: number];

const POSITIONER = 'side-shifting fork positioner';

function rated(mast: PlateRating['mast'], attachment: string | null, rows: Row[]): PlateRating[] {
  return rows.map(([liftHeightMm, loadCentreMm, capacityKg]) => {
    return { mast, attachment, liftHeightMm, loadCentreMm, capacityKg };
  });
}

const NARROW_AISLE_PLATE = rated('vertical', null, [
  [5000, 600, 1500],
  [7000, 600, 1250],
  [9600, 600, 1050],
  [5000, 700, 1350],
  [9600, 700, 900],
]);

const DEEP_REACH_PLATE = rated('vertical', null, [
  [4000, 600, 2000],
  [5700, 600, 1600],
  [7000, 600, 1300],
  [8700, 600, 1050],
  [4000, 700, 1750],
  [5700, 700, 1400],
  [8700, 700, 900],
]);

const PLAIN: Omit<Truck, 'id' | 'name' | 'kind' | 'maxLiftMm' | 'plate' | 'turning' | 'forks'> = {
  power: 'electric',
  loweredMm: 2300,
  extendedMm: null,
  freeLiftMm: null,
  reachDepth: 1,
  statedAisleMm: null,
  fittedAttachment: null,
  hold: null,
  speeds: null,
};

/** The fleet: all five kinds, plates of several shapes, and the gaps in papers that a fleet has. */
export const DEMO_TRUCKS: readonly Truck[] = [
  {
    ...PLAIN,
    id: 'CB-1',
    name: 'Counterbalance 1, four wheels',
    kind: 'counterbalance',
    maxLiftMm: 4700,
    loweredMm: 2180,
    extendedMm: 5300,
    freeLiftMm: 150,
    turning: { outsideRadiusMm: 2000, loadDistanceMm: 420, insideOffsetMm: 650 },
    forks: { lengthMm: 1150, armCapacityKg: 1250, armLoadCentreMm: 500 },
    speeds: { travelMps: 4, liftMps: 0.4 },
    plate: {
      verticalLoadCentreMm: null,
      ratings: rated('vertical', null, [
        [3300, 500, 2500],
        [3300, 600, 2280],
        [3300, 700, 2090],
        [4700, 500, 2300],
        [4700, 600, 2100],
        [4700, 700, 1920],
      ]),
    },
  },
  {
    ...PLAIN,
    id: 'CB-2',
    name: 'Counterbalance 2, the stone truck',
    kind: 'counterbalance',
    power: 'lpg',
    maxLiftMm: 6000,
    loweredMm: 2500,
    extendedMm: 6900,
    freeLiftMm: 1600,
    turning: { outsideRadiusMm: 2400, loadDistanceMm: 480, insideOffsetMm: 700 },
    forks: { lengthMm: 1500, armCapacityKg: 1750, armLoadCentreMm: 600 },
    speeds: { travelMps: 5, liftMps: 0.5 },
    plate: {
      verticalLoadCentreMm: 900,
      ratings: [
        ...rated('vertical', null, [
          [3700, 500, 3500],
          [3700, 600, 3250],
          [3700, 800, 2750],
          [6000, 500, 2900],
          [6000, 600, 2700],
          [6000, 800, 2250],
        ]),
        ...rated('forward-tilt', null, [
          [3700, 500, 3100],
          [3700, 800, 2400],
          [6000, 500, 1900],
          [6000, 800, 1450],
        ]),
      ],
    },
  },
  {
    ...PLAIN,
    id: 'CB-3',
    name: 'Counterbalance 3, with fork positioner',
    kind: 'counterbalance',
    maxLiftMm: 6200,
    loweredMm: 2550,
    extendedMm: 6950,
    turning: { outsideRadiusMm: 2250, loadDistanceMm: 560, insideOffsetMm: 680 },
    forks: { lengthMm: 1150, armCapacityKg: 1600, armLoadCentreMm: 500 },
    fittedAttachment: POSITIONER,
    speeds: { travelMps: 4, liftMps: 0.35 },
    plate: {
      verticalLoadCentreMm: null,
      ratings: [
        ...rated('vertical', null, [
          [4500, 500, 3000],
          [6200, 500, 2500],
        ]),
        ...rated('vertical', POSITIONER, [
          [4500, 500, 2600],
          [4500, 700, 2200],
          [6200, 500, 2050],
          [6200, 700, 1700],
        ]),
      ],
    },
  },
  {
    ...PLAIN,
    id: 'CB-4',
    name: 'Counterbalance 4, yard truck',
    kind: 'counterbalance',
    power: 'diesel',
    maxLiftMm: 4000,
    loweredMm: 2250,
    extendedMm: 4900,
    turning: null,
    forks: { lengthMm: 1200, armCapacityKg: null, armLoadCentreMm: null },
    plate: { verticalLoadCentreMm: null, ratings: rated('vertical', null, [[4000, 600, 2900]]) },
  },
  {
    ...PLAIN,
    id: 'RT-1',
    name: 'Reach 1, high mast',
    kind: 'reach',
    maxLiftMm: 9500,
    loweredMm: 2700,
    extendedMm: 10_300,
    freeLiftMm: 2000,
    turning: { outsideRadiusMm: 1750, loadDistanceMm: 370, insideOffsetMm: 0 },
    forks: { lengthMm: 1150, armCapacityKg: 1100, armLoadCentreMm: 600 },
    speeds: { travelMps: 3, liftMps: 0.45 },
    plate: {
      verticalLoadCentreMm: null,
      ratings: rated('vertical', null, [
        [5100, 600, 2000],
        [6700, 600, 1550],
        [8300, 600, 1200],
        [9500, 600, 1000],
        [5100, 700, 1750],
        [6700, 700, 1350],
        [9500, 700, 850],
      ]),
    },
  },
  {
    ...PLAIN,
    id: 'RT-2',
    name: 'Reach 2, double deep',
    kind: 'reach',
    maxLiftMm: 8700,
    loweredMm: 2650,
    extendedMm: 9500,
    reachDepth: 2,
    turning: { outsideRadiusMm: 1800, loadDistanceMm: 380, insideOffsetMm: 0 },
    forks: { lengthMm: 1150, armCapacityKg: 1100, armLoadCentreMm: 600 },
    speeds: { travelMps: 2.8, liftMps: 0.4 },
    plate: { verticalLoadCentreMm: null, ratings: DEEP_REACH_PLATE },
  },
  {
    ...PLAIN,
    id: 'RT-3',
    name: 'Reach 3, plate ends at 6.3 m',
    kind: 'reach',
    maxLiftMm: 8500,
    loweredMm: null,
    turning: { outsideRadiusMm: 1700, loadDistanceMm: 350, insideOffsetMm: 0 },
    forks: { lengthMm: 1150, armCapacityKg: 900, armLoadCentreMm: 600 },
    plate: {
      verticalLoadCentreMm: null,
      ratings: rated('vertical', null, [
        [3000, 600, 1600],
        [5100, 600, 1500],
        [6300, 600, 1250],
      ]),
    },
  },
  {
    ...PLAIN,
    id: 'RT-4',
    name: 'Reach 4, double deep',
    kind: 'reach',
    maxLiftMm: 8700,
    loweredMm: 2650,
    extendedMm: 9500,
    reachDepth: 2,
    turning: { outsideRadiusMm: 1800, loadDistanceMm: 380, insideOffsetMm: 0 },
    forks: { lengthMm: 1150, armCapacityKg: 1100, armLoadCentreMm: 600 },
    plate: { verticalLoadCentreMm: null, ratings: DEEP_REACH_PLATE },
  },
  {
    ...PLAIN,
    id: 'NA-1',
    name: 'Narrow aisle 1',
    kind: 'narrow-aisle',
    maxLiftMm: 9600,
    loweredMm: 4200,
    extendedMm: 10_700,
    turning: null,
    statedAisleMm: 1780,
    forks: { lengthMm: 1200, armCapacityKg: 800, armLoadCentreMm: 600 },
    speeds: { travelMps: 2.5, liftMps: 0.4 },
    plate: { verticalLoadCentreMm: null, ratings: NARROW_AISLE_PLATE },
  },
  {
    ...PLAIN,
    id: 'NA-2',
    name: 'Narrow aisle 2',
    kind: 'narrow-aisle',
    maxLiftMm: 9600,
    loweredMm: 4200,
    extendedMm: 10_700,
    turning: null,
    statedAisleMm: 1780,
    forks: { lengthMm: 1200, armCapacityKg: 800, armLoadCentreMm: 600 },
    plate: { verticalLoadCentreMm: null, ratings: NARROW_AISLE_PLATE },
  },
  {
    ...PLAIN,
    id: 'NA-3',
    name: 'Narrow aisle 3, heavy',
    kind: 'narrow-aisle',
    maxLiftMm: 9800,
    loweredMm: 4300,
    extendedMm: 10_900,
    turning: null,
    statedAisleMm: 1850,
    forks: { lengthMm: 1200, armCapacityKg: 1000, armLoadCentreMm: 600 },
    hold: {
      since: '2026-09-11T13:20:00Z',
      reason: 'Lift chain elongation past its limit, new chain ordered',
    },
    plate: {
      verticalLoadCentreMm: null,
      ratings: rated('vertical', null, [
        [6000, 600, 1800],
        [9800, 600, 1450],
      ]),
    },
  },
  {
    ...PLAIN,
    id: 'SK-1',
    name: 'Stacker 1, straddle',
    kind: 'stacker',
    maxLiftMm: 5400,
    loweredMm: 2200,
    extendedMm: 5900,
    turning: { outsideRadiusMm: 1500, loadDistanceMm: 560, insideOffsetMm: 0 },
    forks: { lengthMm: 1150, armCapacityKg: 700, armLoadCentreMm: 600 },
    speeds: { travelMps: 1.6, liftMps: 0.2 },
    plate: {
      verticalLoadCentreMm: null,
      ratings: rated('vertical', null, [
        [2500, 600, 1400],
        [3900, 600, 1000],
        [5400, 600, 650],
      ]),
    },
  },
  {
    ...PLAIN,
    id: 'SK-2',
    name: 'Stacker 2, hand pumped',
    kind: 'stacker',
    power: 'manual',
    maxLiftMm: 1600,
    loweredMm: 1980,
    extendedMm: 2050,
    turning: { outsideRadiusMm: 1350, loadDistanceMm: 540, insideOffsetMm: 0 },
    forks: { lengthMm: 1150, armCapacityKg: null, armLoadCentreMm: null },
    plate: { verticalLoadCentreMm: null, ratings: rated('vertical', null, [[1600, 600, 1000]]) },
  },
  {
    ...PLAIN,
    id: 'OP-1',
    name: 'Order picker 1',
    kind: 'order-picker',
    maxLiftMm: 6000,
    loweredMm: 2400,
    extendedMm: 6800,
    turning: null,
    statedAisleMm: 1550,
    forks: { lengthMm: 1200, armCapacityKg: 600, armLoadCentreMm: 600 },
    plate: {
      verticalLoadCentreMm: null,
      ratings: rated('vertical', null, [
        [4000, 600, 1000],
        [6000, 600, 800],
      ]),
    },
  },
];

const FAILED_DEFECTS = ['Left mast hose weeping at the lower union', 'Horn does not sound'];

function check(truck: string, at: string, by: string, defects: string[] = []): Check {
  return { truck, at, by, result: defects.length === 0 ? 'pass' : 'fail', defects };
}

/** Walk-rounds of the last days. SK-2 has none, CB-4 failed its last, and OP-1's last one is of the day before. */
export const DEMO_CHECKS: readonly Check[] = [
  check('OP-1', '2026-09-13T05:50:00Z', 'J. Farrowick'),
  check('CB-4', '2026-09-13T06:10:00Z', 'H. Dunmallow'),
  check('RT-1', '2026-09-13T06:15:00Z', 'R. Quillman'),
  check('CB-1', '2026-09-14T05:35:00Z', 'H. Dunmallow'),
  check('CB-2', '2026-09-14T05:42:00Z', 'H. Dunmallow'),
  check('CB-3', '2026-09-14T05:48:00Z', 'P. Astebury'),
  check('CB-4', '2026-09-14T05:55:00Z', 'P. Astebury', FAILED_DEFECTS),
  check('RT-1', '2026-09-14T05:40:00Z', 'R. Quillman'),
  check('RT-2', '2026-09-14T05:46:00Z', 'R. Quillman'),
  check('RT-3', '2026-09-14T05:52:00Z', 'J. Farrowick'),
  check('RT-4', '2026-09-14T05:58:00Z', 'J. Farrowick'),
  check('NA-1', '2026-09-14T05:38:00Z', 'S. Ollerdine'),
  check('NA-2', '2026-09-14T05:45:00Z', 'S. Ollerdine'),
  check('NA-3', '2026-09-11T05:45:00Z', 'S. Ollerdine'),
  check('SK-1', '2026-09-14T06:02:00Z', 'B. Tanwater'),
];
