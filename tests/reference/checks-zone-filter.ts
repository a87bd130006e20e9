import { zoneFilter } from '../../lib/hand-pick/zone-filter.ts';
import type { ReferenceCheck } from './reference-check.ts';

const ZONE_ROWS = [
  { zone: 'above shoulder', mm: 1500, men: [10, 5], women: [7, 3] },
  { zone: 'elbow to shoulder', mm: 1200, men: [20, 10], women: [13, 7] },
  { zone: 'knuckle to elbow', mm: 900, men: [25, 15], women: [16, 10] },
  { zone: 'mid lower leg to knuckle', mm: 500, men: [20, 10], women: [13, 7] },
  { zone: 'below mid lower leg', mm: 100, men: [10, 5], women: [7, 3] },
] as const;
const zoneAt = (mm: number, liftsPerMinute = 0, asymmetryDeg = 0) =>
  zoneFilter({ originMm: mm, destinationMm: mm, liftsPerMinute, asymmetryDeg });
const INDG143 = 'HSE INDG143, figure';

export const ZONE_FILTER: readonly ReferenceCheck[] = [
  ...ZONE_ROWS.flatMap(({ zone, mm, men, women }): ReferenceCheck[] => [
    {
      id: `zone-men-${mm}`,
      quantity: 'Simple filter, men',
      inputs: `${zone}; close / arms extended`,
      unit: 'kg',
      ours: () => {
        const { closeKg, armsExtendedKg } = zoneAt(mm).men;
        return `${closeKg} / ${armsExtendedKg}`;
      },
      published: men.join(' / '),
      tolerance: 0,
      source: INDG143,
      confidence: 'from memory',
    },
    {
      id: `zone-women-${mm}`,
      quantity: 'Simple filter, women',
      inputs: `${zone}; close / arms extended`,
      unit: 'kg',
      ours: () => {
        const { closeKg, armsExtendedKg } = zoneAt(mm).women;
        return `${closeKg} / ${armsExtendedKg}`;
      },
      published: women.join(' / '),
      tolerance: 0,
      source: INDG143,
      confidence: 'from memory',
    },
  ]),
  ...[
    [1, 30],
    [1.5, 30],
    [2, 30],
    [5, 50],
    [8, 50],
    [13, 80],
  ].map(
    ([perMinute = 0, percent = 0]): ReferenceCheck => ({
      id: `zone-rate-${perMinute}`,
      quantity: 'Simple filter, taken off for the rate',
      inputs: `${perMinute} a minute`,
      unit: '%',
      ours: () => zoneAt(900, perMinute).frequencyPercentOff,
      published: percent,
      tolerance: 0,
      source: 'HSE INDG143',
      confidence: 'secondary source',
    }),
  ),
  {
    id: 'zone-twist-60',
    quantity: 'Simple filter, taken off for a twist',
    inputs: '60 deg',
    unit: '%',
    ours: () => zoneAt(900, 0, 60).twistPercentOff,
    published: 10,
    tolerance: 0,
    source: 'HSE INDG143',
    confidence: 'secondary source',
  },
  {
    id: 'zone-twist-100',
    quantity: 'Simple filter, taken off for a twist',
    inputs: '100 deg',
    unit: '%',
    ours: () => zoneAt(900, 0, 100).twistPercentOff,
    published: 20,
    tolerance: 0,
    source: 'HSE INDG143',
    confidence: 'secondary source',
  },
  {
    id: 'zone-worked-men',
    quantity: 'Simple filter, men, close',
    inputs: 'knuckle to elbow, 6 a minute, 60 deg',
    unit: 'kg',
    ours: () => zoneAt(900, 6, 60).men.closeKg,
    published: 11.25,
    tolerance: 0,
    source: '25 kg less 50 %, less 10 %',
    confidence: 'derived',
  },
  {
    id: 'zone-worked-women',
    quantity: 'Simple filter, women, close',
    inputs: 'above shoulder, 1.5 a minute',
    unit: 'kg',
    ours: () => zoneAt(1500, 1.5).women.closeKg,
    published: 4.9,
    tolerance: 0,
    source: '7 kg less 30 %',
    confidence: 'derived',
  },
];
