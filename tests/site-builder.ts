import type { z } from 'zod';
import type { Context } from '../lib/check/step.ts';
import { type Load, loadSchema } from '../lib/model/load.ts';
import {
  type Bay,
  baySchema,
  type Frame,
  frameSchema,
  type Level,
  levelSchema,
  type Run,
  runSchema,
} from '../lib/model/racking.ts';
import { type Site, siteSchema } from '../lib/model/site.ts';
import type { Place, SiteIndex } from '../lib/model/site-index.ts';
import { found, indexSite } from '../lib/model/site-index.ts';
import { type Truck, truckSchema } from '../lib/model/truck.ts';

/**
 * A small sound site for tests, with anything overridden. One aisle (3000 mm), one run of two bays and three
 * frames; each bay has a floor and beam levels at 1500 and 3000 mm with two locations each.
 * Locations are `<bay>-<level>-<position>`: a1-0-1 ... a2-2-2. Nothing is stocked.
 * `crates` (800 kg, weighed) is clear everywhere with both trucks: `reach-1` and `counter-1`.
 */
export function makeSite(overrides: Partial<z.input<typeof siteSchema>> = {}): Site {
  return siteSchema.parse({
    format: 'tinewise-site',
    version: 1,
    site: { name: 'Harbour store' },
    palletTypes: [{ id: 'p1200', depthMm: 1200, widthMm: 800, tareKg: 60, entryHeightMm: 100 }],
    frameTypes: [
      {
        id: 'f90',
        ratings: [
          { maxGapMm: 1500, capacityKg: 9000 },
          { maxGapMm: 2000, capacityKg: 7000 },
        ],
      },
    ],
    aisles: [{ id: 'aisle-1', clearWidthMm: 4200, overheadClearMm: 9000, sprinklerMm: 8500 }],
    runs: [makeRun()],
    docks: [{ id: 'dock-1', xMm: 0, yMm: 0 }],
    trucks: [makeTruck(), makeCounterbalance()],
    operators: [
      {
        id: 'op-1',
        name: 'Operator one',
        authorisations: [
          { kind: 'reach', expires: '2026-06-01T00:00:00Z' },
          { kind: 'counterbalance', expires: null },
        ],
      },
    ],
    loads: [makeLoad(), makeDrums()],
    stock: [],
    checks: [
      { truck: 'reach-1', at: '2026-03-02T06:00:00Z', by: 'Operator one', result: 'pass' },
      { truck: 'counter-1', at: '2026-03-02T06:00:00Z', by: 'Operator one', result: 'pass' },
    ],
    ...overrides,
  });
}

/** An index of `makeSite(overrides)`. */
export function makeIndex(overrides: Partial<z.input<typeof siteSchema>> = {}): SiteIndex {
  return indexSite(makeSite(overrides));
}

export function makeFrame(overrides: Partial<z.input<typeof frameSchema>> = {}): Frame {
  return frameSchema.parse({ id: 'a-f1', typeId: 'f90', condition: 'sound', ...overrides });
}

/** A beam level (or, with level 0, the floor) with two locations `<bayId>-<level>-1` and `-2`. */
export function makeLevel(
  bayId: string,
  level: number,
  overrides: Partial<z.input<typeof levelSchema>> = {},
): Level {
  const floor = level === 0;
  return levelSchema.parse({
    level,
    beamTopMm: level * 1500,
    beamHeightMm: floor ? 0 : 120,
    pairCapacityKg: floor ? null : 2400,
    depthPositions: 1,
    maxUnitKg: floor ? null : 1200,
    decked: false,
    condition: 'sound',
    locations: [`${bayId}-${level}-1`, `${bayId}-${level}-2`],
    ...overrides,
  });
}

/** A bay of 2700 mm with a floor and two beam levels. */
export function makeBay(bayId: string, overrides: Partial<z.input<typeof baySchema>> = {}): Bay {
  return baySchema.parse({
    id: bayId,
    clearWidthMm: 2700,
    maxBayLoadKg: 4800,
    levels: [makeLevel(bayId, 0), makeLevel(bayId, 1), makeLevel(bayId, 2)],
    ...overrides,
  });
}

