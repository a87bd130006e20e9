import fc, { type GeneratorValue } from 'fast-check';
import type { Context } from '../../lib/check/step.ts';
import type { Load } from '../../lib/model/load.ts';
import { policyInForce, type SitePolicy } from '../../lib/model/policy.ts';
import type { Aisle, Bay, Level, Run } from '../../lib/model/racking.ts';
import { ALWAYS_MUST_KNOW, RULE_IDS } from '../../lib/model/rule-ids.ts';
import { SITE_FORMAT, SITE_VERSION, type Site } from '../../lib/model/site.ts';
import type { Check, Operator, PlateRating, Truck, TruckKind } from '../../lib/model/truck.ts';
import { MASTS, TRUCK_KINDS } from '../../lib/model/truck.ts';

/*
 * Random sites that are accepted by lib/model and lean on the limits: lengths, masses and times are drawn from short
 * lists, and each limit from the values that will be compared with it, so that need = have happens often.
 */

/** 0 to max, evenly: fast-check's own leaning to small and largest numbers would make every site a wreck. */
function evenly(max: number) {
  return fc.noBias(fc.nat({ max }));
}

/** One of the entries; fast-check chooses, remembers and shrinks. */
export function pick<T>(g: GeneratorValue, entries: readonly T[]): T {
  return entries[g(evenly, entries.length - 1)]!;
}

/** True in about `percent` of the draws. */
export function chance(g: GeneratorValue, percent: number): boolean {
  return g(evenly, 99) >= 100 - percent;
}

function orNull<T>(g: GeneratorValue, percentNull: number, draw: () => T): T | null {
  return chance(g, percentNull) ? null : draw();
}

/**
 * A draw of facts. In a calm site most of them are generous, so that verdicts hang on one or two rules and reach
 * clear and thin; in a rough one every fact is drawn for trouble.
 */
export type Draw = { g: GeneratorValue; calm: boolean };

/** The generous value in most draws of a calm site, else what `trouble` draws. */
function easy<T>({ g, calm }: Draw, generous: T, trouble: () => T): T {
  return calm && chance(g, 88) ? generous : trouble();
}

function listOf<T>(count: number, draw: (at: number) => T): T[] {
  return Array.from({ length: count }, (_, at) => draw(at));
}

const DEPTHS_MM = [800, 1000, 1200, 1100.5];
const HEIGHTS_MM = [900, 1200, 1250, 1450, 2000];
const MASSES_KG = [300, 450, 500, 900, 901, 1000, 1000.5, 1200, 333.3, 0.1, 612.7];
const CAPACITIES_KG = [...MASSES_KG, 990, 1100, 1111.1, 1500, 1999.9, 2000, 2400];
const TIMES = ['2026-03-01', '2026-03-01T18:00:00Z', '2026-03-02T05:59:59Z', '2026-03-02T06:00:00Z'];
const ATTACHMENTS = [null, 'sideshift', 'clamp'];

/** A site of one or two runs, up to two bays each, with every kind of fact given, missing and at its limit. */
export function drawSite(g: GeneratorValue): Site {
  const d: Draw = { g, calm: chance(g, 65) };
  const policy = drawPolicy(g);
  const inForce = policyInForce(policy);
  const palletTypes = listOf(2, (at) => ({
    id: `P${at}`,
    depthMm: pick(g, [800, 1000, 1200]),
    widthMm: 800,
    tareKg: pick(g, [0, 25]),
    entryHeightMm: pick(g, [0, 90, 100]),
  }));
  const loads = listOf(3, (at) => drawLoad(g, at));
  const liftsMm = [0, 1500, 2000, 3000].flatMap((top) =>
    [90, 100].map((entry) => top + entry + inForce.placingClearanceMm),
  );
  const trucks = listOf(g(evenly, 2) + 2, (at) => drawTruck(d, at, liftsMm));
  const aisles = listOf(2, (at) => drawAisle(d, at, trucks, loads, inForce));
  const frameTypes = listOf(2, (at) => ({
    id: `F${at}`,
    ratings: listOf(g(evenly, 2) + (d.calm ? 1 : 0), () => ({
      maxGapMm: easy(d, 4000, () => pick(g, [1000, 1500, 1500, 2000, 3000])),
      capacityKg: pick(g, [...CAPACITIES_KG, 4000, 9000]),
    })),
  }));
  const runs = listOf(g(evenly, 1) + 1, (at) => drawRun(d, at, loads, inForce.placingClearanceMm));
  const locations = runs.flatMap((run) => run.bays.flatMap((bay) => bay.levels.flatMap((l) => l.locations)));
  const fullPercent = pick(g, [0, 30, 60]);
  return {
    format: SITE_FORMAT,
    version: SITE_VERSION,
    site: { name: 'A random site', policy },
    palletTypes,
    frameTypes,
    aisles,
    runs,
    docks: [],
    trucks,
    operators: listOf(2, (at) => drawOperator(d, at)),
    loads,
    stock: locations
      .filter(() => chance(g, fullPercent))
      .map((location) => ({ location, load: pick(g, loads).id })),
    checks: listOf(g(evenly, 4) + (d.calm ? 3 : 0), () => drawCheck(d, trucks)),
  };
}

