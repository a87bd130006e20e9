import type { Band, Elevation } from '@/app/racks/elevation.ts';

export type Direction = 'left' | 'right' | 'up' | 'down';

/** The band that a location stands in and its place there. */
export function bandOf(elevation: Elevation, cell: number): { band: Band; column: number } | null {
  for (const bay of elevation.bays)
    for (const band of bay.bands)
      if (cell >= band.firstPlace && cell < band.firstPlace + band.count)
        return { band, column: cell - band.firstPlace };
  return null;
}

/** The rectangle of a location, mm; null when it does not stand in this run. */
export function boxOf(
  elevation: Elevation,
  cell: number,
): { xMm: number; yMm: number; widthMm: number; heightMm: number } | null {
  const at = bandOf(elevation, cell);
  if (at === null) return null;
  const { band, column } = at;
  return {
    xMm: band.xMm + column * band.cellMm,
    yMm: band.yMm,
    widthMm: band.cellMm,
    heightMm: band.heightMm,
  };
}

/**
 * Which cell does an arrow key lead to? The neighbour on the same level, in the next bay the level nearest in height
 * and the end nearest; up and down the same bay, nearest in x. At an edge of the run: the cell itself.
 */
export function moveCursor(elevation: Elevation, row: 1 | 2, cell: number, direction: Direction): number {
  const at = bandOf(elevation, cell);
  if (at === null) return firstCell(elevation, row) ?? cell;
  const { band, column } = at;
  if (direction === 'left' || direction === 'right') {
    const next = column + (direction === 'right' ? 1 : -1);
    if (next >= 0 && next < band.count) return band.firstPlace + next;
    const step = direction === 'right' ? 1 : -1;
    for (let bayAt = band.bay + step; elevation.bays[bayAt] !== undefined; bayAt += step) {
      const nearest = nearestInHeight(elevation, row, bayAt, band.yMm);
      if (nearest !== null) return nearest.firstPlace + (direction === 'right' ? 0 : nearest.count - 1);
    }
    return cell;
  }
  const bands = elevation.bays[band.bay]!.bands.filter((entry) => entry.row === row);
  const middleMm = band.xMm + (column + 0.5) * band.cellMm;
  const above = bands.filter((entry) => entry.yMm > band.yMm)[0];
  const below = bands.filter((entry) => entry.yMm < band.yMm).at(-1);
  const target = direction === 'up' ? above : below;
  if (target === undefined) return cell;
  const columnThere = Math.floor((middleMm - target.xMm) / target.cellMm);
  return target.firstPlace + Math.min(Math.max(columnThere, 0), target.count - 1);
}

/** The location behind or before this one; the cell itself where its level is one deep. */
export function otherRow(elevation: Elevation, cell: number): number {
  const at = bandOf(elevation, cell);
  if (at === null) return cell;
  const { band, column } = at;
  const other = elevation.bays[band.bay]!.bands.find(
    (entry) => entry.level === band.level && entry.row !== band.row,
  );
  return other === undefined ? cell : other.firstPlace + column;
}

export function firstCell(elevation: Elevation, row: 1 | 2): number | null {
  for (const bay of elevation.bays)
    for (const band of bay.bands) if (band.row === row) return band.firstPlace;
  return null;
}

function nearestInHeight(elevation: Elevation, row: 1 | 2, bayAt: number, yMm: number): Band | null {
  let best: Band | null = null;
  for (const band of elevation.bays[bayAt]!.bands) {
    if (band.row !== row) continue;
    if (best === null || Math.abs(band.yMm - yMm) < Math.abs(best.yMm - yMm)) best = band;
  }
  return best;
}

/** The cell at an end of the run on the level nearest in height to the cell given. */
export function endCell(elevation: Elevation, row: 1 | 2, from: number, end: 'first' | 'last'): number {
  const yMm = bandOf(elevation, from)?.band.yMm ?? 0;
  const bays = end === 'first' ? elevation.bays : elevation.bays.toReversed();
  for (const bay of bays) {
    const bands = bay.bands.filter((band) => band.row === row);
    const nearest = bands.toSorted((a, b) => Math.abs(a.yMm - yMm) - Math.abs(b.yMm - yMm))[0];
    if (nearest !== undefined) return nearest.firstPlace + (end === 'first' ? 0 : nearest.count - 1);
  }
  return from;
}
