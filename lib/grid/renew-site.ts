import type { SiteIndex } from '../model/site-index.ts';
import { compileSite, sumBay } from './compile-site.ts';
import { type CompiledSite, EMPTY } from './compiled-site.ts';
import { loadRowFinder, writeLoad } from './load-columns.ts';

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
  if (stock === stockBefore && changed.size === 0) return site;
  for (const bay of standAnew(site, changed)) sumBay(site, bay);
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

/** Writes what stands where, and gives the bays in which something else stands or weighs than before. */
function standAnew(site: CompiledSite, changed: ReadonlySet<number>): Set<number> {
  const { stockAt, places } = site.index;
  const rowOf = loadRowFinder(site.index);
  const bays = new Set<number>();
  let location = 0;
  for (const id of places.keys()) {
    const load = stockAt.get(id);
    const row = load === undefined ? EMPTY : rowOf(load);
    if (row !== site.standing[location] || changed.has(row)) bays.add(site.bayOf[site.levelOf[location]!]!);
    site.standing[location] = row;
    location += 1;
  }
  return bays;
}
