import { frequencyMultiplier } from '../../lib/hand-pick/frequency-multiplier.ts';
import {
  asymmetryMultiplier,
  couplingMultiplier,
  distanceMultiplier,
  horizontalMultiplier,
  verticalMultiplier,
} from '../../lib/hand-pick/multipliers.ts';
import type { Confidence, LimitCheck, ReferenceCheck } from './reference-check.ts';

/** Rounded to two places in print. */
const PRINTED = 0.005;
const TABLE = (name: string) => `NIOSH 94-110, ${name}`;

/** The two forms of the equation are one when 10 in stand for 25 cm, as the manual pairs them. */
const PAIRED_MM_PER_INCH = 25;

const HM_CM: readonly (readonly [cm: number, printed: number])[] = [
  [25, 1],
  [28, 0.89],
  [30, 0.83],
  [32, 0.78],
  [34, 0.74],
  [36, 0.69],
  [38, 0.66],
  [40, 0.63],
  [42, 0.6],
  [44, 0.57],
  [46, 0.54],
  [48, 0.52],
  [50, 0.5],
  [52, 0.48],
  [54, 0.46],
  [56, 0.45],
  [58, 0.43],
  [60, 0.42],
  [63, 0.4],
  [64, 0],
];
const HM_IN: readonly (readonly [inches: number, printed: number])[] = [
  [10, 1],
  [11, 0.91],
  [12, 0.83],
  [13, 0.77],
  [14, 0.71],
  [15, 0.67],
  [16, 0.63],
  [17, 0.59],
  [18, 0.56],
  [19, 0.53],
  [20, 0.5],
  [21, 0.48],
  [22, 0.46],
  [23, 0.44],
  [24, 0.42],
  [25, 0.4],
  [26, 0],
];
const AM: readonly (readonly [deg: number, printed: number])[] = [
  [0, 1],
  [15, 0.95],
  [30, 0.9],
  [45, 0.86],
  [60, 0.81],
  [75, 0.76],
  [90, 0.71],
  [105, 0.66],
  [120, 0.62],
  [135, 0.57],
  [136, 0],
];
const VM: readonly (readonly [cm: number, printed: number])[] = [
  [0, 0.78],
  [75, 1],
  [175, 0.7],
  [176, 0],
];

/** Table 5 as printed: lifts a minute, then up to 1, 2 and 8 hours, hands below and from 75 cm. */
const FM: readonly (readonly number[])[] = [
  [0.2, 1, 1, 0.95, 0.95, 0.85, 0.85],
  [0.5, 0.97, 0.97, 0.92, 0.92, 0.81, 0.81],
  [1, 0.94, 0.94, 0.88, 0.88, 0.75, 0.75],
  [2, 0.91, 0.91, 0.84, 0.84, 0.65, 0.65],
  [3, 0.88, 0.88, 0.79, 0.79, 0.55, 0.55],
  [4, 0.84, 0.84, 0.72, 0.72, 0.45, 0.45],
  [5, 0.8, 0.8, 0.6, 0.6, 0.35, 0.35],
  [6, 0.75, 0.75, 0.5, 0.5, 0.27, 0.27],
  [7, 0.7, 0.7, 0.42, 0.42, 0.22, 0.22],
  [8, 0.6, 0.6, 0.35, 0.35, 0.18, 0.18],
  [9, 0.52, 0.52, 0.3, 0.3, 0, 0.15],
  [10, 0.45, 0.45, 0.26, 0.26, 0, 0.13],
  [11, 0.41, 0.41, 0, 0.23, 0, 0],
  [12, 0.37, 0.37, 0, 0.21, 0, 0],
  [13, 0, 0.34, 0, 0, 0, 0],
  [14, 0, 0.31, 0, 0, 0, 0],
  [15, 0, 0.28, 0, 0, 0, 0],
  [16, 0, 0, 0, 0, 0, 0],
];
const FM_COLUMNS = [
  { durationHours: 1, handHeightMm: 749 },
  { durationHours: 1, handHeightMm: 750 },
  { durationHours: 2, handHeightMm: 749 },
  { durationHours: 2, handHeightMm: 750 },
  { durationHours: 8, handHeightMm: 749 },
  { durationHours: 8, handHeightMm: 750 },
];
/** The cells of the frequency table that were seen in print; the rest is from memory. */
const FM_SEEN = new Map<string, Confidence>([
  ['3-1-749', 'secondary source'],
  ['10-8-750', 'seen'],
]);

