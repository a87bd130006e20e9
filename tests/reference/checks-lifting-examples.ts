import { compositeOf } from '../../lib/hand-pick/composite-index.ts';
import { averagedLiftsPerMinute, frequencyMultiplier } from '../../lib/hand-pick/frequency-multiplier.ts';
import {
  exceedsRecommended,
  type HandLiftTask,
  judgeHandLift,
  rankOf,
  weightLimitKg,
} from '../../lib/hand-pick/hand-lift.ts';
import { handPickAt } from '../../lib/hand-pick/pick-face.ts';
import { inchesToMm, kgToPounds, poundsToKg } from '../../lib/units/conversions.ts';
import { makeLevel, makeLoad } from '../site-builder.ts';
import type { Confidence, LimitCheck, ReferenceCheck } from './reference-check.ts';

/** H, V, D in cm; A in degrees; lifts a minute; hours; hold; L in kg. */
type Metric = {
  h: number;
  v: number;
  d: number;
  a?: number;
  f?: number;
  hours?: number;
  hold: HandLiftTask['coupling'];
  l?: number;
};
const lift = ({ h, v, d, a = 0, f = 0.2, hours = 1, hold, l = 1 }: Metric) =>
  judgeHandLift({
    massKg: l,
    horizontalMm: h * 10,
    handHeightMm: v * 10,
    travelMm: d * 10,
    asymmetryDeg: a,
    liftsPerMinute: f,
    durationHours: hours,
    coupling: hold,
  });
const words = ({ h, v, d, a = 0, f = 0.2, hours = 1, hold, l }: Metric) =>
  `${l === undefined ? '' : `L ${l} kg, `}H ${h}, V ${v}, D ${d} cm, A ${a}, ${f} a minute up to ${hours} h, ${hold}`;

const metric = (
  id: string,
  inputs: Metric,
  published: number,
  tolerance: number,
  source: string,
  confidence: Confidence,
  note?: string,
): ReferenceCheck => ({
  id,
  quantity: 'RWL',
  inputs: words(inputs),
  unit: 'kg',
  ours: () => lift(inputs).rwlKg,
  published,
  tolerance,
  source,
  confidence,
  ...(note === undefined ? {} : { note }),
});

const CCOHS = 'Canadian Centre for Occupational Health and Safety, worked calculation';
const product = (
  id: string,
  factors: readonly number[],
  published: number,
  tolerance: number,
  source: string,
  note?: string,
): ReferenceCheck => ({
  id,
  quantity: 'Product of printed multipliers',
  inputs: `23 x ${factors.join(' x ')}`,
  unit: 'kg',
  ours: () => weightLimitKg(factors),
  published,
  tolerance,
  source,
  confidence: 'seen',
  ...(note === undefined ? {} : { note }),
});

/** Examples of the manual, in inches and pounds, all at most 1 h; hands' travel D. */
type Manual = {
  id: string;
  task: string;
  l: number;
  h: number;
  v: number;
  d: number;
  a?: number;
  f?: number;
  hold: HandLiftTask['coupling'];
  rwl: number;
  li: number;
  printed: readonly number[];
  note?: string;
};
const MANUAL: readonly Manual[] = [
  {
    id: 'punch-press-origin',
    task: 'Loading punch press stock, origin',
    l: 44,
    h: 23,
    v: 15,
    d: 48,
    hold: 'fair',
    rwl: 16.3,
    li: 2.7,
    printed: [0.44, 0.89, 0.86, 1, 1, 0.95],
  },
  {
    id: 'punch-press-destination',
    task: 'Loading punch press stock, destination',
    l: 44,
    h: 23,
    v: 63,
    d: 48,
    hold: 'fair',
    rwl: 14.5,
    li: 3,
    printed: [0.44, 0.75, 0.86, 1, 1, 1],
  },
  {
    id: 'supply-rolls-origin',
    task: 'Loading supply rolls, origin',
    l: 35,
    h: 15,
    v: 27,
    d: 17,
    hold: 'poor',
    rwl: 28,
    li: 1.3,
    printed: [0.67, 0.98, 0.93, 1, 1, 0.9],
  },
  {
    id: 'supply-rolls-destination',
    task: 'Loading supply rolls, destination',
    l: 35,
    h: 20,
    v: 10,
    d: 17,
    hold: 'poor',
    rwl: 18.1,
    li: 1.9,
    printed: [0.5, 0.85, 0.93, 1, 1, 0.9],
  },
  {
    id: 'bags-origin',
    task: 'Loading bags into a hopper, origin',
    l: 40,
    h: 18,
    v: 15,
    d: 21,
    a: 45,
    hold: 'fair',
    rwl: 18.9,
    li: 2.1,
    printed: [0.56, 0.89, 0.91, 0.86, 1, 0.95],
  },
  {
    id: 'dishes-origin',
    task: 'Dish-machine unloading, origin',
    l: 20,
    h: 20,
    v: 44,
    d: 37,
    a: 30,
    f: 5,
    hold: 'good',
    rwl: 14.4,
    li: 1.4,
    printed: [0.5, 0.9, 0.87, 0.9, 0.8, 1],
  },
  {
    id: 'dishes-destination',
    task: 'Dish-machine unloading, destination',
    l: 20,
    h: 20,
    v: 7,
    d: 37,
    a: 30,
    f: 5,
    hold: 'good',
    rwl: 13.3,
    li: 1.5,
    printed: [0.5, 0.83, 0.87, 0.9, 0.8, 1],
  },
];
const manualLift = ({ l, h, v, d, a = 0, f = 0.2, hold }: Manual) =>
  judgeHandLift({
    massKg: poundsToKg(l),
    horizontalMm: inchesToMm(h),
    handHeightMm: inchesToMm(v),
    travelMm: inchesToMm(d),
    asymmetryDeg: a,
    liftsPerMinute: f,
    durationHours: 1,
    coupling: hold,
  });
