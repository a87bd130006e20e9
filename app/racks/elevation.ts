import type { Condition, Run } from '@/lib/model/racking.ts';

/** Upright width as drawn, mm. The facts do not hold it; nothing is judged by it. */
export const UPRIGHT_DRAWN_MM = 100;
/** Height as drawn above the top level where the level below gives no opening to copy, mm. */
const TOP_DRAWN_MM = 1500;

/** The row of cells of one level, front or rear: `count` cells of equal width side by side, in site order from `firstPlace`. */
export type Band = {
  bay: number;
  level: number;
  row: 1 | 2;
  xMm: number;
  yMm: number;
  cellMm: number;
  heightMm: number;
  firstPlace: number;
  count: number;
};

export type DrawnFrame = { id: string; xMm: number; heightMm: number; condition: Condition };
export type DrawnBeam = {
  bay: number;
  level: number;
  xMm: number;
  widthMm: number;
  topMm: number;
  heightMm: number;
  condition: Condition;
};
export type DrawnBay = { id: string; xMm: number; widthMm: number; bands: readonly Band[] };

/** A run seen from its aisle, in mm: x from the outer face of its first frame, y from the floor. */
export type Elevation = {
  runId: string;
  widthMm: number;
  heightMm: number;
  /** Site-order index of the run's first location, and how many it has. */
  firstPlace: number;
  placeCount: number;
  doubleDeep: boolean;
  frames: readonly DrawnFrame[];
  bays: readonly DrawnBay[];
  beams: readonly DrawnBeam[];
};

/**
 * Where does each frame, beam and location of a run stand in a drawing to scale?
 *
 * A cell is as high as its level's opening: up to the underside of the next beam; on the top level as high as the
 * opening below it. Bays stand at their clear width with an upright drawn between them.
 */
export function drawElevation(run: Run, firstPlace: number): Elevation {
  const bays: DrawnBay[] = [];
  const beams: DrawnBeam[] = [];
  const bayTops: number[] = [];
  let xMm = UPRIGHT_DRAWN_MM;
  let place = firstPlace;
  let doubleDeep = false;
  for (const [bayAt, bay] of run.bays.entries()) {
    const bands: Band[] = [];
    let openingMm = TOP_DRAWN_MM;
    for (const [levelAt, level] of bay.levels.entries()) {
      const above = bay.levels[levelAt + 1];
      if (above !== undefined) openingMm = above.beamTopMm - above.beamHeightMm - level.beamTopMm;
      const heightMm = Math.max(openingMm, 1);
      const perRow = level.locations.length / level.depthPositions;
      if (level.depthPositions === 2) doubleDeep = true;
      for (let row = 1; row <= level.depthPositions && perRow > 0; row++) {
        bands.push({
          bay: bayAt,
          level: levelAt,
          row: row === 1 ? 1 : 2,
          xMm,
          yMm: level.beamTopMm,
          cellMm: bay.clearWidthMm / perRow,
          heightMm,
          firstPlace: place,
          count: perRow,
        });
        place += perRow;
      }
      if (level.beamHeightMm > 0 || level.beamTopMm > 0)
        beams.push({
          bay: bayAt,
          level: levelAt,
          xMm,
          widthMm: bay.clearWidthMm,
          topMm: level.beamTopMm,
          heightMm: level.beamHeightMm,
          condition: level.condition,
        });
    }
    const top = bay.levels.at(-1);
    bayTops.push(top === undefined ? TOP_DRAWN_MM : top.beamTopMm + openingMm);
    bays.push({ id: bay.id, xMm, widthMm: bay.clearWidthMm, bands });
    xMm += bay.clearWidthMm + UPRIGHT_DRAWN_MM;
  }
  return {
    runId: run.id,
    widthMm: xMm,
    heightMm: Math.max(TOP_DRAWN_MM, ...bayTops),
    firstPlace,
    placeCount: place - firstPlace,
    doubleDeep,
    frames: run.frames.map((frame, at) => ({
      id: frame.id,
      xMm: (bays[at]?.xMm ?? xMm) - UPRIGHT_DRAWN_MM,
      heightMm: Math.max(bayTops[at - 1] ?? 0, bayTops[at] ?? 0) || TOP_DRAWN_MM,
      condition: frame.condition,
    })),
    bays,
    beams,
  };
}

/** The first bay whose right end lies beyond x: where a drawing that starts at x begins. bays.length when none does. */
export function firstBayBeyond(bays: readonly DrawnBay[], xMm: number): number {
  let low = 0;
  let high = bays.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    const bay = bays[middle]!;
    if (bay.xMm + bay.widthMm <= xMm) low = middle + 1;
    else high = middle;
  }
  return low;
}