/** What is asked around a lift of this site: both operations, with and without time, operator, stock and origin. */
export function drawContext(g: GeneratorValue, site: Site): Context {
  return {
    operation: chance(g, 70) ? 'place' : 'retrieve',
    asOf: orNull(g, 40, () => pick(g, TIMES)),
    operator: orNull(g, 60, () => pick(g, site.operators).id),
    stock: chance(g, 30) ? 'empty' : 'as-is',
    from: site.stock.length > 0 && chance(g, 30) ? pick(g, site.stock).location : null,
  };
}

function drawPolicy(g: GeneratorValue): SitePolicy {
  const policy: SitePolicy = {};
  if (chance(g, 40)) policy.placingClearanceMm = pick(g, [0, 75, 150]);
  if (chance(g, 60)) policy.clearanceClass = pick(g, ['400', '300A', '300B', 'AS4084'] as const);
  if (chance(g, 30)) policy.aisleClearanceMm = pick(g, [0, 200, 300]);
  if (chance(g, 20)) policy.tilt = 'mast-kept-vertical';
  if (chance(g, 50)) policy.thinPercent = pick(g, [0, 5, 10, 33.3, 100]);
  if (chance(g, 30)) policy.massAllowancePercent = { declared: pick(g, [0, 7.5, 10]), calculated: 5 };
  if (chance(g, 30)) policy.checkValidHours = pick(g, [1, 12, 36]);
  if (chance(g, 30)) policy.overheadMarginMm = pick(g, [0, 100]);
  if (chance(g, 30)) policy.sprinklerClearanceMm = pick(g, [0, 457, 914]);
  if (chance(g, 20)) policy.forkSupportFraction = pick(g, [0.5, 2 / 3, 1]);
  if (chance(g, 50)) policy.mustKnow = RULE_IDS.filter((rule) => isAlways(rule) || chance(g, 50));
  return policy;
}

function isAlways(rule: (typeof RULE_IDS)[number]): boolean {
  return (ALWAYS_MUST_KNOW as readonly string[]).includes(rule);
}

/** A load; `at` makes its id. */
export function drawLoad(g: GeneratorValue, at: number): Load {
  return {
    id: `L${at}`,
    name: `Load ${at}`,
    palletType: orNull(g, 30, () => pick(g, ['P0', 'P1'])),
    items: orNull(g, 40, () => [{ name: 'case', massKg: pick(g, [10, 22.5]), count: pick(g, [20, 40]) }]),
    grossKg: orNull(g, 15, () => pick(g, MASSES_KG)),
    massBasis: pick(g, ['weighed', 'calculated', 'declared'] as const),
    depthMm: pick(g, DEPTHS_MM),
    widthMm: pick(g, [800, 1000, 1200]),
    heightMm: pick(g, HEIGHTS_MM),
    centreFromHeelMm: orNull(g, 60, () => pick(g, [400, 500, 600, 750])),
    centreHeightMm: orNull(g, 60, () => pick(g, [500, 600])),
    picksPerWeek: null,
    group: null,
    handPick: null,
  };
}