const FORMS =
  'inches and pounds converted exactly; the metric form (23 kg, 25 cm) lies 2 % below the US form (51 lb, 10 in), and the manual rounds each multiplier to two places, up to 2.5 % together';
/** The two forms of the equation are one and the same when 10 in stand for 25 cm and 51 lb for 23 kg, as the manual pairs them. */
const PAIRED_MM_PER_INCH = 25;
const pairedLift = ({ l, h, v, d, a = 0, f = 0.2, hold }: Manual) =>
  judgeHandLift({
    massKg: (l * 23) / 51,
    horizontalMm: h * PAIRED_MM_PER_INCH,
    handHeightMm: v * PAIRED_MM_PER_INCH,
    travelMm: d * PAIRED_MM_PER_INCH,
    asymmetryDeg: a,
    liftsPerMinute: f,
    durationHours: 1,
    coupling: hold,
  });
const PAIRED =
  'US form of the equation (10 in for 25 cm, 51 lb for 23 kg); the manual rounds each multiplier to two places, up to 2.5 % together';

/** The manual's example of a job of three tasks. */
const THREE_TASKS = [
  { stli: 1.6, fili: 1.5, liftsPerMinute: 1 },
  { stli: 1.1, fili: 1, liftsPerMinute: 2 },
  { stli: 0.8, fili: 0.67, liftsPerMinute: 4 },
];
const threeTaskCli = () => {
  const composite = compositeOf(THREE_TASKS, (liftsPerMinute) =>
    frequencyMultiplier({ liftsPerMinute, durationHours: 1, handHeightMm: 750 }),
  );
  return composite.kind === 'index' ? composite.cli : composite.kind;
};

