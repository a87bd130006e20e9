import type { Bay, Frame, Run } from '../model/racking.ts';
import { found, type SiteIndex } from '../model/site-index.ts';
import { addStanding, NOTHING_STANDS, type Standing, type StockView, standingOnBay } from './stand.ts';

/** One upright frame of a run with what bears on it. */
export type FrameLoad = {
  frame: Frame;
  /** What stands on the beam levels of the bays left and right of it; the frame carries half. */
  standing: Standing;
  /** Largest gap of those bays, mm; null when neither has beams. */
  largestGapMm: number | null;
  /** Rating that covers that gap, with its place in the frame type's list; null when none does. */
  rating: { capacityKg: number; maxGapMm: number; at: number } | null;
};

/**
 * What is the largest unsupported length of upright in a bay, mm?
 *
 * The largest of the first beam top above the floor and the distances between successive beam tops; null for a bay
 * without beams. Source: trade guides on frame tables (first beam height or pitch, whichever is larger).
 */
export function largestGapMm(bay: Bay): number | null {
  let below = 0;
  let largest: number | null = null;
  for (const level of bay.levels) {
    if (level.level === 0) continue;
    const gap = level.beamTopMm - below;
    if (largest === null || gap > largest) largest = gap;
    below = level.beamTopMm;
  }
  return largest;
}

/**
 * What may frame `frameIndex` of a run carry, and what stands on the bays it carries half of?
 *
 * The rating is the one with the smallest maxGapMm >= the largest gap of the two bays (equality counts): a table is
 * read at the next longer gap and never past its end. Of two ratings for the same gap the smaller counts.
 */
export function frameLoad(index: SiteIndex, run: Run, frameIndex: number, view: StockView): FrameLoad {
  const frame = run.frames[frameIndex]!;
  let standing = NOTHING_STANDS;
  let gap: number | null = null;
  for (const bay of [run.bays[frameIndex - 1], run.bays[frameIndex]]) {
    if (bay === undefined) continue;
    standing = addStanding(standing, standingOnBay(index, bay, view));
    const own = largestGapMm(bay);
    if (own !== null && (gap === null || own > gap)) gap = own;
  }
  return {
    frame,
    standing,
    largestGapMm: gap,
    rating: gap === null ? null : ratingForGap(index, frame.typeId, gap),
  };
}

/** The rating of a frame type with the smallest maxGapMm >= gapMm, or null when its table ends below. */
export function ratingForGap(index: SiteIndex, frameTypeId: string, gapMm: number): FrameLoad['rating'] {
  let best: FrameLoad['rating'] = null;
  for (const [at, rating] of found(index.frameTypes, frameTypeId, 'frame type').ratings.entries()) {
    if (rating.maxGapMm < gapMm) continue;
    const nearer = best === null || rating.maxGapMm < best.maxGapMm;
    const lower = best?.maxGapMm === rating.maxGapMm && rating.capacityKg < best.capacityKg;
    if (nearer || lower) best = { ...rating, at };
  }
  return best;
}
