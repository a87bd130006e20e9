import type { Load } from '../../lib/model/load.ts';
import type { Bay, Level, Run } from '../../lib/model/racking.ts';
import { SITE_FORMAT, SITE_VERSION, type Site } from '../../lib/model/site.ts';
import type { PlateRating, Truck } from '../../lib/model/truck.ts';

/** The same numbers in every run: a small linear congruence (Numerical Recipes' constants). */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

const BEAM_TOPS_MM = [0, 1500, 3000, 4500, 6000, 7500];
const BAYS_PER_RUN = 25;
const COLUMNS = 3;
const PER_BAY = BEAM_TOPS_MM.length * COLUMNS;

/**
 * A site of about this many locations and trucks, nine tenths stocked, every standing pallet with a mass of its own
 * and one of twelve shapes: bays of six levels (floor included) with three locations, four kinds of aisle.
 */
export function benchSite({
  locations,
  trucks,
  seed,
}: {
  locations: number;
  trucks: number;
  seed: number;
}): Site {
  const random = seededRandom(seed);
  const upTo = (n: number) => Math.floor(random() * n);
  const bayCount = Math.ceil(locations / PER_BAY);
  const runs: Run[] = [];
  const loads: Load[] = [];
  const stock: Site['stock'] = [];
  for (let bay = 0; bay < bayCount; bay += BAYS_PER_RUN) {
    const run = `r${runs.length}`;
    const bays = Math.min(BAYS_PER_RUN, bayCount - bay);
    runs.push({
      id: run,
      aisleId: `a${runs.length % 4}`,
      frameDepthMm: 1000,
      frames: Array.from({ length: bays + 1 }, (_, i) => ({
        id: `${run}f${i}`,
        typeId: 'f',
        condition: 'sound',
      })),
      bays: Array.from({ length: bays }, (_, i) => benchBay(`${run}b${i}`)),
      at: null,
    });
  }
  for (const run of runs) {
    for (const bay of run.bays) {
      for (const level of bay.levels) {
        for (const location of level.locations) {
          if (random() < 0.1) continue;
          const load = benchLoad(loads.length, upTo(12), 200 + upTo(5200) / 4);
          loads.push(load);
          stock.push({ location, load: load.id });
        }
      }
    }
  }
  return {
    format: SITE_FORMAT,
    version: SITE_VERSION,
    site: { name: 'Measured store', policy: {} },
    palletTypes: [{ id: 'p', depthMm: 1200, widthMm: 800, tareKg: 25, entryHeightMm: 100 }],
    frameTypes: [{ id: 'f', ratings: [{ maxGapMm: 1500, capacityKg: 16000 }] }],
    aisles: [5000, 5200, 5600, 6000].map((clearWidthMm, i) => ({
      id: `a${i}`,
      clearWidthMm,
      overheadClearMm: 10_500,
      sprinklerMm: 'none',
    })),
    runs,
    docks: [],
    trucks: Array.from({ length: trucks }, (_, i) => benchTruck(i, upTo)),
    operators: [],
    loads,
    stock,
    checks: [],
  };
}

function benchBay(id: string): Bay {
  const levels = BEAM_TOPS_MM.map(
    (beamTopMm, level): Level => ({
      level,
      beamTopMm,
      beamHeightMm: level === 0 ? 0 : 120,
      pairCapacityKg: level === 0 ? null : 3600,
      depthPositions: 1,
      maxUnitKg: level === 0 ? null : 1400,
      decked: false,
      condition: 'sound',
      locations: Array.from({ length: COLUMNS }, (_, i) => `${id}-${level}-${i}`),
    }),
  );
  return { id, clearWidthMm: 2700, maxBayLoadKg: 15_000, levels };
}

export function benchLoad(at: number, shape: number, grossKg: number): Load {
  return {
    id: `l${at}`,
    name: 'Load',
    palletType: 'p',
    items: null,
    grossKg,
    massBasis: 'weighed',
    depthMm: [1000, 1100, 1200][shape % 3]!,
    widthMm: 800,
    heightMm: [900, 1050, 1150, 1200][Math.floor(shape / 3)]!,
    centreFromHeelMm: null,
    centreHeightMm: null,
    picksPerWeek: null,
    group: null,
    handPick: null,
  };
}

function benchTruck(at: number, upTo: (n: number) => number): Truck {
  const kind = (['counterbalance', 'reach', 'stacker'] as const)[at % 3]!;
  const size = upTo(5);
  const maxLiftMm = [3300, 4800, 6300, 8000, 9000][size]!;
  const nominalKg = 2000 - 150 * size + 25 * upTo(25); // the higher a truck lifts, the less it lifts: none is best everywhere
  return {
    id: `t${at}`,
    name: 'Truck',
    kind,
    power: 'electric',
    maxLiftMm,
    loweredMm: 2200,
    extendedMm: maxLiftMm + 800,
    freeLiftMm: 200,
    reachDepth: 1,
    turning: { outsideRadiusMm: 1500 + 25 * upTo(20), loadDistanceMm: 300, insideOffsetMm: 500 },
    statedAisleMm: null,
    forks: { lengthMm: 1150, armCapacityKg: 5000, armLoadCentreMm: 700 },
    fittedAttachment: null,
    hold: null,
    speeds: null,
    plate: { verticalLoadCentreMm: null, ratings: benchRatings(maxLiftMm, nominalKg) },
  };
}

/** Twelve lines: four heights by three load centres, less mass for more of either. */
function benchRatings(maxLiftMm: number, nominalKg: number): PlateRating[] {
  return [1, 2, 3, 4].flatMap((height) =>
    [500, 600, 700].map((loadCentreMm) => ({
      mast: 'vertical' as const,
      attachment: null,
      liftHeightMm: (maxLiftMm * height) / 4,
      loadCentreMm,
      capacityKg: Math.round(nominalKg * (1 - 0.12 * (height - 1)) * (1 - (loadCentreMm - 500) / 1000)),
    })),
  );
}
