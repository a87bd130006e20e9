import { attachmentDeratedKg } from '../../lib/check/estimates/attachment.ts';
import { beyondPlateKg, fieldDeratedKg, momentDeratedKg } from '../../lib/check/estimates/field-derating.ts';
import { inchesToMm, kgToPounds, poundsToKg } from '../../lib/units/conversions.ts';
import { makeCounterbalance } from '../site-builder.ts';
import type { LimitCheck, ReferenceCheck } from './reference-check.ts';

const fieldLb = (lb: number, plateIn: number, loadIn: number) =>
  kgToPounds(
    fieldDeratedKg({
      capacityKg: poundsToKg(lb),
      plateLoadCentreMm: inchesToMm(plateIn),
      loadCentreMm: inchesToMm(loadIn),
    }),
  );

const momentKg = (capacityKg: number, plateLoadCentreMm: number, loadCentreMm: number, x: number) => {
  const estimate = momentDeratedKg({ capacityKg, plateLoadCentreMm, loadCentreMm }, x);
  return estimate.kind === 'estimate' ? estimate.kg : estimate.cause;
};

const METRIC = [
  { q: 2000, d1: 500, d2: 600, x: 450, field: 1666.7, moment: 1809.5 },
  { q: 1600, d1: 600, d2: 700, x: 400, field: 1371.4, moment: 1454.5 },
  { q: 2500, d1: 500, d2: 800, x: 480, field: 1562.5, moment: 1914.1 },
];

const TRUNCATED = 'the source cuts off the decimals; an estimate is shown rounded down as well';

