import { type Band, type Elevation, firstBayBeyond } from '@/app/racks/elevation.ts';
import { mmAt, pxX, pxY, type Viewport } from '@/app/racks/viewport.ts';

/** Marks a cell that has no answer (nothing stands there). Same value as lib/grid's. */
export const NO_CODE = 255;

/** A rectangle of one colour on the canvas, in px. `cell`: its site-order index when it is one whole cell, else -1. */
export type ColourRun = { x: number; y: number; width: number; height: number; code: number; cell: number };

/** Cells narrower than this are merged with equal neighbours: borders between them could not be seen. */
const MERGE_BELOW_PX = 4;
/** Bays narrower than this share one column of the picture, which shows the worst of them. */
const SHARE_BELOW_PX = 2;

/**
 * What colours does a window on a run show?
 *
 * codes: one byte per location in site order, larger is worse, NO_CODE none. Each cell is a rectangle of its own while
 * it can be told apart; narrower cells merge with equal neighbours; bays under 2 px share a column that shows the
 * worst code of each level, so that trouble is never drawn over. Never more rectangles than levels x px.
 */
export function paintCells(elevation: Elevation, row: 1 | 2, codes: Uint8Array, view: Viewport): ColourRun[] {
  const left = mmAt(view, { x: 0, y: 0 }).xMm;
  const right = mmAt(view, { x: view.widthPx, y: 0 }).xMm;
  const out: ColourRun[] = [];
  let bayAt = firstBayBeyond(elevation.bays, left);
  while (bayAt < elevation.bays.length && elevation.bays[bayAt]!.xMm < right) {
    const bay = elevation.bays[bayAt]!;
    if (bay.widthMm * view.pxPerMm >= SHARE_BELOW_PX) {
      for (const band of bay.bands) if (band.row === row) paintBand(band, codes, view, out);
      bayAt++;
    } else {
      bayAt = paintShared(elevation, row, codes, view, bayAt, out);
    }
  }
  return out;
}

function paintBand(band: Band, codes: Uint8Array, view: Viewport, out: ColourRun[]): void {
  const top = pxY(view, band.yMm + band.heightMm);
  const bottom = pxY(view, band.yMm);
  if (bottom < 0 || top > view.heightPx) return;
  const merge = band.cellMm * view.pxPerMm < MERGE_BELOW_PX;
  let from = 0;
  for (let at = 1; at <= band.count; at++) {
    const code = codes[band.firstPlace + from] ?? NO_CODE;
    if (merge && at < band.count && (codes[band.firstPlace + at] ?? NO_CODE) === code) continue;
    const x = pxX(view, band.xMm + from * band.cellMm);
    const end = pxX(view, band.xMm + at * band.cellMm);
    const cell = at - from === 1 ? band.firstPlace + from : -1;
    if (end > 0 && x < view.widthPx)
      out.push({ x, y: top, width: end - x, height: bottom - top, code, cell });
    from = at;
  }
}

/** Paints the bays that fall into one narrow column together; returns the first bay beyond it. */
function paintShared(
  elevation: Elevation,
  row: 1 | 2,
  codes: Uint8Array,
  view: Viewport,
  firstBay: number,
  out: ColourRun[],
): number {
  const x = pxX(view, elevation.bays[firstBay]!.xMm);
  const worst: { code: number; band: Band }[] = [];
  let bayAt = firstBay;
  for (; bayAt < elevation.bays.length; bayAt++) {
    const bay = elevation.bays[bayAt]!;
    if (bayAt > firstBay && pxX(view, bay.xMm + bay.widthMm) > x + SHARE_BELOW_PX) break;
    for (const band of bay.bands) {
      if (band.row !== row) continue;
      const seen = worst[band.level];
      const code = worstOf(codes, band, seen?.code ?? NO_CODE);
      worst[band.level] = { code, band: seen?.band ?? band };
    }
  }
  const last = elevation.bays[bayAt - 1]!;
  const width = Math.max(1, pxX(view, last.xMm + last.widthMm) - x);
  for (const entry of worst) {
    if (entry === undefined) continue;
    const y = pxY(view, entry.band.yMm + entry.band.heightMm);
    out.push({ x, y, width, height: pxY(view, entry.band.yMm) - y, code: entry.code, cell: -1 });
  }
  return bayAt;
}

function worstOf(codes: Uint8Array, band: Band, before: number): number {
  let worst = before;
  for (let at = 0; at < band.count; at++) {
    const code = codes[band.firstPlace + at] ?? NO_CODE;
    if (code !== NO_CODE && (worst === NO_CODE || code > worst)) worst = code;
  }
  return worst;
}

/** Which location lies under a point of the window? Its site-order index, or null between the cells. */
export function cellAt(
  elevation: Elevation,
  row: 1 | 2,
  view: Viewport,
  atPx: { x: number; y: number },
): number | null {
  const { xMm, yMm } = mmAt(view, atPx);
  const bay = elevation.bays[firstBayBeyond(elevation.bays, xMm)];
  if (bay === undefined || xMm < bay.xMm) return null;
  for (const band of bay.bands) {
    if (band.row !== row || yMm < band.yMm || yMm >= band.yMm + band.heightMm) continue;
    const column = Math.floor((xMm - band.xMm) / band.cellMm);
    if (column >= 0 && column < band.count) return band.firstPlace + column;
  }
  return null;
}
