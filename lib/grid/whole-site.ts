import type { Context } from '../check/step.ts';
import { type CompiledSite, EMPTY, locationCountOf } from './compiled-site.ts';
import { findKinds, noKinds } from './lift-kinds.ts';
import { UNKNOWN_KG } from './load-columns.ts';
import { fillMassSteps } from './mass-steps.ts';
import { NO_ANSWER } from './question.ts';
import { NO_TRUCK } from './summary.ts';
import { type BestTruck, bestTruckFor, type KindSteps, stepsOfKind } from './take-down-steps.ts';
import { ruleOf, Tally, verdictOf } from './tally.ts';
import { emptyTruckSide, fillTruckSide, readyTruck, type TruckReady, type TruckSide } from './truck-side.ts';

/** Who may take down what stands: these trucks, judged at a time and for an operator where they are given. */
export type TakeDownQuestion = { trucks: readonly string[] } & Pick<Context, 'asOf' | 'operator'>;

/** Pieces into which the masses of one kind are cut, so that a look-up starts beside its step. */
const BUCKETS = 256;

/**
 * Every question about who can take down what stands, worked out per kind of lift (class of location and shape of
 * load) and step of mass. Between two steps nothing changes: not the number of able trucks, the best of them, the
 * rule that decides for it, nor what it could lift.
 */
export type TakeDownTables = {
  site: CompiledSite;
  /** The kind of lift at each location; NO_KIND where nothing stands. */
  kindOf: Uint32Array;
  /** Per kind: its least mass, buckets per kg, and the row that answers a load of unknown mass. */
  fromKg: Float64Array;
  perKg: Float64Array;
  unknownRow: Uint32Array;
  /** The row at which a look-up starts, BUCKETS to a kind. */
  startRow: Uint32Array;
  /** Per step: up to and including which mass it holds, kg, and what it says. */
  upToKg: Float64Array;
  able: Uint16Array;
  code: Uint16Array;
  bestTruck: Int16Array;
  mostKg: Float64Array;
  /** Kinds with limits so near each other that their steps are not clean: asked truck by truck. */
  asked: Map<number, TruckSide>;
  tally: Tally;
  truckCount: number;
};

/** Who can take down what stands in each location; a location where nothing stands has NO_ANSWER. */
export type TakeDownAnswer = {
  /** How many trucks are clear or thin. */
  able: Uint16Array;
  /** The best truck: best verdict, then the most mass, then the first; a column of the question, or NO_TRUCK. */
  bestTruck: Int16Array;
  /** Its verdict and governing rule, as indexes into VERDICTS and RULE_IDS. */
  verdict: Uint8Array;
  governing: Uint8Array;
  /** What it could lift beyond this load, kg (below 0: what is too much); NaN where it cannot be said. */
  marginKg: Float64Array;
};

/**
 * Works the tables out. Time grows with the kinds times the trucks; the masses of a kind's own loads bound its steps,
 * so memory never outgrows the loads.
 */
export function compileTakeDown(site: CompiledSite, question: TakeDownQuestion): TakeDownTables {
  const context: Context = { ...question, operation: 'retrieve', stock: 'as-is', from: null };
  const trucks = question.trucks.map((id) => readyTruck(site, id, context));
  const locationCount = locationCountOf(site);
  const kinds = noKinds(locationCount);
  findKinds(site, kinds, null, 0, locationCount);
  const kindCount = kinds.list.length;
  const masses = massesOfKinds(site, kinds.kindOf, kindCount);
  const tally = new Tally(site.index.policy);
  const asked = new Map<number, TruckSide>();
  const perKind: KindSteps[] = [];
  let side = emptyTruckSide(trucks.length);
  for (const [kind, { classRow, shape }] of kinds.list.entries()) {
    fillSide(side, { site, tally, trucks, at: site.classes[classRow]!, shape });
    const steps = stepsOfKind(side, tally, masses.fromKg[kind]!, masses.toKg[kind]!);
    perKind.push(steps);
    if (steps.clean) continue;
    asked.set(kind, side);
    side = emptyTruckSide(trucks.length);
  }
  return {
    site,
    kindOf: kinds.kindOf,
    ...joinKinds(perKind, masses),
    asked,
    tally,
    truckCount: trucks.length,
  };
}

type Masses = { fromKg: Float64Array; toKg: Float64Array };

/** The least and the largest known mass of each kind; fromKg above toKg where none is known. */
function massesOfKinds(site: CompiledSite, kindOf: Uint32Array, kindCount: number): Masses {
  const fromKg = new Float64Array(kindCount).fill(Number.POSITIVE_INFINITY);
  const toKg = new Float64Array(kindCount).fill(Number.NEGATIVE_INFINITY);
  const { assessedKg } = site.loads;
  for (let location = 0; location < kindOf.length; location += 1) {
    const load = site.standing[location]!;
    if (load === EMPTY) continue;
    const kg = assessedKg[load]!;
    if (kg === UNKNOWN_KG) continue;
    const kind = kindOf[location]!;
    if (kg < fromKg[kind]!) fromKg[kind] = kg;
    if (kg > toKg[kind]!) toKg[kind] = kg;
  }
  return { fromKg, toKg };
}

type SideOf = Omit<Parameters<typeof fillTruckSide>[2], 'ready'> & { trucks: readonly TruckReady[] };

