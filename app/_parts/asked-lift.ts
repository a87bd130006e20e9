import { contextOf, type LiftQuery, type ReadQuery, typedLoad } from '@/app/_parts/lift-query.ts';
import type { Context } from '@/lib/check/step.ts';
import type { Load } from '@/lib/model/load.ts';
import { nearestTo, type Refusal } from '@/lib/model/refusal.ts';
import type { Place, SiteIndex } from '@/lib/model/site-index.ts';
import type { Truck } from '@/lib/model/truck.ts';

/** A question about a lift with its ids resolved. `truck` is null when none is named: then all trucks are asked. */
export type AskedLift = { place: Place; load: Load; truck: Truck | null; context: Context };

export type ResolvedLift =
  | { kind: 'asked'; asked: AskedLift; query: LiftQuery }
  /** What kept the question from being asked; `$.<parameter>` names the place. */
  | { kind: 'refused'; refused: readonly Refusal[]; query: LiftQuery };

/**
 * Which load, place and truck does an address name in this site? Every name that does not resolve is refused with the
 * nearest one there is; a value that could not be read is passed on as refused: nothing is answered in its stead.
 *
 * What stands at a place and is asked to be placed comes from that very place, so that it does not stand in its own way.
 */
export function resolveLift(index: SiteIndex, read: ReadQuery, nowIso: string): ResolvedLift {
  const { query } = read;
  const refused: Refusal[] = [...read.refused];
  const known = <T>(key: string, list: string, map: ReadonlyMap<string, T>, id: string | null): T | null => {
    if (id === null) return null;
    const entry = map.get(id);
    if (entry !== undefined) return entry;
    refused.push({
      path: `$.${key}`,
      came: JSON.stringify(id),
      expected: { is: 'id-in', list, nearest: nearestTo(id, map.keys()) },
    });
    return null;
  };
  const need = (key: string) => {
    if (!refused.some(({ path }) => path === `$.${key}`))
      refused.push({ path: `$.${key}`, came: 'nothing', expected: { is: 'present' } });
  };

  const place = known('location', 'the locations of this site', index.places, query.location);
  if (query.location === null) need('location');
  const truck = known('truck', 'the trucks of this site', index.trucks, query.truck);
  known('from', 'the locations of this site', index.places, query.from);
  known('operator', 'the operators of this site', index.operators, query.operator);
  const load = loadAsked();
  if (refused.length > 0 || place === null || load === null) return { kind: 'refused', refused, query };

  const context = contextOf(query, nowIso);
  const from =
    context.from ?? (query.load.kind === 'stored' && context.operation === 'place' ? place.id : null);
  return { kind: 'asked', asked: { place, load, truck, context: { ...context, from } }, query };

  function loadAsked(): Load | null {
    const { load: asked } = query;
    if (asked.kind === 'known') return known('load', 'the loads of this site', index.loads, asked.id);
    if (asked.kind === 'typed') {
      known('pallet', 'the pallet types of this site', index.palletTypes, asked.palletType);
      return typedLoad(asked, 'Load typed in');
    }
    const standing = place === null ? undefined : index.stockAt.get(place.id);
    if (standing === undefined && place !== null && !read.refused.length) need('load');
    return standing ?? null;
  }
}