const CM = [
  ['good', 749, 1, 'secondary source'],
  ['good', 750, 1, 'secondary source'],
  ['fair', 749, 0.95, 'secondary source'],
  ['fair', 750, 1, 'secondary source'],
  ['poor', 749, 0.9, 'seen'],
  ['poor', 750, 0.9, 'seen'],
] as const;

export const LIFTING_TABLES: readonly ReferenceCheck[] = [
  ...HM_CM.map(
    ([cm, published]): ReferenceCheck => ({
      id: `hm-${cm}-cm`,
      quantity: 'HM',
      inputs: `H ${cm} cm`,
      unit: '',
      ours: () => horizontalMultiplier(cm * 10),
      published,
      tolerance: PRINTED,
      source: TABLE('table 1'),
      confidence: 'seen',
    }),
  ),
  ...HM_IN.map(
    ([inches, published]): ReferenceCheck => ({
      id: `hm-${inches}-in`,
      quantity: 'HM',
      inputs: `H ${inches} in`,
      unit: '',
      ours: () => horizontalMultiplier(inches * PAIRED_MM_PER_INCH),
      published,
      tolerance: 0.006,
      source: TABLE('table 1, US units'),
      confidence: 'seen',
      note: '10 in for 25 cm, as the manual pairs them',
    }),
  ),
  ...VM.map(
    ([cm, published]): ReferenceCheck => ({
      id: `vm-${cm}-cm`,
      quantity: 'VM',
      inputs: `V ${cm} cm`,
      unit: '',
      ours: () => verticalMultiplier(cm * 10),
      published,
      tolerance: PRINTED,
      source: TABLE('table 2'),
      confidence: 'seen',
    }),
  ),
  {
    id: 'vm-floor',
    quantity: 'VM',
    inputs: 'V 0 cm, by the formula',
    unit: '',
    ours: () => verticalMultiplier(0),
    published: 0.775,
    tolerance: 0,
    source: TABLE('1 - 0.003 |V - 75|'),
    confidence: 'seen',
  },
  {
    id: 'dm-25',
    quantity: 'DM',
    inputs: 'D 25 cm',
    unit: '',
    ours: () => distanceMultiplier(250),
    published: 1,
    tolerance: 0,
    source: TABLE('table 3'),
    confidence: 'seen',
  },
  {
    id: 'dm-beyond',
    quantity: 'DM',
    inputs: 'D 176 cm',
    unit: '',
    ours: () => distanceMultiplier(1760),
    published: 0,
    tolerance: 0,
    source: TABLE('table 3'),
    confidence: 'from memory',
  },
  ...AM.map(
    ([deg, published]): ReferenceCheck => ({
      id: `am-${deg}`,
      quantity: 'AM',
      inputs: `A ${deg} deg`,
      unit: '',
      ours: () => asymmetryMultiplier(deg),
      published,
      tolerance: PRINTED,
      source: TABLE('table 4'),
      confidence: 'seen',
    }),
  ),
  ...FM.flatMap(([liftsPerMinute = Number.NaN, ...row]) =>
    row.map((published, column): ReferenceCheck => {
      const { durationHours, handHeightMm } = FM_COLUMNS[column]!;
      return {
        id: `fm-${liftsPerMinute}-${durationHours}-${handHeightMm}`,
        quantity: 'FM',
        inputs: `${liftsPerMinute} a minute, up to ${durationHours} h, V ${handHeightMm < 750 ? '<' : '>='} 75 cm`,
        unit: '',
        ours: () => frequencyMultiplier({ liftsPerMinute, durationHours, handHeightMm }),
        published,
        tolerance: 0,
        source: TABLE('table 5'),
        confidence: FM_SEEN.get(`${liftsPerMinute}-${durationHours}-${handHeightMm}`) ?? 'from memory',
      };
    }),
  ),
  ...CM.map(
    ([coupling, handHeightMm, published, confidence]): ReferenceCheck => ({
      id: `cm-${coupling}-${handHeightMm}`,
      quantity: 'CM',
      inputs: `${coupling}, V ${handHeightMm < 750 ? '<' : '>='} 75 cm`,
      unit: '',
      ours: () => couplingMultiplier(coupling, handHeightMm),
      published,
      tolerance: 0,
      source: TABLE('table 7'),
      confidence,
    }),
  ),
];

const zero = (value: number) => (value === 0 ? 'nothing' : 'some');

