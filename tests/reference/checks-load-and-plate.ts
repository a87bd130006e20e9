import { assessedMassKg, centreHeightMm, loadCentreMm } from '../../lib/model/load.ts';
import { DEFAULT_POLICY } from '../../lib/model/policy.ts';
import { inchesToMm, mmToInches } from '../../lib/units/conversions.ts';
import { makeCounterbalance, makeDrums, makeLoad, makeRun, makeSite } from '../site-builder.ts';
import { askStep, haveOf, needOf } from './ask-step.ts';
import type { LimitCheck, ReferenceCheck } from './reference-check.ts';

const pallet = makeSite().palletTypes[0]!;
const OSHA_CENTRE = '29 CFR 1910.178 App. A (a uniform load has its centre at half its length)';
const VERTICAL =
  'ISO 22915-1: the load centre distance is measured out from the fork face and up from the blade';

const withPlateHeight = makeCounterbalance({ plate: { verticalLoadCentreMm: 600, ratings: [] } });
const forkArms = (armCapacityKg: number, armLoadCentreMm: number) =>
  makeCounterbalance({ forks: { lengthMm: 1200, armCapacityKg, armLoadCentreMm } });

export const LOAD_AND_PLATE: readonly ReferenceCheck[] = [
  {
    id: 'drums-on-a-pallet',
    quantity: 'Assessed mass',
    inputs: 'four drums of 250 kg on a 60 kg hardwood pallet',
    unit: 'kg',
    ours: () => assessedMassKg(makeDrums(), pallet, DEFAULT_POLICY)!,
    published: 1060,
    tolerance: 0,
    source: 'arithmetic: 4 x 250 + 60',
    confidence: 'derived',
  },
  ...[
    { depthMm: 800, published: 400 },
    { depthMm: 1000, published: 500 },
    { depthMm: 1165, published: 582.5 },
    { depthMm: 1200, published: 600 },
  ].map(
    ({ depthMm, published }): ReferenceCheck => ({
      id: `load-centre-${depthMm}`,
      quantity: 'Load centre of a uniform load',
      inputs: `${depthMm} mm along the forks`,
      unit: 'mm',
      ours: () => loadCentreMm(makeLoad({ depthMm })),
      published,
      tolerance: 0,
      source: OSHA_CENTRE,
      confidence: 'seen',
    }),
  ),
  {
    id: 'load-centre-48-in',
    quantity: 'Load centre of a uniform load',
    inputs: '48 in along the forks',
    unit: 'in',
    ours: () => mmToInches(loadCentreMm(makeLoad({ depthMm: inchesToMm(48) }))),
    published: 24,
    tolerance: 0,
    source: '29 CFR 1910.178 App. A, A-5',
    confidence: 'seen',
  },
  {
    id: 'centre-height-of-the-rating-load',
    quantity: 'Centre of gravity above the forks',
    inputs: 'the rating load at 600 mm: a cube of 1200 mm',
    unit: 'mm',
    ours: () => centreHeightMm(makeLoad({ heightMm: 1200 })),
    published: 600,
    tolerance: 0,
    source: VERTICAL,
    confidence: 'secondary source',
  },
  {
    id: 'plate-states-600-up',
    quantity: 'Centre height that the plate is good for',
    inputs: 'plate rated 600 mm out and 600 mm up',
    unit: 'mm',
    ours: () => haveOf('centre-height', { truck: withPlateHeight }),
    published: 600,
    tolerance: 0,
    source: VERTICAL,
    confidence: 'seen',
  },
  {
    id: 'fork-arm-pair',
    quantity: 'What a pair of fork arms may carry',
    inputs: 'two arms of 1250 kg at 500 mm, load centre 600 mm',
    unit: 'kg',
    ours: () => 2 * haveOf('fork-arms', { truck: forkArms(1250, 500) }),
    published: 2083.3,
    tolerance: 0.05,
    source: 'ISO 2330 marking: mass per arm at a load centre, lowered in proportion',
    confidence: 'from memory',
  },
  {
    id: 'fork-arm-no-credit',
    quantity: 'What a pair of fork arms may carry',
    inputs: 'two arms of 1250 kg at 600 mm, load centre 400 mm: no credit for a shorter one',
    unit: 'kg',
    ours: () => 2 * haveOf('fork-arms', { truck: forkArms(1250, 600), load: makeLoad({ depthMm: 800 }) }),
    published: 2500,
    tolerance: 0,
    source: 'ISO 2330 marking; components, not stability, then limit',
    confidence: 'secondary source',
  },
  ...[
    { depthMm: 1000, threeQuarters: 750, twoThirds: 667 },
    { depthMm: 1165, threeQuarters: 874, twoThirds: 777 },
    { depthMm: 1200, threeQuarters: 900, twoThirds: 800 },
    { depthMm: 2400, threeQuarters: 1800, twoThirds: 1600 },
  ].flatMap(({ depthMm, threeQuarters, twoThirds }): ReferenceCheck[] => [
    {
      id: `fork-length-${depthMm}`,
      quantity: 'Fork length that supports a load',
      inputs: `load ${depthMm} mm deep, three quarters supported`,
      unit: 'mm',
      ours: () => needOf('fork-length', { load: makeLoad({ depthMm }) }),
      published: threeQuarters,
      tolerance: 0.5,
      source: 'AS 2359.2:2013 cl. 3.7(e)',
      confidence: 'secondary source',
    },
    {
      id: `fork-length-two-thirds-${depthMm}`,
      quantity: 'Fork length that supports a load',
      inputs: `load ${depthMm} mm deep, two thirds supported (a site's policy)`,
      unit: 'mm',
      ours: () =>
        needOf('fork-length', { load: makeLoad({ depthMm }), policy: { forkSupportFraction: 2 / 3 } }),
      published: twoThirds,
      tolerance: 0.5,
      source: 'training rule: two thirds of the load',
      confidence: 'common practice',
    },
  ]),
  {
    id: 'fork-length-48-in',
    quantity: 'Fork length that supports a load',
    inputs: 'load 48 in deep, three quarters supported',
    unit: 'in',
    ours: () => mmToInches(needOf('fork-length', { load: makeLoad({ depthMm: inchesToMm(48) }) })),
    published: 36,
    tolerance: 0,
    source: 'AS 2359.2:2013 cl. 3.7(e)',
    confidence: 'secondary source',
  },
  {
    id: 'pallet-overhang-1200',
    quantity: 'Overhang in front and behind',
    inputs: 'pallet 1200 mm deep on frames 1100 mm deep',
    unit: 'mm',
    ours: () => {
      const { need, have, outcome } = askStep('pallet-support', { run: makeRun({ frameDepthMm: 1100 }) });
      return outcome === 'pass' ? (Number(have) - Number(need)) / 2 : outcome;
    },
    published: 50,
    tolerance: 0,
    source: 'SEMA advice on frame depth',
    confidence: 'seen',
  },
];

