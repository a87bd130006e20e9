import { inchesToMm } from '../../lib/units/conversions.ts';
import { makeBay, makeCounterbalance, makeLevel, makeLoad, makeRun, makeTruck } from '../site-builder.ts';
import { askStep, needOf } from './ask-step.ts';
import type { LimitCheck, ReferenceCheck } from './reference-check.ts';

/** One bay with a floor and one beam level at this height, one location on it. */
const runAt = (beamTopMm: number) =>
  makeRun({
    frames: [
      { id: 'a-f1', typeId: 'f90', condition: 'sound' },
      { id: 'a-f2', typeId: 'f90', condition: 'sound' },
    ],
    bays: [makeBay('a1', { levels: [makeLevel('a1', 0), makeLevel('a1', 1, { beamTopMm })] })],
  });

const VDI = 'VDI 2198 / FEM 4.005 stacking aisle';

type AisleRow = {
  id: string;
  truck: string;
  kind: 'counterbalance' | 'reach' | 'stacker';
  wa: number;
  x: number;
  b13: number;
  l6: number;
  b12: number;
  published: number;
};

const AISLES: readonly AisleRow[] = [
  {
    id: 'four-wheel',
    truck: 'four wheels, b12 <= 2 b13',
    kind: 'counterbalance',
    wa: 2200,
    x: 465,
    b13: 600,
    l6: 1200,
    b12: 800,
    published: 4065,
  },
  {
    id: 'four-wheel-at-2b13',
    truck: 'four wheels, b12 = 2 b13',
    kind: 'counterbalance',
    wa: 2200,
    x: 465,
    b13: 600,
    l6: 1000,
    b12: 1200,
    published: 3865,
  },
  {
    id: 'four-wheel-wide',
    truck: 'four wheels, b12 > 2 b13',
    kind: 'counterbalance',
    wa: 2200,
    x: 465,
    b13: 500,
    l6: 1000,
    b12: 1200,
    published: 3868.4,
  },
  {
    id: 'offset-unknown',
    truck: 'four wheels, b13 taken as 0 (safe form)',
    kind: 'counterbalance',
    wa: 2200,
    x: 465,
    b13: 0,
    l6: 1000,
    b12: 1200,
    published: 3983.1,
  },
  {
    id: 'three-wheel',
    truck: 'three wheels',
    kind: 'counterbalance',
    wa: 1475,
    x: 355,
    b13: 0,
    l6: 1200,
    b12: 800,
    published: 3280.6,
  },
  {
    id: 'three-wheel-wide',
    truck: 'three wheels',
    kind: 'counterbalance',
    wa: 1475,
    x: 355,
    b13: 0,
    l6: 800,
    b12: 1200,
    published: 2976.5,
  },
  {
    id: 'reach',
    truck: 'reach truck',
    kind: 'reach',
    wa: 1650,
    x: 350,
    b13: 0,
    l6: 1200,
    b12: 800,
    published: 2789.4,
  },
  {
    id: 'reach-wide',
    truck: 'reach truck',
    kind: 'reach',
    wa: 1650,
    x: 350,
    b13: 0,
    l6: 800,
    b12: 1200,
    published: 2600,
  },
  {
    id: 'stacker',
    truck: 'stacker',
    kind: 'stacker',
    wa: 1500,
    x: 700,
    b13: 0,
    l6: 1200,
    b12: 800,
    published: 2340.3,
  },
];

const liftAsked = (maxLiftMm: number) => ({ truck: makeTruck({ maxLiftMm }), run: runAt(5400) });

const atTop = { run: runAt(6000), load: makeLoad({ heightMm: 1000 }) };
const STANDARD_SPRAY_MM = Math.round(inchesToMm(18));
const STORAGE_SPRAY_MM = Math.round(inchesToMm(36));

export const REACH_AND_AISLE: readonly ReferenceCheck[] = [
  ...AISLES.map(
    (row): ReferenceCheck => ({
      id: `aisle-${row.id}`,
      quantity: 'Stacking aisle',
      inputs: `${row.truck}: Wa ${row.wa}, x ${row.x}, b13 ${row.b13}, l6 ${row.l6}, b12 ${row.b12}, a 200`,
      unit: 'mm',
      ours: () =>
        needOf('aisle-turn', {
          truck: makeCounterbalance({
            kind: row.kind,
            turning: { outsideRadiusMm: row.wa, loadDistanceMm: row.x, insideOffsetMm: row.b13 },
          }),
          load: makeLoad({ depthMm: row.l6, widthMm: row.b12 }),
        }),
      published: row.published,
      tolerance: 0.05,
      source: VDI,
      confidence: 'derived',
      note: 'formula from memory; no published worked example was found',
    }),
  ),
  {
    id: 'lift-needed',
    quantity: 'Fork height needed',
    inputs: 'beam top 5400, entry 100, placing clearance 150',
    unit: 'mm',
    ours: () => needOf('lift-height', liftAsked(6000)),
    published: 5650,
    tolerance: 0,
    source: 'beam + entry + clearance; 250 mm above the beam is the planning value',
    confidence: 'common practice',
  },
  {
    id: 'sprinkler-standard-spray',
    quantity: 'Clearance under standard spray sprinklers',
    inputs: 'top of load to deflector, policy 457',
    unit: 'mm',
    ours: () =>
      needOf('sprinkler-clearance', { ...atTop, policy: { sprinklerClearanceMm: STANDARD_SPRAY_MM } }) - 7000,
    published: 457,
    tolerance: 0,
    source: 'NFPA 13: 18 in',
    confidence: 'seen',
  },
  {
    id: 'sprinkler-storage',
    quantity: 'Clearance under ESFR and large-drop sprinklers',
    inputs: 'top of load to deflector, as the program starts',
    unit: 'mm',
    ours: () => needOf('sprinkler-clearance', atTop) - 7000,
    published: 914,
    tolerance: 0,
    source: 'NFPA 13: 36 in',
    confidence: 'secondary source',
  },
];

export const REACH_AND_AISLE_LIMITS: readonly LimitCheck[] = [
  {
    id: 'lift-limit',
    quantity: "Truck's greatest lift where 5650 mm is needed",
    unit: 'mm',
    limit: 5650,
    apart: 50,
    answerAt: (maxLiftMm) => askStep('lift-height', liftAsked(maxLiftMm)).outcome,
    expected: ['fail', 'pass', 'pass'],
    source: 'beam + entry + clearance',
    confidence: 'common practice',
  },
  {
    id: 'aisle-limit',
    quantity: 'Clear aisle where 4065 mm is needed',
    unit: 'mm',
    limit: 4065,
    apart: 1,
    answerAt: (clearWidthMm) => askStep('aisle-turn', { aisle: { clearWidthMm } }).outcome,
    expected: ['fail', 'pass', 'pass'],
    source: VDI,
    confidence: 'from memory',
  },
  {
    id: 'sprinkler-limit',
    quantity: 'Sprinkler height over a load whose top is at 7000 mm',
    unit: 'mm',
    limit: 7000 + STORAGE_SPRAY_MM,
    apart: 1,
    answerAt: (sprinklerMm) => askStep('sprinkler-clearance', { ...atTop, aisle: { sprinklerMm } }).outcome,
    expected: ['fail', 'pass', 'pass'],
    source: 'NFPA 13: 36 in = 914 mm',
    confidence: 'secondary source',
  },
];