export function makeRun(overrides: Partial<z.input<typeof runSchema>> = {}): Run {
  return runSchema.parse({
    id: 'a',
    aisleId: 'aisle-1',
    frameDepthMm: 1100,
    frames: [makeFrame({ id: 'a-f1' }), makeFrame({ id: 'a-f2' }), makeFrame({ id: 'a-f3' })],
    bays: [makeBay('a1'), makeBay('a2')],
    at: { xMm: 5000, yMm: 2000, headingDeg: 0 },
    ...overrides,
  });
}

/** A reach truck that lifts 6000 mm; its plate proves 1600 kg to 3000 mm and 1000 kg to 6000 mm at 600 mm. */
export function makeTruck(overrides: Partial<z.input<typeof truckSchema>> = {}): Truck {
  return truckSchema.parse({
    id: 'reach-1',
    name: 'Reach truck 1',
    kind: 'reach',
    power: 'electric',
    maxLiftMm: 6000,
    loweredMm: 2400,
    extendedMm: 6800,
    freeLiftMm: 1600,
    reachDepth: 1,
    turning: { outsideRadiusMm: 1650, loadDistanceMm: 350, insideOffsetMm: 0 },
    statedAisleMm: null,
    forks: { lengthMm: 1150, armCapacityKg: 1000, armLoadCentreMm: 600 },
    fittedAttachment: null,
    hold: null,
    speeds: null,
    plate: {
      verticalLoadCentreMm: 600,
      ratings: [
        { mast: 'vertical', attachment: null, liftHeightMm: 3000, loadCentreMm: 600, capacityKg: 1600 },
        { mast: 'vertical', attachment: null, liftHeightMm: 6000, loadCentreMm: 600, capacityKg: 1000 },
      ],
    },
    ...overrides,
  });
}

/** A counterbalanced truck that lifts 4500 mm; its plate proves 2000 kg at 600 mm, 1700 kg tilted forward. */
export function makeCounterbalance(overrides: Partial<z.input<typeof truckSchema>> = {}): Truck {
  return makeTruck({
    id: 'counter-1',
    name: 'Counterbalanced truck 1',
    kind: 'counterbalance',
    power: 'lpg',
    maxLiftMm: 4500,
    loweredMm: 2100,
    extendedMm: 5300,
    freeLiftMm: 100,
    turning: { outsideRadiusMm: 2200, loadDistanceMm: 465, insideOffsetMm: 600 },
    forks: { lengthMm: 1200, armCapacityKg: 1250, armLoadCentreMm: 600 },
    plate: {
      verticalLoadCentreMm: null,
      ratings: [
        { mast: 'vertical', attachment: null, liftHeightMm: 4500, loadCentreMm: 600, capacityKg: 2000 },
        { mast: 'forward-tilt', attachment: null, liftHeightMm: 4500, loadCentreMm: 600, capacityKg: 1700 },
      ],
    },
    ...overrides,
  });
}

/** 800 kg weighed, 1200 mm along the forks, 800 mm wide, 1000 mm high. */
export function makeLoad(overrides: Partial<z.input<typeof loadSchema>> = {}): Load {
  return loadSchema.parse({
    id: 'crates',
    name: 'Crates',
    palletType: 'p1200',
    items: null,
    grossKg: 800,
    massBasis: 'weighed',
    depthMm: 1200,
    widthMm: 800,
    heightMm: 1000,
    centreFromHeelMm: null,
    centreHeightMm: null,
    picksPerWeek: 10,
    group: null,
    handPick: null,
    ...overrides,
  });
}

/** Four 250 kg drums on a 60 kg pallet: 1060 kg, calculated. */
export function makeDrums(overrides: Partial<z.input<typeof loadSchema>> = {}): Load {
  return makeLoad({
    id: 'drums',
    name: 'Drums',
    items: [{ name: 'drum', massKg: 250, count: 4 }],
    grossKg: null,
    massBasis: 'calculated',
    ...overrides,
  });
}

/** Placing, racks as they are, no time and no operator named. */
export function makeContext(overrides: Partial<Context> = {}): Context {
  return { operation: 'place', asOf: null, operator: null, stock: 'as-is', from: null, ...overrides };
}

/** The place of a location id; throws when there is none. */
export function placeOf(index: SiteIndex, locationId: string): Place {
  return found(index.places, locationId, 'location');
}