export const LIFTING_EXAMPLES: readonly ReferenceCheck[] = [
  product('product-1', [0.5, 1, 0.95], 10.9, 0.05, CCOHS),
  product('product-2', [0.8, 1, 0.95], 17.5, 0.05, CCOHS),
  product('product-3', [0.8, 0.8, 0.86, 0.9], 11.4, 0.05, `${CCOHS}, 2002`),
  product('product-4', [0.8, 1, 0.95, 0.9], 15.7, 0.05, `${CCOHS}, 2002`),
  product('product-5', [0.83, 0.93, 0.93, 0.9], 14.86, 0.01, `${CCOHS}, 2016`),
  product(
    'product-6',
    [0.83, 0.78, 0.85, 0.9],
    11.439,
    0.06,
    `${CCOHS}, 2016`,
    'the page prints 11.439; its own factors make 11.391',
  ),
  product('product-7', [0.93, 0.71, 0.13], 1.97, 0.01, CCOHS),
  metric(
    'ccohs-table',
    { h: 50, v: 75, d: 40, hold: 'fair' },
    10.9,
    0.2,
    CCOHS,
    'seen',
    'the page reads its tables in coarse steps (DM 0.95 for 0.9325)',
  ),
  metric(
    'ccohs-floor',
    { h: 30, v: 0, d: 115, hold: 'poor' },
    11.4,
    0.1,
    `${CCOHS}, 2002`,
    'seen',
    'coarse steps on the page',
  ),
  metric('ccohs-floor-2016', { h: 30, v: 0, d: 115, hold: 'poor' }, 11.439, 0.06, `${CCOHS}, 2016`, 'seen'),
  metric(
    'three-a-minute',
    { l: 12, h: 25, v: 55, d: 95, f: 3, hours: 0.75, hold: 'fair' },
    15.7,
    0.1,
    'published student example, arithmetic checked',
    'secondary source',
  ),
  {
    id: 'three-a-minute-li',
    quantity: 'LI',
    inputs: 'the same, L 12 kg',
    unit: '',
    ours: () => rankOf(lift({ l: 12, h: 25, v: 55, d: 95, f: 3, hours: 0.75, hold: 'fair' })),
    published: 0.76,
    tolerance: 0.01,
    source: 'published student example, arithmetic checked',
    confidence: 'secondary source',
  },
  {
    id: 'us-16-in',
    quantity: 'RWL',
    inputs: 'H 20 in, V 6 in, D 16 in, A 0, FM 1, fair',
    unit: 'lb',
    ours: () =>
      kgToPounds(
        manualLift({ id: '', task: '', l: 1, h: 20, v: 6, d: 16, hold: 'fair', rwl: 0, li: 0, printed: [] })
          .rwlKg,
      ),
    published: 18.4,
    tolerance: 0.05 * 18.4,
    source: 'published student example',
    confidence: 'secondary source',
    note: FORMS,
  },
  ...MANUAL.flatMap((example): ReferenceCheck[] => {
    const { id, task, l, h, v, d, a = 0, f, hold, rwl, li, printed } = example;
    const inputs = `${task}: L ${l} lb, H ${h}, V ${v}, D ${d} in, A ${a}, ${f ?? '< 0.2'} a minute up to 1 h, ${hold}`;
    const shared = { source: 'NIOSH 94-110, chapter 3', confidence: 'from memory' as const };
    return [
      {
        ...shared,
        id: `${id}-rwl`,
        quantity: 'RWL',
        inputs,
        unit: 'lb',
        ours: () => kgToPounds(manualLift(example).rwlKg),
        published: rwl,
        tolerance: 0.05 * rwl,
        note: FORMS,
      },
      {
        ...shared,
        id: `${id}-li`,
        quantity: 'LI',
        inputs,
        unit: '',
        ours: () => rankOf(manualLift(example)),
        published: li,
        tolerance: 0.05 + 0.05 * li,
        note: FORMS,
      },
      {
        ...shared,
        id: `${id}-rwl-us-form`,
        quantity: 'RWL, US form',
        inputs,
        unit: 'lb',
        ours: () => (pairedLift(example).rwlKg * 51) / 23,
        published: rwl,
        tolerance: 0.025 * rwl,
        note: PAIRED,
      },
      {
        ...shared,
        id: `${id}-li-us-form`,
        quantity: 'LI, US form',
        inputs,
        unit: '',
        ours: () => rankOf(pairedLift(example)),
        published: li,
        tolerance: 0.1,
        note: PAIRED,
      },
      {
        ...shared,
        id: `${id}-product`,
        quantity: 'Product of printed multipliers',
        inputs: `51 x ${printed.join(' x ')}`,
        unit: 'lb',
        ours: () => (weightLimitKg(printed) * 51) / 23,
        published: rwl,
        tolerance: 0.1,
        note: 'the load constant in pounds',
      },
    ];
  }),
  {
    id: 'three-task-cli',
    quantity: 'CLI',
    inputs: 'STLI 1.6, 1.1, 0.8; FILI 1.5, 1.0, 0.67; 1, 2, 4 a minute up to 1 h',
    unit: '',
    ours: threeTaskCli,
    published: 1.9,
    tolerance: 0.05,
    source: 'NIOSH 94-110, 2.4.5',
    confidence: 'from memory',
  },
  {
    id: 'averaged-frequency',
    quantity: 'Lifts a minute over 15 minutes',
    inputs: '10 a minute for 8 of 15 minutes',
    unit: 'a minute',
    ours: () => averagedLiftsPerMinute({ liftsPerMinute: 10, minutesIn15: 8 }),
    published: 5.33,
    tolerance: 0.005,
    source: 'NIOSH 94-110, special frequency adjustment',
    confidence: 'from memory',
  },
  metric('formula-best', { h: 25, v: 75, d: 25, hold: 'good' }, 23, 0, 'the equation', 'derived'),
  metric(
    'formula-middle',
    { h: 40, v: 30, d: 70, a: 30, f: 1, hours: 8, hold: 'fair' },
    7.08,
    0.01,
    'the equation',
    'derived',
  ),
  metric(
    'formula-corner',
    { h: 63, v: 175, d: 100, hours: 8, hold: 'poor' },
    4.23,
    0.01,
    'the equation',
    'derived',
  ),
  {
    id: 'pick-face-height',
    quantity: 'V at a pick face',
    inputs: 'beam top 1500 mm, grip 200 mm above the beam',
    unit: 'mm',
    ours: () => {
      const handPick = {
        massKg: 8,
        horizontalMm: 400,
        gripHeightMm: 200,
        destinationHeightMm: 900,
        asymmetryDeg: 0,
        liftsPerMinute: 1,
        durationHours: 2,
        coupling: 'good' as const,
      };
      return handPickAt({ level: makeLevel('a1', 1) }, makeLoad({ handPick }))!.origin.task.handHeightMm;
    },
    published: 1700,
    tolerance: 0,
    source: 'NIOSH 94-110: V is measured from the floor the person stands on',
    confidence: 'seen',
  },
];

export const LIFTING_LIMITS: readonly LimitCheck[] = [
  {
    id: 'li-one',
    quantity: 'Mass of a case lifted in the best way there is',
    unit: 'kg',
    limit: 23,
    apart: 0.1,
    answerAt: (l) =>
      exceedsRecommended(lift({ l, h: 25, v: 75, d: 25, hold: 'good' })) ? 'above 1' : 'at most 1',
    expected: ['at most 1', 'at most 1', 'above 1'],
    source: 'NIOSH 94-110: a lifting index above 1 is more than recommended',
    confidence: 'seen',
  },
];
