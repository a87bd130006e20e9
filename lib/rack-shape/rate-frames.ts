import type { Run } from '../model/racking.ts';
import type { Site } from '../model/site.ts';
import { indexSite } from '../model/site-index.ts';
import { frameLoad } from '../rack/frame-load.ts';

/** Frames of a run that have the same largest gap beside them and the same rating for it; null: no beams, no rating. */
export type FrameRating = { typeId: string; gapMm: number | null; ratingKg: number | null; count: number };

/** Which ratings apply to the frames of a run as it is drawn? */
export function rateFrames(site: Site, run: Run): FrameRating[] {
  const index = indexSite({ ...site, runs: [run], stock: [] });
  const ratings: FrameRating[] = [];
  for (const [at, frame] of run.frames.entries()) {
    const { largestGapMm: gapMm, rating } = frameLoad(index, run, at, { stock: 'empty', from: null });
    const ratingKg = rating?.capacityKg ?? null;
    const same = ratings.find(
      (entry) => entry.typeId === frame.typeId && entry.gapMm === gapMm && entry.ratingKg === ratingKg,
    );
    if (same === undefined) ratings.push({ typeId: frame.typeId, gapMm, ratingKg, count: 1 });
    else same.count += 1;
  }
  return ratings;
}
