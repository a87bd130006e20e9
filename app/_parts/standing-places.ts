import type { SiteIndex } from '@/lib/model/site-index.ts';

const known = new WeakMap<SiteIndex['stockAt'], ReadonlyMap<string, readonly string[]>>();

/** Where does each load stand? Location ids by load id, in the order of the stock; reckoned once while the stock stays as it is. */
export function standingPlaces(index: SiteIndex): ReadonlyMap<string, readonly string[]> {
  const before = known.get(index.stockAt);
  if (before !== undefined) return before;
  const places = new Map<string, string[]>();
  for (const [location, load] of index.stockAt) {
    const list = places.get(load.id);
    if (list === undefined) places.set(load.id, [location]);
    else list.push(location);
  }
  known.set(index.stockAt, places);
  return places;
}

/** The same for a few loads only: a look through the stock, without a table of all. */
export function standingPlacesOf(index: SiteIndex, loads: readonly string[]): Map<string, string[]> {
  const places = new Map<string, string[]>(loads.map((id) => [id, []]));
  for (const { location, load } of index.site.stock) places.get(load)?.push(location);
  return places;
}
