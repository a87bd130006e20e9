import type { Load, PalletType } from './load.ts';
import { type Policy, policyInForce } from './policy.ts';
import { instantMs } from './quantities.ts';
import type { Aisle, Bay, Frame, FrameType, Level, Run } from './racking.ts';
import type { Site, StockRow } from './site.ts';
import type { Check, Operator, Truck } from './truck.ts';

/** Where a location is: its run, bay, level, and its place on the level. */
export type Place = {
  id: string;
  run: Run;
  bay: Bay;
  bayIndex: number;
  level: Level;
  levelIndex: number;
  /** 1 front, 2 rear. */
  row: 1 | 2;
  /** 0 at the left, the same for a front location and the rear one behind it. */
  column: number;
  leftFrame: Frame;
  rightFrame: Frame;
};

/** A site with its ids resolved. Built once from a site that lib/model has accepted; never changed. */
export type SiteIndex = {
  site: Site;
  policy: Policy;
  /** In site order: runs, bays, levels, locations as the file lists them. */
  places: ReadonlyMap<string, Place>;
  aisles: ReadonlyMap<string, Aisle>;
  frameTypes: ReadonlyMap<string, FrameType>;
  palletTypes: ReadonlyMap<string, PalletType>;
  trucks: ReadonlyMap<string, Truck>;
  operators: ReadonlyMap<string, Operator>;
  loads: ReadonlyMap<string, Load>;
  /** What stands in each stocked location. */
  stockAt: ReadonlyMap<string, Load>;
  /** The checks of each truck, oldest first. */
  checksOf: ReadonlyMap<string, readonly Check[]>;
};

/** Resolves a site. Throws on a reference that does not resolve: lib/model refuses such a site before it comes here. */
export function indexSite(site: Site): SiteIndex {
  const loads = byId(site.loads);
  return {
    site,
    policy: policyInForce(site.site.policy),
    places: placesOf(site),
    aisles: byId(site.aisles),
    frameTypes: byId(site.frameTypes),
    palletTypes: byId(site.palletTypes),
    trucks: byId(site.trucks),
    operators: byId(site.operators),
    loads,
    stockAt: loadByLocation(site.stock, loads),
    checksOf: checksByTruck(site.checks),
  };
}

/** What stands in each stocked location. Throws on a load that is not there. */
export function loadByLocation(
  stock: readonly StockRow[],
  loads: ReadonlyMap<string, Load>,
): Map<string, Load> {
  const stockAt = new Map<string, Load>();
  for (const row of stock) stockAt.set(row.location, found(loads, row.load, 'load'));
  return stockAt;
}

/** The checks of each truck, oldest first. */
export function checksByTruck(checks: readonly Check[]): Map<string, Check[]> {
  const checksOf = new Map<string, Check[]>();
  for (const check of checks) {
    const list = checksOf.get(check.truck);
    if (list) list.push(check);
    else checksOf.set(check.truck, [check]);
  }
  for (const list of checksOf.values()) list.sort((a, b) => instantMs(a.at) - instantMs(b.at));
  return checksOf;
}

/** The pallet a load stands on, or null for none. */
export function palletOf(index: SiteIndex, load: Load): PalletType | null {
  return load.palletType === null ? null : found(index.palletTypes, load.palletType, 'pallet type');
}

/** The entry with this id; throws when there is none (a bug: the site was accepted with all references resolved). */
export function found<T>(map: ReadonlyMap<string, T>, id: string, what: string): T {
  const entry = map.get(id);
  if (entry === undefined) throw new Error(`no ${what} ${id} in this site`);
  return entry;
}

/** Entries by their ids, in their order. */
export function byId<T extends { id: string }>(list: readonly T[]): Map<string, T> {
  return new Map(list.map((entry) => [entry.id, entry]));
}

/** Where each location is, in site order. */
export function placesOf(site: Site): Map<string, Place> {
  const places = new Map<string, Place>();
  for (const run of site.runs) {
    for (const [bayIndex, bay] of run.bays.entries()) {
      const leftFrame = run.frames[bayIndex]!;
      const rightFrame = run.frames[bayIndex + 1]!;
      for (const [levelIndex, level] of bay.levels.entries()) {
        const perRow = level.locations.length / level.depthPositions;
        for (const [at, id] of level.locations.entries()) {
          const row = at < perRow ? 1 : 2;
          const column = row === 1 ? at : at - perRow;
          places.set(id, { id, run, bay, bayIndex, level, levelIndex, row, column, leftFrame, rightFrame });
        }
      }
    }
  }
  return places;
}
