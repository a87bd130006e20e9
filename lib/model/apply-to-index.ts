import { applyChange } from './apply-change.ts';
import type { FactChange } from './change.ts';
import { policyInForce } from './policy.ts';
import type { Site } from './site.ts';
import { byId, checksByTruck, loadByLocation, placesOf, type SiteIndex } from './site-index.ts';

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
    stockAt: touched.has('stock') || touched.has('load') ? loadByLocation(site.stock, loads) : index.stockAt,
    checksOf: touched.has('check') || touched.has('truck') ? checksByTruck(site.checks) : index.checksOf,
  };
}