/** A truck whose limits are drawn from what the site's lifts will need. */
export function drawTruck(d: Draw, at: number, liftsMm: readonly number[]): Truck {
  const { g } = d;
  const maxLiftMm = easy(d, 9000, () =>
    pick(g, [1400, 3000, 4000, 6000, 6000, ...liftsMm.filter((lift) => lift > 0)]),
  );
  const loweredMm = easy<number | null>(d, 2200, () => orNull(g, 25, () => pick(g, [2000, 2200])));
  const arms = chance(g, 60);
  return {
    id: `T${at}`,
    name: `Truck ${at}`,
    kind: easy(d, pick(g, ['counterbalance', 'reach'] as const), () => pick(g, TRUCK_KINDS)),
    power: 'electric',
    maxLiftMm,
    loweredMm,
    extendedMm: easy<number | null>(d, 4545, () =>
      orNull(g, 25, () => (loweredMm ?? 2000) + pick(g, [0, 1000, 2345])),
    ),
    freeLiftMm: orNull(g, 40, () => Math.min(maxLiftMm, pick(g, [0, 250, 1750, 9000]))),
    reachDepth: easy(d, 2, () => (chance(g, 40) ? 2 : 1)),
    turning: easy<Truck['turning']>(
      d,
      { outsideRadiusMm: 1600, loadDistanceMm: 300, insideOffsetMm: 500 },
      () => orNull(g, 20, () => drawTurning(g)),
    ),
    statedAisleMm: orNull(g, 60, () => pick(g, [1500, 2700, 3300])),
    forks: {
      lengthMm: easy<number | null>(d, 1200, () => orNull(g, 20, () => pick(g, [750, 800, 900, 1200]))),
      armCapacityKg: arms ? pick(g, [450, 500, 600, 1000, 1200]) : null,
      armLoadCentreMm: arms ? pick(g, [400, 500, 600]) : null,
    },
    fittedAttachment: easy(d, null, () => (chance(g, 70) ? null : pick(g, ATTACHMENTS))),
    hold: chance(g, d.calm ? 3 : 10) ? { since: '2026-03-01', reason: 'Leaking hose.' } : null,
    speeds: null,
    plate: {
      verticalLoadCentreMm: easy<number | null>(d, null, () =>
        orNull(g, 40, () => pick(g, [450, 500, 600, 725])),
      ),
      ratings: listOf(g(evenly, 7) + (d.calm ? 2 : 0), () => drawRating(d, liftsMm)),
    },
  };
}

function drawTurning(g: GeneratorValue): NonNullable<Truck['turning']> {
  return {
    outsideRadiusMm: pick(g, [1600, 2000]),
    loadDistanceMm: pick(g, [0, 300, 400, 800]),
    insideOffsetMm: pick(g, [0, 400, 500, 700]),
  };
}

function drawRating(d: Draw, liftsMm: readonly number[]): PlateRating {
  const { g } = d;
  return {
    mast: chance(g, 70) ? 'vertical' : pick(g, MASTS),
    attachment: easy(d, null, () => (chance(g, 80) ? null : pick(g, ATTACHMENTS))),
    liftHeightMm: easy(d, 7000, () =>
      pick(g, [1000, 3000, 6000, 6000, ...liftsMm.filter((lift) => lift > 0)]),
    ),
    loadCentreMm: easy(d, 750, () => pick(g, [400, 500, 550.25, 600, 600, 750])),
    capacityKg: pick(g, CAPACITIES_KG),
  };
}

type InForce = ReturnType<typeof policyInForce>;

/** An aisle whose width is often exactly what one truck needs to stack one load, and whose ceiling what a mast needs. */
function drawAisle(
  d: Draw,
  at: number,
  trucks: readonly Truck[],
  loads: readonly Load[],
  policy: InForce,
): Aisle {
  const { g } = d;
  const truck = pick(g, trucks);
  const load = pick(g, loads);
  const widthMm = Math.max(1, stackingWidthMm(truck, load, policy) + pick(g, [0, 0, 1, -1]));
  const tops = [0, 1500, 2000, 3000];
  const ceilings = [
    ...[2000, 2200, 3000, 4345].map((mast) => mast + policy.overheadMarginMm),
    ...tops.map((top) => top + policy.placingClearanceMm + load.heightMm + policy.overheadMarginMm),
  ];
  const sprinklers = tops.map((top) => top + load.heightMm + policy.sprinklerClearanceMm);
  return {
    id: `A${at}`,
    clearWidthMm: easy(d, 4500, () => (chance(g, 50) ? widthMm : pick(g, [1500, 2700, 3300, 4500]))),
    overheadClearMm: easy<Aisle['overheadClearMm']>(d, 9000, () => surveyed(g, ceilings)),
    sprinklerMm: easy<Aisle['sprinklerMm']>(d, 'none', () => surveyed(g, sprinklers)),
  };
}

function surveyed(g: GeneratorValue, limitsMm: readonly number[]): number | 'none' | null {
  if (chance(g, 20)) return null;
  if (chance(g, 20)) return 'none';
  return chance(g, 30) ? 9000 : Math.max(1, pick(g, limitsMm) + pick(g, [0, 0, 1, -1]));
}

/** Near enough to the stacking aisle of VDI 2198 to land on it; the rule itself decides. */
function stackingWidthMm(truck: Truck, load: Load, policy: InForce): number {
  const kind: TruckKind = truck.kind;
  const turning = truck.turning;
  if (turning === null || kind === 'order-picker' || kind === 'narrow-aisle')
    return truck.statedAisleMm ?? 2700;
  const straight = kind === 'counterbalance' && load.widthMm <= 2 * turning.insideOffsetMm;
  const [along, across] =
    kind === 'counterbalance'
      ? [load.depthMm + turning.loadDistanceMm, load.widthMm / 2 - turning.insideOffsetMm]
      : [load.depthMm - turning.loadDistanceMm, load.widthMm / 2];
  const reach = straight ? turning.loadDistanceMm + load.depthMm : Math.sqrt(along ** 2 + across ** 2);
  return Math.max(turning.outsideRadiusMm + reach + policy.aisleClearanceMm, truck.statedAisleMm ?? 0);
}