export const DERATING: readonly ReferenceCheck[] = [
  {
    id: 'field-28-in',
    quantity: 'Field rule for a longer load centre',
    inputs: '5000 lb at 24 in, carried at 28 in',
    unit: 'lb',
    ours: () => Math.floor(fieldLb(5000, 24, 28)),
    published: 4285,
    tolerance: 0,
    source: 'OSHA powered industrial trucks eTool, load composition',
    confidence: 'secondary source',
    note: TRUNCATED,
  },
  {
    id: 'field-36-in',
    quantity: 'Field rule for a longer load centre',
    inputs: '4000 lb at 24 in, carried at 36 in',
    unit: 'lb',
    ours: () => Math.floor(fieldLb(4000, 24, 36)),
    published: 2666,
    tolerance: 0,
    source: 'OSHA powered industrial trucks eTool, load composition, fig. 4',
    confidence: 'secondary source',
    note: TRUNCATED,
  },
  {
    id: 'field-60-in-load',
    quantity: 'Field rule for a longer load centre',
    inputs: '3000 lb at 24 in, a load 60 in long (centre at 30 in)',
    unit: 'lb',
    ours: () => fieldLb(3000, 24, 30),
    published: 2400,
    tolerance: 0,
    source: '29 CFR 1910.178 App. A, A-5',
    confidence: 'seen',
  },
  {
    id: 'field-30-in',
    quantity: 'Field rule for a longer load centre',
    inputs: '5000 lb at 24 in, carried at 30 in',
    unit: 'lb',
    ours: () => fieldLb(5000, 24, 30),
    published: 4000,
    tolerance: 0,
    source: 'OSHA field method',
    confidence: 'secondary source',
  },
  {
    id: 'field-40-in',
    quantity: 'Field rule for a longer load centre',
    inputs: '5000 lb at 24 in, an 80 in load (centre at 40 in)',
    unit: 'lb',
    ours: () => fieldLb(5000, 24, 40),
    published: 3000,
    tolerance: 0,
    source: 'OSHA field method; the rule of "100 lb an inch" would say 3400 and is not used',
    confidence: 'secondary source',
  },
  {
    id: 'no-credit-short',
    quantity: 'Shorter load centre than the plate',
    inputs: '2000 kg at 600 mm, carried at 400 mm',
    unit: 'kg',
    ours: () => fieldDeratedKg({ capacityKg: 2000, plateLoadCentreMm: 600, loadCentreMm: 400 }),
    published: 2000,
    tolerance: 0,
    source: 'components, not stability, then limit',
    confidence: 'secondary source',
  },
  {
    id: 'no-credit-short-moment',
    quantity: 'Shorter load centre than the plate, by moments',
    inputs: '2000 kg at 600 mm, carried at 400 mm, x 450',
    unit: 'kg',
    ours: () => momentKg(2000, 600, 400, 450),
    published: 2000,
    tolerance: 0,
    source: 'components, not stability, then limit',
    confidence: 'secondary source',
  },
  ...METRIC.flatMap(({ q, d1, d2, x, field, moment }): ReferenceCheck[] => [
    {
      id: `field-${q}-${d2}`,
      quantity: 'Field rule for a longer load centre',
      inputs: `${q} kg at ${d1} mm, carried at ${d2} mm`,
      unit: 'kg',
      ours: () => fieldDeratedKg({ capacityKg: q, plateLoadCentreMm: d1, loadCentreMm: d2 }),
      published: field,
      tolerance: 0.05,
      source: 'Q D1 / D2',
      confidence: 'derived',
    },
    {
      id: `moment-${q}-${d2}`,
      quantity: 'Load moment about the front axle',
      inputs: `${q} kg at ${d1} mm, carried at ${d2} mm, x ${x}`,
      unit: 'kg',
      ours: () => momentKg(q, d1, d2, x),
      published: moment,
      tolerance: 0.05,
      source: 'statics: Q (x + D1) / (x + D2)',
      confidence: 'derived',
    },
  ]),
  {
    id: 'beyond-plate',
    quantity: 'Estimate beyond a plate',
    inputs: 'plate 2000 kg at 600 mm to 4500 mm; lift 3000, load centre 700 mm',
    unit: 'kg',
    ours: () => beyondPlateKg(makeCounterbalance(), 3000, 700) ?? 'none',
    published: 1714.3,
    tolerance: 0.05,
    source: 'Q D1 / D2',
    confidence: 'derived',
  },
  {
    id: 'attachment-clamp',
    quantity: 'Capacity with an attachment',
    inputs:
      '2500 kg at 500, x 480; 350 kg with its centre 140 mm ahead of the fork face, load pushed out 260 mm',
    unit: 'kg',
    ours: () =>
      attachmentDeratedKg({
        capacityKg: 2500,
        loadCentreMm: 500,
        axleToForkFaceMm: 480,
        attachmentKg: 350,
        attachmentCentreMm: 140,
        lostLoadCentreMm: 260,
      }) ?? 'none',
    published: 1800.8,
    tolerance: 0.05,
    source: 'statics: moments about the front axle',
    confidence: 'derived',
  },
  {
    id: 'attachment-sideshift',
    quantity: 'Capacity with an attachment',
    inputs:
      '2500 kg at 500, x 480; 60 kg with its centre 10 mm ahead of the fork face, load pushed out 40 mm',
    unit: 'kg',
    ours: () =>
      attachmentDeratedKg({
        capacityKg: 2500,
        loadCentreMm: 500,
        axleToForkFaceMm: 480,
        attachmentKg: 60,
        attachmentCentreMm: 10,
        lostLoadCentreMm: 40,
      }) ?? 'none',
    published: 2373.1,
    tolerance: 0.05,
    source: 'statics: moments about the front axle',
    confidence: 'derived',
  },
];

export const DERATING_LIMITS: readonly LimitCheck[] = [
  {
    id: 'field-rule-starts',
    quantity: 'Load centre from which the field rule takes something off, plate at 600 mm',
    unit: 'mm',
    limit: 600,
    apart: 1,
    answerAt: (loadCentreMm) =>
      fieldDeratedKg({ capacityKg: 2000, plateLoadCentreMm: 600, loadCentreMm }) < 2000
        ? 'less'
        : 'as the plate',
    expected: ['as the plate', 'as the plate', 'less'],
    source: '29 CFR 1910.178 App. A, A-5',
    confidence: 'seen',
  },
];
