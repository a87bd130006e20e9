import { type FactChange, NOUN_LISTS } from './change.ts';
import type { Site, StockRow } from './site.ts';
import type { Check, Truck } from './truck.ts';

/**
 * The site after a change of one fact, with everything else shared with the site before; exactly what reading it anew
 * would give. Not for a change of the whole site.
 */
export function applyChange(site: Site, change: FactChange): Site {
  const { noun, subject, before, after, ahead } = change;
  switch (noun) {
    case 'site':
      return { ...site, site: { ...site.site, name: after as string } };
    case 'policy': {
      const { [subject]: _, ...own } = site.site.policy as Record<string, unknown>;
      const policy = after === null ? own : { ...own, [subject]: after };
      return { ...site, site: { ...site.site, policy } };
    }
    case 'plate-photo':
      return site; // kept beside the site, no part of it
    case 'check':
      return { ...site, checks: [...site.checks, after as Check] };
    case 'stock': {
      const row = after === null ? null : { location: subject, load: after as string };
      const key = (entry: StockRow) => entry.location;
      return { ...site, stock: changeList(site.stock, key, subject, row, ahead) };
    }
    case 'truck': {
      const key = (entry: Truck) => entry.id;
      const { entry, checks } = partTruck(after);
      const trucks = changeList(site.trucks, key, subject, entry, ahead);
      if (after === null)
        return { ...site, trucks, checks: site.checks.filter(({ truck }) => truck !== subject) };
      return before === null && checks.length > 0
        ? { ...site, trucks, checks: [...site.checks, ...checks] }
        : { ...site, trucks };
    }
    default: {
      const list = NOUN_LISTS[noun];
      const key = (entry: { id: string }) => entry.id;
      return { ...site, [list]: changeList<{ id: string }>(site[list], key, subject, after as never, ahead) };
    }
  }
}

/** A truck goes and comes back with its checks, which the change log keeps under a key of the truck. */
function partTruck(fact: unknown): { entry: Truck | null; checks: readonly Check[] } {
  if (fact === null) return { entry: null, checks: [] };
  const { checks = [], ...entry } = fact as Truck & { checks?: Check[] };
  return { entry, checks };
}

function changeList<T>(
  list: readonly T[],
  keyOf: (entry: T) => string,
  key: string,
  after: T | null,
  ahead: string | null,
): T[] {
  const at = list.findIndex((entry) => keyOf(entry) === key);
  if (after === null) return at < 0 ? [...list] : list.toSpliced(at, 1);
  if (at >= 0) return list.with(at, after);
  const next = ahead === null ? -1 : list.findIndex((entry) => keyOf(entry) === ahead);
  return next < 0 ? [...list, after] : list.toSpliced(next, 0, after);
}
