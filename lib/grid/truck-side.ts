import { forkArmKg } from '../check/fork-arm.ts';
import { liftHeightMm } from '../check/lift-case.ts';
import { mastTopMm } from '../check/mast-top.ts';
import { plateRating, ratesForwardTilt } from '../check/plate-rating.ts';
import { certainAisleMm, stackingAisle } from '../check/stacking-aisle.ts';
import type { Context } from '../check/step.ts';
import { truckFitState } from '../check/truck-fit-state.ts';
import { instantMs } from '../model/quantities.ts';
import { found } from '../model/site-index.ts';
import type { Truck } from '../model/truck.ts';
import type { CompiledSite, LiftClass } from './compiled-site.ts';
import { type LoadShape, UNKNOWN_KG } from './load-columns.ts';
import { STEPS } from './mass-steps.ts';
import { CLOSE, NO_RULE, RULE, type Tally } from './tally.ts';

/** What of a truck does not depend on where and what it lifts, decided once for a question. */
export type TruckReady = {
  truck: Truck;
  fit: 'pass' | 'fail' | 'unknown' | 'not-asked';
  authorised: boolean | null;
};

/** Looks up the question's trucks and judges their fitness and the operator. Throws on an id the site does not have. */
export function readyTruck(site: CompiledSite, id: string, context: Context): TruckReady {
  const truck = found(site.trucks, id, 'truck');
  const asOfMs = context.asOf === null ? null : instantMs(context.asOf);
  if (Number.isNaN(asOfMs)) throw new Error(`asOf is not an ISO 8601 time: ${context.asOf}`);
  return {
    truck,
    fit: fitness(site, truck, asOfMs),
    authorised: authorisation(site, truck, context, asOfMs),
  };
}

function fitness(site: CompiledSite, truck: Truck, asOfMs: number | null): TruckReady['fit'] {
  if (asOfMs === null) return 'not-asked';
  switch (truckFitState(site.index, truck, asOfMs).state) {
    case 'in service':
      return 'pass';
    case 'held':
    case 'check failed':
      return 'fail';
    case 'never checked':
    case 'check too old':
      return 'unknown';
  }
}

function authorisation(
  site: CompiledSite,
  truck: Truck,
  { operator }: Context,
  asOfMs: number | null,
): boolean | null {
  if (operator === null) return null;
  return found(site.index.operators, operator, 'operator').authorisations.some(
    ({ kind, expires }) =>
      kind === truck.kind && (expires === null || asOfMs === null || asOfMs <= instantMs(expires)),
  );
}

/**
 * The truck's side of a lift, whatever the load weighs: one row per class and shape (a case) and truck, row = case x
 * trucks + truck. The tally holds the rules that weigh nothing; the limits are those of plate, tilt and fork arms.
 */
export type TruckSide = {
  verdict: Uint8Array;
  use: Float64Array;
  rule: Uint8Array;
  /** As in Tally: the truck's share of mostKg. */
  mostKg: Float64Array;
  /** Known limits in the order of the table, LIMITS to a row; Infinity where a rule does not apply or is unknown. */
  limitKg: Float64Array;
  /** The least of the limits and its rule. CLOSE where another limit is so near that uses may round to one number. */
  leastKg: Float64Array;
  leastRule: Uint8Array;
  /** What the row says of a load of any mass (mass-steps.ts); for a question about one load, of that load. */
  aboveKg: Float64Array;
  code: Uint16Array;
};

/** The truck's mass rules: plate, tilt, fork arms (both arms together). */
export const LIMIT_RULES = [RULE['plate-capacity'], RULE['tilt-capacity'], RULE['fork-arms']] as const;
export const LIMITS = LIMIT_RULES.length;

export function emptyTruckSide(rows: number): TruckSide {
  return {
    verdict: new Uint8Array(rows),
    use: new Float64Array(rows),
    rule: new Uint8Array(rows),
    mostKg: new Float64Array(rows),
    limitKg: new Float64Array(rows * LIMITS),
    leastKg: new Float64Array(rows),
    leastRule: new Uint8Array(rows),
    aboveKg: new Float64Array(rows * STEPS),
    code: new Uint16Array(rows * (STEPS + 1)),
  };
}

/** The same rows with room for more. */
export function growTruckSide(side: TruckSide, rows: number): TruckSide {
  const grown = emptyTruckSide(rows);
  for (const column of Object.keys(side) as (keyof TruckSide)[]) grown[column].set(side[column]);
  return grown;
}

