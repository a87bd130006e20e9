import { assessedMassKg, centreHeightMm, entryHeightMm, type Load, loadCentreMm } from '../model/load.ts';
import { palletOf, type SiteIndex } from '../model/site-index.ts';

/** What the rules read from a load besides its mass. Loads of one shape are decided together. */
export type LoadShape = {
  depthMm: number;
  widthMm: number;
  heightMm: number;
  centreMm: number;
  centreHeightMm: number;
  entryMm: number;
  /** Depth of what stands on the beams: the pallet's, or the load's where it has none. */
  supportDepthMm: number;
};

/** Marks a mass that is not known in a column of masses. */
export const UNKNOWN_KG = -1;

/** The loads of a site as columns, in site order. */
export type LoadColumns = {
  assessedKg: Float64Array;
  shapeOf: Uint32Array;
  /** The distinct shapes. An edit may append one; none is ever taken away. */
  shapes: LoadShape[];
  shapeRow: Map<string, number>;
};

export function compileLoads(index: SiteIndex): LoadColumns {
  const { loads } = index.site;
  const columns: LoadColumns = {
    assessedKg: new Float64Array(loads.length),
    shapeOf: new Uint32Array(loads.length),
    shapes: [],
    shapeRow: new Map(),
  };
  for (const [row, load] of loads.entries()) writeLoad(columns, row, load, index);
  return columns;
}

/** The row of each load by its id. Not kept: it would outweigh the columns. */
export function rowOfLoads(index: SiteIndex): Map<string, number> {
  return new Map(index.site.loads.map(({ id }, row) => [id, row]));
}

/** Writes what the rules read from a load into its row. */
export function writeLoad(columns: LoadColumns, row: number, load: Load, index: SiteIndex): void {
  const shape = shapeOfLoad(load, index);
  const key = Object.values(shape).join(' ');
  let at = columns.shapeRow.get(key);
  if (at === undefined) {
    at = columns.shapes.push(shape) - 1;
    columns.shapeRow.set(key, at);
  }
  columns.shapeOf[row] = at;
  columns.assessedKg[row] = massColumn(load, index);
}

/** Assessed mass, kg, or UNKNOWN_KG. */
export function massColumn(load: Load, index: SiteIndex): number {
  return assessedMassKg(load, palletOf(index, load), index.policy) ?? UNKNOWN_KG;
}

export function shapeOfLoad(load: Load, index: SiteIndex): LoadShape {
  const pallet = palletOf(index, load);
  return {
    depthMm: load.depthMm,
    widthMm: load.widthMm,
    heightMm: load.heightMm,
    centreMm: loadCentreMm(load),
    centreHeightMm: centreHeightMm(load),
    entryMm: entryHeightMm(pallet),
    supportDepthMm: pallet?.depthMm ?? load.depthMm,
  };
}
