import type { Aisle, Bay, Level, Run } from '../model/racking.ts';
import type { SiteIndex } from '../model/site-index.ts';
import type { Truck } from '../model/truck.ts';
import type { LoadColumns } from './load-columns.ts';

/**
 * What the truck's rules read from a location. Locations that agree in it form one class, so that a truck's geometry
 * is decided once for all of them.
 */
export type LiftClass = {
  beamTopMm: number;
  row: 1 | 2;
  aisleClearMm: number;
  overheadClearMm: Aisle['overheadClearMm'];
};

/** A bay with where it stands. */
export type BaySite = { run: Run; bayIndex: number; bay: Bay; aisle: Aisle };

/** In `standing`: nothing stands in this location. */
export const EMPTY = -1;

/**
 * A site as columns: a number per location, level, bay or frame, all in site order, parents by row number. NaN stands
 * for a fact that is not known.
 *
 * compile-site.ts makes it once from an index; edit-site.ts changes in place the columns that an edit touches. Of
 * `index` only policy, types, operators and checks are read afterwards: trucks, loads, levels and stock are read here.
 */
export type CompiledSite = {
  index: SiteIndex;
  trucks: Map<string, Truck>;
  loads: LoadColumns;

  /** The classes, and the row of each by aisle kind and row of depth, then beam top. Edits may append. */
  classes: LiftClass[];
  classRows: Map<number, number>[];
  aisleKinds: Map<string, number>;

  classOf: Uint16Array;
  levelOf: Uint32Array;
  /** The row of the load that stands in a location, or EMPTY. */
  standing: Int32Array;

  levels: Level[];
  /** One more than there are levels: the locations of level i run from firstLocation[i] to firstLocation[i + 1]. */
  firstLocation: Uint32Array;
  bayOf: Uint32Array;
  /** Next level's beam top - its beam height - this beam top; Infinity at the bay's top level. */
  openingMm: Float64Array;
  /** What stands on the level, kg. */
  levelKg: Float64Array;
  /** 1 where the level or a frame beside it is amber or red. */
  unsound: Uint8Array;

  bays: BaySite[];
  /** One more than there are bays. */
  firstLevel: Uint32Array;
  /** The frame at the left of a bay; the next one stands at its right. */
  leftFrame: Uint32Array;
  /** What stands on the bay's beam levels, kg. */
  bayKg: Float64Array;

  frameRatingKg: Float64Array;
  /** The bays left and right of frame i stand at 2i and 2i + 1; NO_BAY at the end of a run. */
  frameBays: Int32Array;
};

export const NO_BAY = -1;

/** Where the locations of each run begin, in site order, and at the end how many there are. */
export function runRanges(site: CompiledSite): Uint32Array {
  const { runs } = site.index.site;
  const first = new Uint32Array(runs.length + 1);
  let bay = 0;
  for (const [at, run] of runs.entries()) {
    first[at] = site.firstLocation[site.firstLevel[bay]!]!;
    bay += run.bays.length;
  }
  first[runs.length] = locationCountOf(site);
  return first;
}

export function locationCountOf(site: CompiledSite): number {
  return site.classOf.length;
}

/** As a row of locations: none of them. */
export const NOWHERE = -1;

/** The row of a location by its id, or NOWHERE: a walk over the levels, for the rare question that names one. */
export function locationRow(site: CompiledSite, id: string): number {
  for (const [level, { locations }] of site.levels.entries()) {
    const at = locations.indexOf(id);
    if (at >= 0) return site.firstLocation[level]! + at;
  }
  return NOWHERE;
}