/** Decides one row: may this truck lift a load of this shape at this class of location, mass apart? */
export function fillTruckSide(
  side: TruckSide,
  row: number,
  {
    site,
    tally,
    ready,
    at,
    shape,
  }: { site: CompiledSite; tally: Tally; ready: TruckReady; at: LiftClass; shape: LoadShape },
): void {
  const { truck } = ready;
  const { policy } = site.index;
  const liftMm = liftHeightMm(at.beamTopMm, shape.entryMm, policy.placingClearanceMm);
  tally.start();
  judgeTruck(tally, ready);
  tally.length(RULE['depth-reach'], at.row, truck.reachDepth);
  tally.length(RULE['lift-height'], liftMm, truck.maxLiftMm);
  const aisle = stackingAisle(truck, {
    loadDepthMm: shape.depthMm,
    loadWidthMm: shape.widthMm,
    aisleClearanceMm: policy.aisleClearanceMm,
  });
  const aisleMm = certainAisleMm(aisle, at.aisleClearMm);
  if (aisleMm === null) tally.unknown(RULE['aisle-turn']);
  else tally.length(RULE['aisle-turn'], aisleMm, at.aisleClearMm);
  const { verticalLoadCentreMm } = truck.plate;
  if (verticalLoadCentreMm !== null) {
    tally.length(RULE['centre-height'], shape.centreHeightMm, verticalLoadCentreMm);
  }
  const { lengthMm } = truck.forks;
  if (lengthMm === null) tally.unknown(RULE['fork-length']);
  else tally.length(RULE['fork-length'], policy.forkSupportFraction * shape.depthMm, lengthMm);
  judgeOverhead(tally, { truck, at, shape, liftMm, marginMm: policy.overheadMarginMm });

  const tilts = policy.tilt === 'as-rated' && ratesForwardTilt(truck);
  const armKg = forkArmKg(truck.forks, shape.centreMm);
  const limits = [
    provenKg(truck, 'vertical', liftMm, shape.centreMm),
    tilts ? provenKg(truck, 'forward-tilt', liftMm, shape.centreMm) : Number.POSITIVE_INFINITY,
    armKg === null ? null : 2 * armKg,
  ];
  for (const [i, rule] of LIMIT_RULES.entries()) {
    const limitKg = limits[i] ?? null;
    if (limitKg === null) tally.unknown(rule);
    else tally.leave(limitKg);
    side.limitKg[row * LIMITS + i] = limitKg ?? Number.POSITIVE_INFINITY;
  }
  side.verdict[row] = tally.verdict;
  side.use[row] = tally.use;
  side.rule[row] = tally.rule;
  side.mostKg[row] = tally.mostKg;
  fillLeast(side, row);
}

function judgeTruck(tally: Tally, { fit, authorised }: TruckReady): void {
  if (fit === 'unknown') tally.unknown(RULE['truck-fit']);
  else if (fit !== 'not-asked') tally.state(RULE['truck-fit'], fit === 'pass');
  if (authorised !== null) tally.state(RULE['operator-authorised'], authorised);
}

function judgeOverhead(
  tally: Tally,
  on: { truck: Truck; at: LiftClass; shape: LoadShape; liftMm: number; marginMm: number },
): void {
  const { truck, at, shape, liftMm, marginMm } = on;
  const clearMm = at.overheadClearMm;
  if (clearMm === 'none') return;
  const mastMm = mastTopMm(truck, liftMm);
  if (clearMm === null || mastMm === null) tally.unknown(RULE['mast-overhead']);
  else tally.length(RULE['mast-overhead'], mastMm + marginMm, clearMm);
  if (clearMm === null) tally.unknown(RULE['load-overhead']);
  else tally.length(RULE['load-overhead'], liftMm - shape.entryMm + shape.heightMm + marginMm, clearMm);
}

function provenKg(
  truck: Truck,
  mast: 'vertical' | 'forward-tilt',
  liftMm: number,
  centreMm: number,
): number | null {
  const plate = plateRating(truck, mast, liftMm, centreMm);
  return plate.kind === 'proven' ? plate.rating.capacityKg : null;
}

/**
 * The least limit decides among the mass rules: it fails first, is thin first and has the highest use. Only two
 * limits that differ by a few bits may round to the same use, and then the order of the table decides: CLOSE.
 */
function fillLeast(side: TruckSide, row: number): void {
  let leastKg = Number.POSITIVE_INFINITY;
  let rule = NO_RULE;
  for (const [i, limitRule] of LIMIT_RULES.entries()) {
    const limitKg = side.limitKg[row * LIMITS + i]!;
    if (limitKg < leastKg) {
      leastKg = limitKg;
      rule = limitRule;
    }
  }
  for (let i = 0; i < LIMITS; i += 1) {
    const limitKg = side.limitKg[row * LIMITS + i]!;
    if (limitKg > leastKg && limitKg <= leastKg * (1 + 8 * Number.EPSILON)) rule = CLOSE;
  }
  side.leastKg[row] = leastKg;
  side.leastRule[row] = rule;
}

/** The truck's side with the load's mass (UNKNOWN_KG: not known), left in the tally. */
export function weighAllLimits(tally: Tally, side: TruckSide, row: number, assessedKg: number): void {
  tally.start();
  tally.add(side.verdict[row]!, side.use[row]!, side.rule[row]!);
  const massKg = assessedKg === UNKNOWN_KG ? Number.NaN : assessedKg;
  for (const [i, rule] of LIMIT_RULES.entries()) {
    const limitKg = side.limitKg[row * LIMITS + i]!;
    if (limitKg < Number.POSITIVE_INFINITY) tally.mass(rule, massKg, limitKg);
  }
}
