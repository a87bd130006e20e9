import type { HandPick } from '../model/load.ts';
import type { Bay, Level } from '../model/racking.ts';
import { type HandLift, rankOf } from './hand-lift.ts';
import { HIGHEST_HANDS_MM } from './multipliers.ts';
import { handPickFrom } from './pick-face.ts';

/** Heights are tried this far apart: finer than anybody sets a beam (beams are hung in steps of 50 mm or so). */
const STEP_MM = 10;

export type RankedLevel = { level: Level; lift: HandLift };

/** On which level of this bay is one case of this load lightest to lift? Least index first; ties: the lower level. */
export function rankLevels(bay: Bay, pick: HandPick): RankedLevel[] {
  return bay.levels
    .map((level) => ({ level, lift: handPickFrom(level.beamTopMm, pick).origin }))
    .sort((a, b) => compare(rankOf(a.lift), rankOf(b.lift)) || a.level.beamTopMm - b.level.beamTopMm);
}

export type BestHeight = {
  /** Where the pallet would have to stand, mm above the floor. */
  beamTopMm: number;
  lift: HandLift;
  /** Heights to stand the pallet on at which the index is at most 1, lowest first; empty: at none. */
  withinLimit: readonly { fromMm: number; toMm: number }[];
};

/**
 * At what height would the pallet have to stand for the least lifting index? Tried every 10 mm from the floor up to
 * hands at 175 cm; ties: the lower. All else stays as it is, the grip on the load included.
 */
export function bestHeight(pick: HandPick): BestHeight {
  let best = { beamTopMm: 0, lift: handPickFrom(0, pick).origin };
  const withinLimit: { fromMm: number; toMm: number }[] = [];
  let open = false;
  for (let beamTopMm = 0; beamTopMm + pick.gripHeightMm <= HIGHEST_HANDS_MM; beamTopMm += STEP_MM) {
    const lift = handPickFrom(beamTopMm, pick).origin;
    if (rankOf(lift) < rankOf(best.lift)) best = { beamTopMm, lift };
    const within = rankOf(lift) <= 1;
    if (within && !open) withinLimit.push({ fromMm: beamTopMm, toMm: beamTopMm });
    if (within) withinLimit.at(-1)!.toMm = beamTopMm;
    open = within;
  }
  return { ...best, withinLimit };
}

// Subtracting two infinities would give NaN and break the sort.
function compare(a: number, b: number): number {
  return a === b ? 0 : a < b ? -1 : 1;
}
