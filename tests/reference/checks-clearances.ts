import type { ClearanceClass } from '../../lib/model/policy.ts';
import { makeBay, makeLevel, makeLoad, makeRun } from '../site-builder.ts';
import { askStep, needOf } from './ask-step.ts';
import type { LimitCheck, ReferenceCheck } from './reference-check.ts';

const names = (count: number) => Array.from({ length: count }, (_, at) => `a1-1-${at + 1}`);
const FRAMES = [
  { id: 'a-f1', typeId: 'f90', condition: 'sound' as const },
  { id: 'a-f2', typeId: 'f90', condition: 'sound' as const },
];

/** One bay: floor, a beam level at `beamTopMm` with `count` places side by side, and a beam far above it. */
const runOf = (count: number, beamTopMm: number, clearWidthMm = 2700) =>
  makeRun({
    frames: FRAMES,
    bays: [
      makeBay('a1', {
        clearWidthMm,
        levels: [
          makeLevel('a1', 0),
          makeLevel('a1', 1, { beamTopMm, locations: names(count) }),
          makeLevel('a1', 2, { beamTopMm: beamTopMm + 3000 }),
        ],
      }),
    ],
  });

const yMm = (clearanceClass: ClearanceClass, beamTopMm: number, heightMm = 1000) =>
  needOf('opening-height', {
    run: runOf(1, beamTopMm),
    load: makeLoad({ heightMm }),
    policy: { clearanceClass, placingClearanceMm: 0 },
  }) - heightMm;

const x3Mm = (clearanceClass: ClearanceClass, beamTopMm: number) =>
  (needOf('opening-width', { run: runOf(1, beamTopMm), policy: { clearanceClass } }) - 800) / 2;

const x4Mm = (clearanceClass: ClearanceClass, beamTopMm: number) =>
  needOf('opening-width', { run: runOf(2, beamTopMm), policy: { clearanceClass } }) -
  2 * 800 -
  2 * x3Mm(clearanceClass, beamTopMm);

const EN = 'EN 15620:2008, clearances by beam height';

/** X3 and X4, then Y3, by class and highest beam of the row. */
const EN_TABLE: readonly { clearanceClass: ClearanceClass; upToMm: number; x: number; y: number }[] = [
  { clearanceClass: '400', upToMm: 3000, x: 75, y: 75 },
  { clearanceClass: '400', upToMm: 6000, x: 75, y: 100 },
  { clearanceClass: '400', upToMm: 9000, x: 75, y: 125 },
  { clearanceClass: '400', upToMm: 13000, x: 100, y: 150 },
  { clearanceClass: '300B', upToMm: 3000, x: 75, y: 75 },
  { clearanceClass: '300B', upToMm: 6000, x: 75, y: 100 },
  { clearanceClass: '300B', upToMm: 9000, x: 75, y: 125 },
  { clearanceClass: '300B', upToMm: 13000, x: 100, y: 150 },
  { clearanceClass: '300A', upToMm: 3000, x: 75, y: 75 },
  { clearanceClass: '300A', upToMm: 6000, x: 75, y: 75 },
  { clearanceClass: '300A', upToMm: 9000, x: 75, y: 75 },
  { clearanceClass: '300A', upToMm: 13000, x: 100, y: 100 },
];

const BAYS: readonly {
  count: number;
  widthMm: number;
  clearanceClass: ClearanceClass;
  published: number;
  source: string;
  confidence: ReferenceCheck['confidence'];
}[] = [
  {
    count: 2,
    widthMm: 1200,
    clearanceClass: '400',
    published: 2625,
    source: 'SEMA advice: 75 mm everywhere',
    confidence: 'seen',
  },
  {
    count: 3,
    widthMm: 800,
    clearanceClass: '400',
    published: 2700,
    source: 'SEMA advice: 75 mm everywhere',
    confidence: 'seen',
  },
  {
    count: 2,
    widthMm: 1000,
    clearanceClass: '400',
    published: 2225,
    source: 'n b + 2 X3 + (n - 1) X4',
    confidence: 'derived',
  },
  {
    count: 2,
    widthMm: 1165,
    clearanceClass: 'AS4084',
    published: 2580,
    source: 'AS 4084:2012: 75 to the upright, 100 between loads',
    confidence: 'secondary source',
  },
];

