import { contextOf, typedLoad } from '@/app/_parts/lift-query.ts';
import type { RacksQuery } from '@/app/racks/racks-query.ts';
import type { GridQuestion } from '@/lib/grid/question.ts';
import { nearestTo, type Refusal } from '@/lib/model/refusal.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';

export type RacksQuestion =
  | { kind: 'asked'; question: GridQuestion }
  | { kind: 'refused'; refused: readonly Refusal[] };

/**
 * What does the racks screen ask of every location and truck? Every name that the site does not have is refused with
 * the nearest it has, and nothing is asked in its stead.
 */
export function askRacks(index: SiteIndex, query: RacksQuery, nowIso: string): RacksQuestion {
  const { lift, trucks } = query;
  const refused: Refusal[] = [];
  const need = (key: string, list: string, map: ReadonlyMap<string, unknown>, id: string | null) => {
    if (id === null || map.has(id)) return;
    const expected = { is: 'id-in', list, nearest: nearestTo(id, map.keys()) } as const;
    refused.push({ path: `$.${key}`, came: JSON.stringify(id), expected });
  };
  for (const truck of trucks) need('truck', 'the trucks of this site', index.trucks, truck);
  need('operator', 'the operators of this site', index.operators, lift.operator);
  need('from', 'the locations of this site', index.places, lift.from);
  if (lift.load.kind === 'known') need('load', 'the loads of this site', index.loads, lift.load.id);
  if (lift.load.kind === 'typed')
    need('pallet', 'the pallet types of this site', index.palletTypes, lift.load.palletType);
  if (refused.length > 0) return { kind: 'refused', refused };
  return {
    kind: 'asked',
    question: {
      load: loadAsked(index, query),
      trucks: trucks.length > 0 ? trucks : index.site.trucks.map(({ id }) => id),
      context: contextOf(lift, nowIso),
    },
  };
}

function loadAsked(index: SiteIndex, { lift }: RacksQuery): GridQuestion['load'] {
  if (lift.load.kind === 'stored') return { kind: 'stored' };
  const load =
    lift.load.kind === 'known' ? index.loads.get(lift.load.id)! : typedLoad(lift.load, 'Load typed in');
  return { kind: 'one', load };
}

/** Which run is looked at: the one named, else the one of the location named, else the first; null in a site without runs. */
export function runLookedAt(index: SiteIndex, query: RacksQuery): string | null {
  const { runs } = index.site;
  if (query.run !== null && runs.some(({ id }) => id === query.run)) return query.run;
  const place = query.lift.location === null ? undefined : index.places.get(query.lift.location);
  return place?.run.id ?? runs[0]?.id ?? null;
}

/** The location that words name: the same id, else the first that begins with them, else the first that holds them. */
export function findLocation(index: SiteIndex, words: string): string | null {
  const asked = words.trim().toLowerCase();
  if (asked === '') return null;
  let begins: string | null = null;
  let holds: string | null = null;
  for (const id of index.places.keys()) {
    const text = id.toLowerCase();
    if (text === asked) return id;
    if (begins === null && text.startsWith(asked)) begins = id;
    else if (holds === null && text.includes(asked)) holds = id;
  }
  return begins ?? holds;
}
