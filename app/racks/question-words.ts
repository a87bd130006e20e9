import type { RacksQuery } from '@/app/racks/racks-query.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';

/** The question as a heading: "Put away LD-7 Roof slate · all trucks". */
export function questionWords(index: SiteIndex, { lift, trucks }: RacksQuery): string {
  const named = trucks.map((id) => index.trucks.get(id)?.name ?? id);
  const whom =
    named.length === 0 ? 'all trucks' : named.length < 3 ? named.join(', ') : `${named.length} trucks`;
  const stock = lift.stock === 'empty' ? ' · racks as if empty' : '';
  return `${doWhat(index, lift)} · ${whom}${stock}`;
}

function doWhat(index: SiteIndex, { load, operation }: RacksQuery['lift']): string {
  if (load.kind === 'stored')
    return operation === 'place' ? 'Put back what stands there' : 'Take down what stands there';
  const verb = operation === 'place' ? 'Put away' : 'Take down';
  if (load.kind === 'typed') return `${verb} a load typed in`;
  const known = index.loads.get(load.id);
  return `${verb} ${load.id}${known === undefined ? '' : ` ${known.name}`}`;
}