export const LOAD_AND_PLATE_LIMITS: readonly LimitCheck[] = [
  {
    id: 'centre-height-limit',
    quantity: 'Centre of gravity above the forks, plate good for 600 mm',
    unit: 'mm',
    limit: 600,
    apart: 1,
    answerAt: (mm) =>
      askStep('centre-height', { truck: withPlateHeight, load: makeLoad({ centreHeightMm: mm }) }).outcome,
    expected: ['pass', 'pass', 'fail'],
    source: VERTICAL,
    confidence: 'seen',
  },
  {
    id: 'load-centre-limit',
    quantity: 'Load depth on a plate that is rated at 600 mm load centre',
    unit: 'mm',
    limit: 1200,
    apart: 2,
    answerAt: (depthMm) => askStep('plate-capacity', { load: makeLoad({ depthMm }) }).outcome,
    expected: ['pass', 'pass', 'unknown'],
    source: 'ISO 3691-1 marking: a rating holds to its stated load centre and height',
    confidence: 'from memory',
  },
  {
    id: 'fork-length-limit',
    quantity: 'Load depth on forks 1200 mm long, three quarters supported',
    unit: 'mm',
    limit: 1600,
    apart: 1,
    answerAt: (depthMm) => askStep('fork-length', { load: makeLoad({ depthMm }) }).outcome,
    expected: ['pass', 'pass', 'fail'],
    source: 'AS 2359.2:2013 cl. 3.7(e)',
    confidence: 'secondary source',
  },
  {
    id: 'fork-arm-limit',
    quantity: 'Mass on two arms of 1250 kg at 600 mm, load centre 600 mm',
    unit: 'kg',
    limit: 2500,
    apart: 1,
    answerAt: (grossKg) => {
      const { outcome } = askStep('fork-arms', { truck: forkArms(1250, 600), load: makeLoad({ grossKg }) });
      return outcome === 'thin' ? 'pass' : outcome;
    },
    expected: ['pass', 'pass', 'fail'],
    source: 'ISO 2330 marking',
    confidence: 'from memory',
  },
];
