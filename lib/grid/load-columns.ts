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
  /** Rows of shapes by a number that equal shapes share. */
  shapeRows: Map<number, number[]>;
};

export function compileLoads(index: SiteIndex): LoadColumns {
  const { loads } = index.site;
  const columns: LoadColumns = {
    assessedKg: new Float64Array(loads.length),
    shapeOf: new Uint32Array(loads.length),
    shapes: [],
    shapeRows: new Map(),
  };
  for (const [row, load] of loads.entries()) writeLoad(columns, row, load, index);
  return columns;
}

/**
 * Finds the row of a load of the site, again and again. Stock mostly stands in the order in which its loads are
 * listed, or is one load many times over: the next row and the last are tried before a table of all ids is made. The
 * table is not kept: it would outweigh the columns.
 */
export function loadRowFinder({ site }: SiteIndex): (load: Load) => number {
  let last = 0;
  let rows: Map<string, number> | null = null;
  return (load) => {
    if (site.loads[last + 1] === load) {
      last += 1;
    } else if (site.loads[last] !== load) {
      rows ??= new Map(site.loads.map(({ id }, row) => [id, row]));
      last = rows.get(load.id)!;
    }
    return last;
  };
}

/** Writes what the rules read from a load into its row. */
export function writeLoad(columns: LoadColumns, row: number, load: Load, index: SiteIndex): void {
  columns.shapeOf[row] = shapeRowOf(columns, shapeOfLoad(load, index));
  columns.assessedKg[row] = massColumn(load, index);
}

/** The row of a shape, appended where it is new. */
function shapeRowOf({ shapes, shapeRows }: LoadColumns, shape: LoadShape): number {
  const key = shape.depthMm + 31 * shape.widthMm + 961 * shape.heightMm;
  const rows = shapeRows.get(key) ?? [];
  const known = rows.find((row) => isSameShape(shapes[row]!, shape));
  if (known !== undefined) return known;
  const added = shapes.push(shape) - 1;
  shapeRows.set(key, [...rows, added]);
  return added;
}

function isSameShape(a: LoadShape, b: LoadShape): boolean {
  return (
    a.depthMm === b.depthMm &&
    a.widthMm === b.widthMm &&
    a.heightMm === b.heightMm &&
    a.centreMm === b.centreMm &&
    a.centreHeightMm === b.centreHeightMm &&
    a.entryMm === b.entryMm &&
    a.supportDepthMm === b.supportDepthMm
  );
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
