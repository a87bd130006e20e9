import type { StockRow } from '../model/site.ts';
import type { SiteIndex } from '../model/site-index.ts';
import { compileSite, sumBay } from './compile-site.ts';
import { type CompiledSite, EMPTY } from './compiled-site.ts';
import { writeLoad } from './load-columns.ts';

/** Beyond this many rows of stock a site is compiled anew as fast. */
const MOST_MOVED = 1000;

/**
 * The columns of `index`, given those of the site before some changes: put right where racks, types and policy are the
 * same objects as before, compiled anew otherwise. `former` is used up: its columns become those of the answer.
 */
export function renewSite(former: CompiledSite, index: SiteIndex): CompiledSite {
  if (!hasSameRacks(former.index, index)) return compileSite(index);
  const { loads: loadsBefore, stock: stockBefore } = former.index.site;
  const { loads, stock } = index.site;
  const sameRows =
    loads.length === loadsBefore.length && loads.every(({ id }, row) => id === loadsBefore[row]!.id);
  if (!sameRows) return compileSite(index);
  const site: CompiledSite = { ...former, index, trucks: new Map(index.trucks) };
  const changed = new Set<number>();
  if (loads !== loadsBefore) {
    for (const [row, load] of loads.entries()) {
      if (load === loadsBefore[row]) continue;
      writeLoad(site.loads, row, load, index);
      changed.add(row);
    }
  }
  const moved = movedLocations(stockBefore, stock);
  if (moved.size > MOST_MOVED) return compileSite(index);
  const bays = baysOfLoads(site, changed);
  for (const location of moved) {
    const at = rowOfPlace(index, location);
    const load = index.stockAt.get(location);
    site.standing[at] = load === undefined ? EMPTY : loads.indexOf(load);
    bays.add(site.bayOf[site.levelOf[at]!]!);
  }
  for (const bay of bays) sumBay(site, bay);
  return site;
}

/** Are the columns of racks, the classes and the shapes of loads still right? */
function hasSameRacks(before: SiteIndex, after: SiteIndex): boolean {
  return (
    before.site.runs === after.site.runs &&
    before.aisles === after.aisles &&
    before.frameTypes === after.frameTypes &&
    before.palletTypes === after.palletTypes &&
    before.policy === after.policy
  );
}

/** The bays in which a load of these rows stands. */
function baysOfLoads(site: CompiledSite, rows: ReadonlySet<number>): Set<number> {
  const bays = new Set<number>();
  if (rows.size === 0) return bays;
  for (const [location, row] of site.standing.entries()) {
    if (rows.has(row)) bays.add(site.bayOf[site.levelOf[location]!]!);
  }
  return bays;
}

/** The locations of the rows that only one of the two has: a row that was not touched is the same object in both. */
function movedLocations(before: readonly StockRow[], after: readonly StockRow[]): Set<string> {
  let start = 0;
  while (start < before.length && before[start] === after[start]) start += 1;
  let ends = 0;
  const most = Math.min(before.length, after.length) - start;
  while (ends < most && before.at(-1 - ends) === after.at(-1 - ends)) ends += 1;
  const gone = new Set(before.slice(start, before.length - ends));
  const moved = new Set<string>();
  for (const row of after.slice(start, after.length - ends)) {
    if (!gone.delete(row)) moved.add(row.location);
  }
  for (const { location } of gone) moved.add(location);
  return moved;
}

const rowsOfPlaces = new WeakMap<SiteIndex['places'], Map<string, number>>();

/** The row of a location; the table of all is made once while the racks stay as they are. */
function rowOfPlace({ places }: SiteIndex, location: string): number {
  let rows = rowsOfPlaces.get(places);
  if (rows === undefined) {
    rows = new Map([...places.keys()].map((id, row) => [id, row]));
    rowsOfPlaces.set(places, rows);
  }
  return rows.get(location)!;
}