function drawRun(d: Draw, at: number, loads: readonly Load[], placingClearanceMm: number): Run {
  const { g } = d;
  const bayCount = g(evenly, 2) + 1;
  return {
    id: `R${at}`,
    aisleId: pick(g, ['A0', 'A1']),
    frameDepthMm: easy(d, 800, () => pick(g, [800, 1000, 1001, 1200])),
    frames: listOf(bayCount + 1, (frame) => ({
      id: `R${at}-F${frame}`,
      typeId: pick(g, ['F0', 'F1']),
      condition: drawCondition(d),
    })),
    bays: listOf(bayCount, (bay) => drawBay(d, `R${at}-B${bay}`, loads, placingClearanceMm)),
    at: null,
  };
}

function drawCondition({ g, calm }: Draw): 'sound' | 'amber' | 'red' {
  return chance(g, calm ? 98 : 90) ? 'sound' : pick(g, ['amber', 'red'] as const);
}

function drawBay(d: Draw, id: string, loads: readonly Load[], placingClearanceMm: number): Bay {
  const { g } = d;
  const depthPositions = chance(g, 30) ? 2 : 1;
  const columns = g(evenly, 2) + (chance(g, 90) ? 1 : 0);
  const rough = [[1500], [1500, 3000], [2000, 3500.5], [1500, 2900, 4500]];
  const tops = easy(d, [2200, 4400], () => pick(g, rough)).map((top) => {
    // now and then a beam exactly as high as a load needs it
    const aimed = 100 + pick(g, loads).heightMm + Math.max(75, placingClearanceMm);
    return chance(g, 20) ? Math.max(top, aimed) : top;
  });
  const floor = chance(g, 70) ? [0] : [];
  const heights = [...floor, ...tops].filter((top, i, all) => i === 0 || top > Math.max(...all.slice(0, i)));
  const firstLevel = floor.length > 0 ? 0 : 1;
  const load = pick(g, loads);
  const widthsMm = [1, 2, 3].map((n) => n * load.widthMm + 75 * (n + 1));
  return {
    id,
    clearWidthMm: easy(d, 4400, () => pick(g, [2700, 4000, 4000, ...widthsMm]) + pick(g, [0, 0, 0, 1, -1])),
    maxBayLoadKg: orNull(g, 40, () => pick(g, [1000, 2000, 2700, 3000.5, 4000, 6000])),
    levels: heights.map((beamTopMm, i) =>
      drawLevel(d, `${id}-${firstLevel + i}`, firstLevel + i, { beamTopMm, depthPositions, columns }),
    ),
  };
}

/** A level; `idStem` begins the ids of its locations. */
export function drawLevel(
  d: Draw,
  idStem: string,
  level: number,
  given: { beamTopMm: number; depthPositions: 1 | 2; columns: number },
): Level {
  const { g } = d;
  return {
    level,
    beamTopMm: given.beamTopMm,
    beamHeightMm: pick(g, [100, 120]),
    pairCapacityKg: orNull(g, d.calm ? 4 : 15, () => pick(g, [900, 1000, 1800, 2000, 2333.3, 3000, 4500])),
    depthPositions: given.depthPositions,
    maxUnitKg: orNull(g, 40, () => pick(g, CAPACITIES_KG)),
    decked: chance(g, 30),
    condition: drawCondition(d),
    locations: listOf(given.columns * given.depthPositions, (i) => `${idStem}-${i}`),
  };
}

function drawOperator({ g, calm }: Draw, at: number): Operator {
  const everyKind = calm && chance(g, 80);
  return {
    id: `O${at}`,
    name: `Operator ${at}`,
    authorisations: everyKind
      ? TRUCK_KINDS.map((kind) => ({ kind, expires: null }))
      : listOf(g(evenly, 4), () => ({
          kind: pick(g, TRUCK_KINDS),
          expires: orNull(g, 40, () => pick(g, TIMES)),
        })),
  };
}

function drawCheck({ g }: Draw, trucks: readonly Truck[]): Check {
  const result = chance(g, 80) ? 'pass' : 'fail';
  return {
    truck: pick(g, trucks).id,
    at: pick(g, [...TIMES, '2026-03-01T17:59:59Z', '2026-03-01T05:00:00Z']),
    by: 'A person',
    result,
    defects: result === 'fail' ? ['Horn is dead.'] : [],
  };
}
