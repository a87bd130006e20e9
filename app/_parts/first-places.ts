import type { Run } from '@/lib/model/racking.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';

/** How many locations stand before each run in site order, by run id. */
export function firstPlaces(index: SiteIndex): ReadonlyMap<string, number> {
  const first = new Map<string, number>();
  let count = 0;
  for (const run of index.site.runs) {
    first.set(run.id, count);
    count += placeCountOf(run);
  }
  return first;
}

function placeCountOf(run: Run): number {
  let count = 0;
  for (const bay of run.bays) for (const level of bay.levels) count += level.locations.length;
  return count;
}
