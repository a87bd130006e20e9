import type { Run } from '@/lib/model/racking.ts';

/** A run as a small raster, floor at the bottom: one column a position, one line a level (two where levels are two deep). */
export type Strip = {
  runId: string;
  columns: number;
  lines: number;
  /** Site-order index of the location in each cell, top line first; NO_PLACE where there is none. */
  placeAt: Int32Array;
};

export const NO_PLACE = -1;

/**
 * Which location stands in which cell of a run's strip?
 *
 * A bay is as many columns wide as its widest level has positions; a level with fewer spreads over them. On a level two
 * deep the rear row lies above the front row.
 */
export function stripOf(run: Run, firstPlace: number): Strip {
  const perRow = (level: Run['bays'][number]['levels'][number]) =>
    level.locations.length / level.depthPositions;
  const widths = run.bays.map((bay) => Math.max(1, ...bay.levels.map(perRow)));
  const deep = run.bays.some((bay) => bay.levels.some((level) => level.depthPositions === 2)) ? 2 : 1;
  const levels = Math.max(1, ...run.bays.map((bay) => bay.levels.length));
  const columns = widths.reduce((sum, width) => sum + width, 0);
  const lines = levels * deep;
  const placeAt = new Int32Array(columns * lines).fill(NO_PLACE);
  let place = firstPlace;
  let left = 0;
  for (const [bayAt, bay] of run.bays.entries()) {
    const width = widths[bayAt]!;
    for (const [levelAt, level] of bay.levels.entries()) {
      const count = perRow(level);
      for (let row = 0; row < level.depthPositions; row++) {
        // a level one deep in a run two deep fills both its lines
        const over = level.depthPositions === 1 ? deep : 1;
        for (let line = 0; line < over; line++) {
          const up = levelAt * deep + row + line;
          for (let column = 0; column < width && count > 0; column++)
            placeAt[(lines - 1 - up) * columns + left + column] =
              place + Math.floor((column * count) / width);
        }
        place += count;
      }
    }
    left += width;
  }
  return { runId: run.id, columns, lines, placeAt };
}

/** The location under a point of a strip drawn with cells of this size, or null. */
export function placeUnder(
  strip: Strip,
  cell: { widthPx: number; heightPx: number },
  at: { x: number; y: number },
): number | null {
  const column = Math.floor(at.x / cell.widthPx);
  const line = Math.floor(at.y / cell.heightPx);
  if (column < 0 || column >= strip.columns || line < 0 || line >= strip.lines) return null;
  const place = strip.placeAt[line * strip.columns + column]!;
  return place === NO_PLACE ? null : place;
}