export const LIFTING_TABLE_LIMITS: readonly LimitCheck[] = [
  {
    id: 'hm-bound',
    quantity: 'Hands ahead of the ankles',
    unit: 'mm',
    limit: 630,
    apart: 1,
    answerAt: (mm) => zero(horizontalMultiplier(mm)),
    expected: ['some', 'some', 'nothing'],
    source: TABLE('H up to 63 cm'),
    confidence: 'seen',
  },
  {
    id: 'hm-free',
    quantity: 'Hands ahead of the ankles',
    unit: 'mm',
    limit: 250,
    apart: 1,
    answerAt: (mm) => (horizontalMultiplier(mm) < 1 ? 'less' : 'all'),
    expected: ['all', 'all', 'less'],
    source: TABLE('H from 25 cm'),
    confidence: 'seen',
  },
  {
    id: 'vm-bound',
    quantity: 'Hands above the floor',
    unit: 'mm',
    limit: 1750,
    apart: 1,
    answerAt: (mm) => zero(verticalMultiplier(mm)),
    expected: ['some', 'some', 'nothing'],
    source: TABLE('V up to 175 cm'),
    confidence: 'seen',
  },
  {
    id: 'dm-bound',
    quantity: 'Travel of the hands',
    unit: 'mm',
    limit: 1750,
    apart: 1,
    answerAt: (mm) => zero(distanceMultiplier(mm)),
    expected: ['some', 'some', 'nothing'],
    source: TABLE('D up to 175 cm'),
    confidence: 'from memory',
  },
  {
    id: 'dm-free',
    quantity: 'Travel of the hands',
    unit: 'mm',
    limit: 250,
    apart: 1,
    answerAt: (mm) => (distanceMultiplier(mm) < 1 ? 'less' : 'all'),
    expected: ['all', 'all', 'less'],
    source: TABLE('D from 25 cm'),
    confidence: 'seen',
  },
  {
    id: 'am-bound',
    quantity: 'Twist of the trunk',
    unit: 'deg',
    limit: 135,
    apart: 1,
    answerAt: (deg) => zero(asymmetryMultiplier(deg)),
    expected: ['some', 'some', 'nothing'],
    source: TABLE('A up to 135 deg'),
    confidence: 'seen',
  },
  {
    id: 'fm-bound',
    quantity: 'Lifts a minute, up to 1 h, hands from 75 cm',
    unit: 'a minute',
    limit: 15,
    apart: 0.1,
    answerAt: (liftsPerMinute) =>
      zero(frequencyMultiplier({ liftsPerMinute, durationHours: 1, handHeightMm: 750 })),
    expected: ['some', 'some', 'nothing'],
    source: TABLE('table 5'),
    confidence: 'from memory',
  },
  {
    id: 'fm-first-row',
    quantity: 'Lifts a minute, first row, up to 8 h',
    unit: 'a minute',
    limit: 0.2,
    apart: 0.1,
    answerAt: (liftsPerMinute) =>
      String(frequencyMultiplier({ liftsPerMinute, durationHours: 8, handHeightMm: 0 })),
    expected: ['0.85', '0.85', '0.81'],
    source: TABLE('table 5: below 0.2 the first row, between rows the next higher'),
    confidence: 'from memory',
  },
  {
    id: 'fm-short',
    quantity: 'Hours at one lift a minute',
    unit: 'h',
    limit: 1,
    apart: 0.1,
    answerAt: (durationHours) =>
      String(frequencyMultiplier({ liftsPerMinute: 1, durationHours, handHeightMm: 0 })),
    expected: ['0.94', '0.94', '0.88'],
    source: TABLE('table 5'),
    confidence: 'from memory',
  },
  {
    id: 'fm-moderate',
    quantity: 'Hours at one lift a minute',
    unit: 'h',
    limit: 2,
    apart: 0.1,
    answerAt: (durationHours) =>
      String(frequencyMultiplier({ liftsPerMinute: 1, durationHours, handHeightMm: 0 })),
    expected: ['0.88', '0.88', '0.75'],
    source: TABLE('table 5'),
    confidence: 'from memory',
  },
  {
    id: 'cm-knuckle',
    quantity: 'Hands above the floor, fair hold',
    unit: 'mm',
    limit: 750,
    apart: 1,
    answerAt: (mm) => String(couplingMultiplier('fair', mm)),
    expected: ['0.95', '1', '1'],
    source: TABLE('table 7'),
    confidence: 'secondary source',
  },
];
