import { UNKNOWN_KG } from '../grid/load-columns.ts';
import { type AuditCase, type TakeDown, takeDown } from './audit-case.ts';
import type { StoredLoad } from './back-in-place.ts';

/** How many trucks can take a load down; or that it must be weighed before this can be said. */
export type Takers = { kind: 'counted'; count: number } | { kind: 'once-weighed' };

/**
 * How many trucks can take each stored load down? Those for which the lift is clear or thin.
 *
 * A pallet that was never weighed is unproven for all of them; `once-weighed` says that one of them could take it if it
 * were light enough: then weighing is what is missing, not a truck.
 */
export function takersOf(audit: AuditCase, by: TakeDown): Takers[] {
  const { site } = audit;
  const ifLight = new Map<string, boolean>();
  return audit.stored.map((one) => {
    const load = site.standing[one.at]!;
    if (site.loads.assessedKg[load] === UNKNOWN_KG) {
      // of one class of location and shape of load, all are alike
      const like = `${site.classOf[one.at]} ${site.loads.shapeOf[load]}`;
      let light = ifLight.get(like);
      if (light === undefined) {
        light = someTruckIfLight(audit, one, by.asOf);
        ifLight.set(like, light);
      }
      if (light) return { kind: 'once-weighed' };
    }
    return { kind: 'counted', count: by.able[one.at]! };
  });
}

function someTruckIfLight(audit: AuditCase, one: StoredLoad, asOf: string | null): boolean {
  return audit.index.site.trucks.some((truck) => {
    const { verdict, mostKg } = takeDown(audit, one, truck, asOf);
    return verdict === 'unproven' && mostKg !== null && mostKg > 0;
  });
}

/** How many stored loads no truck, one truck or more can take down; and those that must be weighed before it can be said. */
export type TakeDownCounts = { none: number; one: number; more: number; unweighed: number };

export function countTakeDown(takers: readonly Takers[]): TakeDownCounts {
  const counts: TakeDownCounts = { none: 0, one: 0, more: 0, unweighed: 0 };
  for (const by of takers) {
    if (by.kind === 'once-weighed') counts.unweighed += 1;
    else counts[by.count === 0 ? 'none' : by.count === 1 ? 'one' : 'more'] += 1;
  }
  return counts;
}
