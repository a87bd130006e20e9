import type { CellSize } from './paint-strip.ts';
import type { Strip } from './strip.ts';

const LARGEST_PX = 13;

/** How large can cells be drawn so that two of the longest strips stand side by side in a width? At least 1 px wide, 4 px high. */
export function cellSize(
  strips: readonly Strip[],
  widthPx: number,
  sideBySide: number,
  gapPx: number,
): CellSize {
  const longest = Math.max(1, ...strips.map(({ columns }) => columns));
  const room = (widthPx - gapPx * (sideBySide - 1)) / sideBySide;
  const wide = Math.max(1, Math.min(LARGEST_PX, Math.floor(room / longest)));
  return { widthPx: wide, heightPx: Math.max(4, Math.min(LARGEST_PX, wide)) };
}
