import { applyChange } from './apply-change.ts';
import type { FactChange } from './change.ts';
import type { Load } from './load.ts';
import { policyInForce } from './policy.ts';
import type { Site } from './site.ts';
import { byId, checksByTruck, found, loadByLocation, placesOf, type SiteIndex } from './site-index.ts';
import { StandingMap } from './standing-map.ts';

/**
 * The index of a site after some changes, in their order: what indexSite would give, with everything shared that the
 * changes do not touch, so that a change of one fact in 200 000 locations takes milliseconds. The index before is left
 * as it is. Not for changes of the whole site.
 */
export function applyToIndex(index: SiteIndex, changes: readonly FactChange[]): SiteIndex {
  if (changes.length === 0) return index;
  const site = changes.reduce<Site>(applyChange, index.site);
  const touched = new Set(changes.map(({ noun }) => noun));
  const loads = touched.has('load') ? byId(site.loads) : index.loads;
  return {
    site,
    policy: touched.has('policy') ? policyInForce(site.site.policy) : index.policy,
    places: touched.has('run') ? placesOf(site) : index.places,
    aisles: touched.has('aisle') ? byId(site.aisles) : index.aisles,
    frameTypes: touched.has('frame-type') ? byId(site.frameTypes) : index.frameTypes,
    palletTypes: touched.has('pallet-type') ? byId(site.palletTypes) : index.palletTypes,
    trucks: touched.has('truck') ? byId(site.trucks) : index.trucks,
    operators: touched.has('operator') ? byId(site.operators) : index.operators,
    loads,
    stockAt: standingAfter(index, site, loads, changes),
    checksOf: touched.has('check') || touched.has('truck') ? checksByTruck(site.checks) : index.checksOf,
  };
}

/** Beyond this many changed locations the map is made anew. */
const MOST_LAID_OVER = 500;

function standingAfter(
  index: SiteIndex,
  site: Site,
  loads: ReadonlyMap<string, Load>,
  changes: readonly FactChange[],
): SiteIndex['stockAt'] {
  const changedLoads = new Set<string>();
  const loadAt = new Map<string, string | null>();
  for (const { noun, subject, after } of changes) {
    if (noun === 'stock') loadAt.set(subject, after as string | null);
    if (noun === 'load') changedLoads.add(subject);
  }
  if (changedLoads.size > 0) {
    for (const { location, load } of site.stock) if (changedLoads.has(load)) loadAt.set(location, load);
  }
  if (loadAt.size === 0) return index.stockAt;
  const depth = index.stockAt instanceof StandingMap ? index.stockAt.depth : 0;
  if (depth + loadAt.size > MOST_LAID_OVER) return loadByLocation(site.stock, loads);
  const changed = new Map(
    [...loadAt].map(([location, id]) => [location, id === null ? null : found(loads, id, 'load')]),
  );
  return StandingMap.over(index.stockAt, changed, site.stock);
}