export const CLEARANCES: readonly ReferenceCheck[] = [
  ...EN_TABLE.flatMap(({ clearanceClass, upToMm, x, y }): ReferenceCheck[] => {
    const shared = {
      inputs: `class ${clearanceClass}, beam at ${upToMm} mm`,
      unit: 'mm',
      tolerance: 0,
      source: EN,
      confidence: 'from memory' as const,
    };
    return [
      {
        ...shared,
        id: `en-x3-${clearanceClass}-${upToMm}`,
        quantity: 'X3, load to upright',
        ours: () => x3Mm(clearanceClass, upToMm),
        published: x,
      },
      {
        ...shared,
        id: `en-x4-${clearanceClass}-${upToMm}`,
        quantity: 'X4, load to load',
        ours: () => x4Mm(clearanceClass, upToMm),
        published: x,
      },
      {
        ...shared,
        id: `en-y3-${clearanceClass}-${upToMm}`,
        quantity: 'Y3, load to the beam above',
        ours: () => yMm(clearanceClass, upToMm),
        published: y,
      },
    ];
  }),
  ...BAYS.map(
    ({ count, widthMm, clearanceClass, published, source, confidence }): ReferenceCheck => ({
      id: `bay-width-${count}x${widthMm}`,
      quantity: 'Clear bay width needed',
      inputs: `${count} loads ${widthMm} mm wide, ${clearanceClass === 'AS4084' ? 'AS 4084' : `class ${clearanceClass}`}`,
      unit: 'mm',
      ours: () =>
        needOf('opening-width', {
          run: runOf(count, 2000),
          load: makeLoad({ widthMm }),
          policy: { clearanceClass },
        }),
      published,
      tolerance: 0,
      source,
      confidence,
    }),
  ),
  {
    id: 'as4084-x3',
    quantity: 'X3, load to upright',
    inputs: 'AS 4084, beam at 3000 mm',
    unit: 'mm',
    ours: () => x3Mm('AS4084', 3000),
    published: 75,
    tolerance: 0,
    source: 'AS 4084:2012',
    confidence: 'secondary source',
  },
  {
    id: 'as4084-x4',
    quantity: 'X4, load to load',
    inputs: 'AS 4084, beam at 3000 mm',
    unit: 'mm',
    ours: () => x4Mm('AS4084', 3000),
    published: 100,
    tolerance: 0,
    source: 'AS 4084:2012',
    confidence: 'secondary source',
  },
  {
    id: 'as4084-y-5900',
    quantity: 'Y, load to the beam above',
    inputs: 'AS 4084, top of load at 5.9 m, operator on the ground',
    unit: 'mm',
    ours: () => yMm('AS4084', 4900),
    published: 100,
    tolerance: 0,
    source: 'AS 4084:2012',
    confidence: 'secondary source',
  },
  {
    id: 'as4084-y-6000',
    quantity: 'Y, load to the beam above',
    inputs: 'AS 4084, top of load at 6.0 m, operator on the ground',
    unit: 'mm',
    ours: () => yMm('AS4084', 5000),
    published: 125,
    tolerance: 0,
    source: 'AS 4084:2012',
    confidence: 'secondary source',
  },
];

const enStep = (upToMm: number, expected: LimitCheck['expected']): LimitCheck => ({
  id: `en-y3-step-${upToMm}`,
  quantity: `Y3 of class 400 around the row that ends at ${upToMm} mm`,
  unit: 'mm',
  limit: upToMm,
  apart: 1,
  answerAt: (beamTopMm) => `${yMm('400', beamTopMm)} mm`,
  expected,
  source: EN,
  confidence: 'from memory',
});

export const CLEARANCE_LIMITS: readonly LimitCheck[] = [
  enStep(3000, ['75 mm', '75 mm', '100 mm']),
  enStep(6000, ['100 mm', '100 mm', '125 mm']),
  enStep(9000, ['125 mm', '125 mm', '150 mm']),
  enStep(13000, ['150 mm', '150 mm', '150 mm']),
  {
    id: 'as4084-y-step',
    quantity: 'Y of AS 4084 by the top of the load',
    unit: 'mm',
    limit: 6000,
    apart: 1,
    answerAt: (topMm) => `${yMm('AS4084', topMm - 1000)} mm`,
    expected: ['100 mm', '125 mm', '125 mm'],
    source: 'AS 4084:2012',
    confidence: 'secondary source',
  },
  {
    id: 'bay-width-limit',
    quantity: 'Clear bay for three loads 800 mm wide, class 400',
    unit: 'mm',
    limit: 2700,
    apart: 1,
    answerAt: (clearWidthMm) => askStep('opening-width', { run: runOf(3, 2000, clearWidthMm) }).outcome,
    expected: ['fail', 'pass', 'pass'],
    source: 'SEMA advice: 75 mm everywhere',
    confidence: 'seen',
  },
  {
    id: 'opening-height-limit',
    quantity: 'Load height in an opening of 2880 mm, beam at 5000 mm, class 400, nothing but Y',
    unit: 'mm',
    limit: 2780,
    apart: 1,
    answerAt: (heightMm) =>
      askStep('opening-height', {
        run: runOf(1, 5000),
        load: makeLoad({ heightMm }),
        policy: { placingClearanceMm: 0 },
      }).outcome,
    expected: ['pass', 'pass', 'fail'],
    source: EN,
    confidence: 'from memory',
  },
];
