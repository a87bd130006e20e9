import { type Instant, instantMs } from '@/lib/model/quantities.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import type { Operator, TruckKind } from '@/lib/model/truck.ts';

/** An operator with an authorisation for a kind of truck. `expires` null: it does not end. */
export type Driver = { operator: Operator; expires: Instant | null; state: 'in force' | 'ended' };

/** Who may drive this kind of truck, the latest authorisation of each? One that ends exactly at asOfMs is still in force. */
export function driversOf(index: SiteIndex, kind: TruckKind, asOfMs: number): Driver[] {
  return index.site.operators.flatMap((operator): Driver[] => {
    const ends = operator.authorisations.filter((held) => held.kind === kind).map((held) => held.expires);
    if (ends.length === 0) return [];
    if (ends.includes(null)) return [{ operator, expires: null, state: 'in force' }];
    const latest = ends
      .filter((end) => end !== null)
      .reduce((late, end) => (instantMs(end) > instantMs(late) ? end : late));
    return [{ operator, expires: latest, state: instantMs(latest) >= asOfMs ? 'in force' : 'ended' }];
  });
}
