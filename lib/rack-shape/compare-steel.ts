import type { Bay } from '../model/racking.ts';
import { indexSite, type SiteIndex } from '../model/site-index.ts';
import { frameLoad, largestGapMm } from '../rack/frame-load.ts';
import type { BeforeAfter } from './site-of-run.ts';

/** A figure before and after; null: there is none (a top level has no opening; a frame may have no rating for its gap). */
export type Figure = { before: number | null; after: number | null };

/** Bays side by side, by their ids after the change, in which the same figure changes in the same way. */
export type OpeningChange = { firstBay: string; lastBay: string; level: number; mm: Figure };
export type GapChange = { firstBay: string; lastBay: string; mm: Figure };
export type FrameChange = { firstFrame: string; lastFrame: string; gapMm: Figure; ratingKg: Figure };

export type SteelComparison = { openings: OpeningChange[]; gaps: GapChange[]; frames: FrameChange[] };

/**
 * Which openings, largest gaps and frame ratings does a change touch? Only steel that stood before and still stands is
 * compared. A frame's rating is the one that its type states for the largest gap beside it; null where none reaches.
 */
export function compareSteel({ before, after, links }: BeforeAfter): SteelComparison {
  const result: SteelComparison = { openings: [], gaps: [], frames: [] };
  const [was, is] = [before?.runs[0], after?.runs[0]];
  if (before === null || after === null || was === undefined || is === undefined) return result;
  for (const [at, bay] of is.bays.entries()) {
    const saved = was.bays[links.bays[at] ?? -1];
    if (saved === undefined) continue;
    compareOpenings(saved, bay, is.bays[at - 1]?.id ?? null, result.openings);
    const mm = { before: largestGapMm(saved), after: largestGapMm(bay) };
    const last = result.gaps.at(-1);
    if (mm.before === mm.after) continue;
    if (last !== undefined && last.lastBay === is.bays[at - 1]?.id && sameFigure(last.mm, mm))
      last.lastBay = bay.id;
    else result.gaps.push({ firstBay: bay.id, lastBay: bay.id, mm });
  }
  compareFrames(indexSite(before), indexSite(after), links.frames, result.frames);
  return result;
}

function compareOpenings(saved: Bay, bay: Bay, bayBefore: string | null, out: OpeningChange[]): void {
  const levels = new Set([...saved.levels, ...bay.levels].map((level) => level.level));
  for (const level of [...levels].sort((a, b) => a - b)) {
    const mm = { before: openingMm(saved, level), after: openingMm(bay, level) };
    if (mm.before === mm.after) continue;
    const last = out.findLast((entry) => entry.level === level);
    if (last !== undefined && last.lastBay === bayBefore && sameFigure(last.mm, mm)) last.lastBay = bay.id;
    else out.push({ firstBay: bay.id, lastBay: bay.id, level, mm });
  }
}

/** Next level's beam top - its beam height - this beam top, mm; null for the top level and where there is no such level. */
export function openingMm(bay: Bay, level: number): number | null {
  const at = bay.levels.findIndex((entry) => entry.level === level);
  const [here, above] = [bay.levels[at], bay.levels[at + 1]];
  return here === undefined || above === undefined
    ? null
    : above.beamTopMm - above.beamHeightMm - here.beamTopMm;
}

const EMPTY_RACKS = { stock: 'empty', from: null } as const;

function compareFrames(
  before: SiteIndex,
  after: SiteIndex,
  frames: readonly (number | null)[],
  out: FrameChange[],
): void {
  const [was, is] = [before.site.runs[0]!, after.site.runs[0]!];
  for (const [at, frame] of is.frames.entries()) {
    const saved = frames[at];
    if (saved === null || saved === undefined) continue;
    const [old, now] = [frameLoad(before, was, saved, EMPTY_RACKS), frameLoad(after, is, at, EMPTY_RACKS)];
    const gapMm = { before: old.largestGapMm, after: now.largestGapMm };
    const ratingKg = { before: old.rating?.capacityKg ?? null, after: now.rating?.capacityKg ?? null };
    if (gapMm.before === gapMm.after && ratingKg.before === ratingKg.after) continue;
    const last = out.at(-1);
    const beside = last !== undefined && last.lastFrame === is.frames[at - 1]?.id;
    if (beside && sameFigure(last.gapMm, gapMm) && sameFigure(last.ratingKg, ratingKg))
      last.lastFrame = frame.id;
    else out.push({ firstFrame: frame.id, lastFrame: frame.id, gapMm, ratingKg });
  }
}

function sameFigure(a: Figure, b: Figure): boolean {
  return a.before === b.before && a.after === b.after;
}
