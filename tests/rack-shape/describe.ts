import fc from 'fast-check';
import type { Site } from '../../lib/model/site.ts';
import { readSite } from '../../lib/model/site-file.ts';
import type { RunDescription } from '../../lib/rack-shape/description.ts';
import { plainLabels } from '../../lib/rack-shape/guess-labels.ts';
import { neighboursOf } from '../../lib/rack-shape/neighbours.ts';
import type { Shaped } from '../../lib/rack-shape/shape-fault.ts';
import { makeSite } from '../site-builder.ts';

export const site = makeSite();
export const neighbours = neighboursOf(site, null);

/** Three bays, floor used, two beam levels of three positions, at the right of aisle-1. */
export function describeRun(overrides: Partial<RunDescription> = {}): RunDescription {
  const beam = { beamHeightMm: 120, pairCapacityKg: 2400, maxUnitKg: 1000, decked: false } as const;
  return {
    id: 'B-R',
    aisleId: 'aisle-1',
    frameDepthMm: 1100,
    bayCount: 3,
    clearWidthsMm: [2700],
    frameTypeId: 'f90',
    endFrameTypeId: null,
    maxBayLoadKg: 4800,
    floor: { positions: 3, depthPositions: 1 },
    levels: [
      { ...beam, beamTopMm: 1500, depthPositions: 1, positions: 3 },
      { ...beam, beamTopMm: 3000, depthPositions: 1, positions: 3 },
    ],
    labels: plainLabels('B', 'R'),
    ...overrides,
  };
}

export function made<T>(shaped: Shaped<T>): T {
  if (!shaped.ok) throw new Error(JSON.stringify(shaped.refusals));
  return shaped.value;
}

/** Is the site with these runs one that lib/model accepts? It is handed back as read. */
export function accepted(runs: Site['runs'], stock: Site['stock'] = []): Site {
  const reading = readSite(JSON.parse(JSON.stringify({ ...site, runs, stock })));
  if (!reading.ok) throw new Error(JSON.stringify(reading.refusals.slice(0, 5)));
  return reading.site;
}

const small = (max: number) => fc.integer({ min: 1, max });
const capacity = fc.option(fc.constantFrom(800, 1000, 2400.5, 3000));

/** Any description that is whole and whose pattern tells all its locations apart. */
export const anyDescription: fc.Arbitrary<RunDescription> = fc
  .record({
    bayCount: small(7),
    sameWidth: fc.boolean(),
    frameDepthMm: fc.constantFrom(800, 1000, 1100.5),
    floorPositions: fc.option(small(4)),
    floorDeep: fc.constantFrom(1 as const, 2 as const),
    beams: fc.array(
      fc.record({
        openingMm: fc.integer({ min: 200, max: 2400 }),
        beamHeightMm: fc.constantFrom(90, 120, 140),
        pairCapacityKg: capacity,
        maxUnitKg: capacity,
        decked: fc.boolean(),
        depthPositions: fc.constantFrom(1 as const, 2 as const),
        positions: small(4),
      }),
      { minLength: 1, maxLength: 5 },
    ),
    maxBayLoadKg: capacity,
    bay: fc.constantFrom('{bay}', '{bay:00}', '{bay:A}', '{bay:000}'),
    level: fc.constantFrom('{level}', '{level:00}', '{level:A}'),
    position: fc.constantFrom('{position}', '{position:00}', '{position:A}', '{row}.{position}'),
    bayStart: fc.integer({ min: 1, max: 60 }),
    bayStep: fc.constantFrom(1 as const, 2 as const),
    bayFrom: fc.constantFrom('left' as const, 'right' as const),
    levelStart: fc.integer({ min: 1, max: 12 }),
    positionFrom: fc.constantFrom('left' as const, 'right' as const),
  })
  .map((drawn): RunDescription => {
    let topMm = 0;
    return describeRun({
      bayCount: drawn.bayCount,
      frameDepthMm: drawn.frameDepthMm,
      clearWidthsMm: drawn.sameWidth ? [2700] : Array.from({ length: drawn.bayCount }, (_, at) => 1400 + at),
      maxBayLoadKg: drawn.maxBayLoadKg,
      floor:
        drawn.floorPositions === null
          ? null
          : { positions: drawn.floorPositions, depthPositions: drawn.floorDeep },
      levels: drawn.beams.map(({ openingMm, ...beam }) => {
        topMm += openingMm + beam.beamHeightMm;
        return { ...beam, beamTopMm: topMm };
      }),
      labels: {
        pattern: `{aisle}/{side}-${drawn.bay}-${drawn.level}-${drawn.position}`,
        aisle: 'B',
        side: 'R',
        bayStart: drawn.bayStart,
        bayStep: drawn.bayStep,
        bayFrom: drawn.bayFrom,
        levelStart: drawn.levelStart,
        positionStart: 1,
        positionFrom: drawn.positionFrom,
      },
    });
  });
