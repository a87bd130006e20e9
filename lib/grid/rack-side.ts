import { clearancesFor } from '../check/clearances.ts';
import { openingWidthMm } from '../check/rules/opening-width.ts';
import type { Context } from '../check/step.ts';
import { roomKg } from '../rack/stand.ts';
import { sumLevel } from './compile-site.ts';
import { type CompiledSite, NO_BAY } from './compiled-site.ts';
import { type LoadShape, UNKNOWN_KG } from './load-columns.ts';
import { RULE, type Tally } from './tally.ts';

/** The racks' side of a lift: a verdict of the racks' rules and what they leave of mostKg (as in Tally), per location. */
export type RackSide = { verdict: Uint8Array; use: Float64Array; rule: Uint8Array; mostKg: Float64Array };

export function emptyRackSide(locationCount: number): RackSide {
  return {
    verdict: new Uint8Array(locationCount),
    use: new Float64Array(locationCount),
    rule: new Uint8Array(locationCount),
    mostKg: new Float64Array(locationCount),
  };
}

/** What is placed or taken on the rack's side: the load's shape and mass (UNKNOWN_KG where it is not known). */
export type RackLoad = { shape: LoadShape; assessedKg: number };

/**
 * The rack's side of a lift at one level, slot-free apart: openings, support, notice, sums and condition. `without` is
 * the location whose pallet does not count in the sums (NOWHERE: none). Adds to the tally, which the caller starts.
 */
export function judgeLevel(
  tally: Tally,
  site: CompiledSite,
  level: number,
  load: RackLoad,
  context: Context,
  without: number,
): void {
  if (context.operation === 'retrieve') {
    tally.state(RULE['rack-condition'], true);
    return;
  }
  judgeOpening(tally, site, level, load.shape);
  const facts = site.levels[level]!;
  if (facts.level > 0) {
    const bay = site.bays[site.bayOf[level]!]!;
    if (!facts.decked) tally.length(RULE['pallet-support'], bay.run.frameDepthMm, load.shape.supportDepthMm);
    judgeMasses(tally, site, level, load.assessedKg, context.stock === 'empty' ? null : without);
  }
  tally.state(RULE['rack-condition'], site.unsound[level] === 0);
}

function judgeOpening(tally: Tally, site: CompiledSite, level: number, shape: LoadShape): void {
  const { policy } = site.index;
  const facts = site.levels[level]!;
  const { bay, aisle } = site.bays[site.bayOf[level]!]!;
  const clearances = clearancesFor(policy.clearanceClass, facts.beamTopMm, shape.heightMm);
  const openingMm = site.openingMm[level]!;
  if (openingMm === Number.POSITIVE_INFINITY) {
    if (aisle.sprinklerMm === null) tally.unknown(RULE['sprinkler-clearance']);
    else if (aisle.sprinklerMm !== 'none') {
      const needMm = facts.beamTopMm + shape.heightMm + policy.sprinklerClearanceMm;
      tally.length(RULE['sprinkler-clearance'], needMm, aisle.sprinklerMm);
    }
  } else {
    const needMm = shape.heightMm + Math.max(clearances.yMm, policy.placingClearanceMm);
    tally.length(RULE['opening-height'], needMm, openingMm);
  }
  const perRow = facts.locations.length / facts.depthPositions;
  const widthMm = openingWidthMm(perRow, shape.widthMm, clearances.x3Mm, clearances.x4Mm);
  tally.length(RULE['opening-width'], widthMm, bay.clearWidthMm);
}

/** The notice and the sums of a beam level; `without` null: the racks are taken as empty. */
function judgeMasses(
  tally: Tally,
  site: CompiledSite,
  level: number,
  assessedKg: number,
  without: number | null,
): void {
  const massKg = assessedKg === UNKNOWN_KG ? Number.NaN : assessedKg;
  const bay = site.bayOf[level]!;
  const { maxUnitKg, pairCapacityKg } = site.levels[level]!;
  const { maxBayLoadKg } = site.bays[bay]!.bay;
  if (maxUnitKg !== null) {
    tally.mass(RULE['unit-load'], massKg, maxUnitKg);
    tally.leave(maxUnitKg);
  }
  const levelKg = without === null ? 0 : levelKgWithout(site, level, without);
  judgeSum(tally, RULE['beam-level'], levelKg, massKg, pairCapacityKg ?? Number.NaN);
  if (maxBayLoadKg !== null) {
    const bayKg = without === null ? 0 : bayKgWithout(site, bay, without);
    judgeSum(tally, RULE['bay-load'], bayKg, massKg, maxBayLoadKg);
  }
  judgeFrames(tally, site, bay, massKg, without);
}

function judgeSum(tally: Tally, rule: number, othersKg: number, massKg: number, limitKg: number): void {
  if (Number.isNaN(othersKg) || Number.isNaN(limitKg)) {
    tally.unknown(rule);
  } else {
    tally.mass(rule, othersKg + massKg, limitKg);
    tally.leave(roomKg(limitKg, othersKg));
  }
}

/** Fails if either frame fails, else unknown if either is: the tally keeps the worse. */
function judgeFrames(
  tally: Tally,
  site: CompiledSite,
  bay: number,
  massKg: number,
  without: number | null,
): void {
  const rule = RULE['frame-load'];
  const left = site.leftFrame[bay]!;
  for (let frame = left; frame <= left + 1; frame += 1) {
    const ratingKg = site.frameRatingKg[frame]!;
    const othersKg = without === null ? 0 : frameKgWithout(site, frame, without);
    if (Number.isNaN(othersKg) || Number.isNaN(ratingKg)) {
      tally.unknown(rule);
    } else {
      tally.mass(rule, (othersKg + massKg) / 2, ratingKg);
      tally.leave(roomKg(2 * ratingKg, othersKg));
    }
  }
}

/** What stands on the beam levels of the bays beside a frame, the left one first. */
function frameKgWithout(site: CompiledSite, frame: number, without: number): number {
  const left = site.frameBays[2 * frame]!;
  const right = site.frameBays[2 * frame + 1]!;
  const leftKg = left === NO_BAY ? 0 : bayKgWithout(site, left, without);
  return right === NO_BAY ? leftKg : leftKg + bayKgWithout(site, right, without);
}

/** The bay's sum; summed anew, in the same order, where the location left out is one of its own. */
function bayKgWithout(site: CompiledSite, bay: number, without: number): number {
  const first = site.firstLevel[bay]!;
  const end = site.firstLevel[bay + 1]!;
  if (without < site.firstLocation[first]! || without >= site.firstLocation[end]!) return site.bayKg[bay]!;
  let sum = 0;
  for (let level = first; level < end; level += 1) {
    if (site.levels[level]!.level > 0) sum += levelKgWithout(site, level, without);
  }
  return sum;
}

function levelKgWithout(site: CompiledSite, level: number, without: number): number {
  if (without < site.firstLocation[level]! || without >= site.firstLocation[level + 1]!)
    return site.levelKg[level]!;
  return sumLevel(site, level, without);
}