function fillSide(side: TruckSide, { trucks, ...on }: SideOf): void {
  for (const [row, ready] of trucks.entries()) {
    fillTruckSide(side, row, { ...on, ready });
    fillMassSteps(side, row, on.site.index.policy.thinPercent);
  }
}

/** Lays the steps of all kinds end to end, and finds where each bucket of masses starts. */
function joinKinds(perKind: readonly KindSteps[], { fromKg, toKg }: Masses) {
  const rows = perKind.reduce((sum, { says }) => sum + says.length, 0);
  const tables = {
    fromKg,
    perKg: new Float64Array(perKind.length),
    unknownRow: new Uint32Array(perKind.length),
    startRow: new Uint32Array(perKind.length * BUCKETS),
    upToKg: new Float64Array(rows),
    able: new Uint16Array(rows),
    code: new Uint16Array(rows),
    bestTruck: new Int16Array(rows),
    mostKg: new Float64Array(rows),
  };
  let row = 0;
  for (const [kind, { upToKg, says }] of perKind.entries()) {
    const perKg = toKg[kind]! > fromKg[kind]! ? (BUCKETS - 1) / (toKg[kind]! - fromKg[kind]!) : 0;
    tables.perKg[kind] = perKg;
    const firstRow = row;
    for (const [step, says1] of says.entries()) {
      writeStep(tables, row, upToKg[step]!, says1);
      row += 1;
    }
    tables.unknownRow[kind] = row - 1; // the last step answers a mass that is not known
    let start = firstRow;
    for (let bucket = 0; bucket < BUCKETS; bucket += 1) {
      while (start < row - 2 && bucketOf(tables.upToKg[start]!, fromKg[kind]!, perKg) < bucket) start += 1;
      tables.startRow[kind * BUCKETS + bucket] = start;
    }
  }
  return tables;
}

function writeStep(
  tables: Pick<TakeDownTables, 'upToKg' | 'able' | 'code' | 'bestTruck' | 'mostKg'>,
  row: number,
  upToKg: number,
  says: BestTruck,
): void {
  tables.upToKg[row] = upToKg;
  tables.able[row] = says.able;
  tables.code[row] = says.code;
  tables.bestTruck[row] = says.truck;
  tables.mostKg[row] = says.mostKg;
}

/** A mass's bucket. The same for a mass and for the end of a step, so that no rounding parts the two. */
function bucketOf(kg: number, fromKg: number, perKg: number): number {
  return Math.min(BUCKETS - 1, Math.trunc((kg - fromKg) * perKg));
}

export function emptyTakeDownAnswer(locationCount: number): TakeDownAnswer {
  return {
    able: new Uint16Array(locationCount),
    bestTruck: new Int16Array(locationCount),
    verdict: new Uint8Array(locationCount),
    governing: new Uint8Array(locationCount),
    marginKg: new Float64Array(locationCount),
  };
}

/**
 * Who can take down what stands in each location: how many, who best, decided by what, with what margin?
 *
 * One look-up a location. The counts, verdicts, rules and margins are those of checkLift for every truck in turn.
 */
export function answerTakeDown(
  tables: TakeDownTables,
  answer: TakeDownAnswer = emptyTakeDownAnswer(tables.kindOf.length),
): TakeDownAnswer {
  const { site, kindOf, fromKg, perKg, unknownRow, startRow, upToKg, asked } = tables;
  const { standing, loads } = site;
  const { assessedKg } = loads;
  const { able, code, bestTruck, mostKg } = tables;
  for (let location = 0; location < kindOf.length; location += 1) {
    const load = standing[location]!;
    if (load === EMPTY) {
      leaveOut(answer, location);
      continue;
    }
    const kind = kindOf[location]!;
    const massKg = assessedKg[load]!;
    let row = unknownRow[kind]!;
    if (massKg !== UNKNOWN_KG) {
      row = startRow[kind * BUCKETS + bucketOf(massKg, fromKg[kind]!, perKg[kind]!)]!;
      while (massKg > upToKg[row]!) row += 1;
    }
    answer.able[location] = able[row]!;
    answer.bestTruck[location] = bestTruck[row]!;
    answer.verdict[location] = verdictOf(code[row]!);
    answer.governing[location] = ruleOf(code[row]!);
    answer.marginKg[location] = massKg === UNKNOWN_KG ? Number.NaN : mostKg[row]! - massKg;
  }
  if (asked.size > 0) askTrucks(tables, answer);
  return answer;
}

function leaveOut(answer: TakeDownAnswer, location: number): void {
  answer.able[location] = 0;
  answer.bestTruck[location] = NO_TRUCK;
  answer.verdict[location] = NO_ANSWER;
  answer.governing[location] = NO_ANSWER;
  answer.marginKg[location] = Number.NaN;
}

/** The few locations whose kind has no clean steps: every truck is asked about the load's own mass. */
function askTrucks(tables: TakeDownTables, answer: TakeDownAnswer): void {
  const { site, kindOf, asked, tally } = tables;
  for (let location = 0; location < kindOf.length; location += 1) {
    const side = asked.get(kindOf[location]!);
    if (side === undefined) continue;
    const massKg = site.loads.assessedKg[site.standing[location]!]!;
    const says = bestTruckFor(side, tally, massKg);
    answer.able[location] = says.able;
    answer.bestTruck[location] = says.truck;
    answer.verdict[location] = verdictOf(says.code);
    answer.governing[location] = ruleOf(says.code);
    answer.marginKg[location] = massKg === UNKNOWN_KG ? Number.NaN : says.mostKg - massKg;
  }
}
