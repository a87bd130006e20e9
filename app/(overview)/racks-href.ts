import { PLAIN_LIFT_QUERY } from '@/app/_parts/lift-query.ts';
import { type RacksQuery, writeRacksQuery } from '@/app/racks/racks-query.ts';
import type { Place } from '@/lib/model/site-index.ts';
import type { OverviewQuery } from './overview-query.ts';

/** The racks screen that asks what this look asks, at a run or at a place. */
export function racksHref(
  query: OverviewQuery,
  at: { run: string } | { place: Place },
  view: RacksQuery['view'] = 'drawing',
): string {
  const place = 'place' in at ? at.place : null;
  return `/racks?${writeRacksQuery({
    lift: {
      ...PLAIN_LIFT_QUERY,
      operation: query.look === 'put-back' ? 'place' : 'retrieve',
      time: query.time,
      location: place?.id ?? null,
    },
    run: 'run' in at ? at.run : at.place.run.id,
    row: place?.row ?? 1,
    trucks: [],
    view,
    figure: 'most',
  })}`;
}
