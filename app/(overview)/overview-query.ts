import { type AskedTime, type RawQuery, readLiftQuery, writeLiftQuery } from '@/app/_parts/lift-query.ts';
import type { Refusal } from '@/lib/model/refusal.ts';

/** What each location tells: how many trucks can take down what stands there, how well the best can, or the best can put it back. */
export const LOOKS = ['trucks', 'take-down', 'put-back'] as const;
export type Look = (typeof LOOKS)[number];

export type OverviewQuery = { look: Look; time: AskedTime };

/** The address of the overview: look, asOf. */
export function readOverviewQuery(raw: RawQuery): { query: OverviewQuery; refused: readonly Refusal[] } {
  const { query, refused } = readLiftQuery({ asOf: raw.asOf });
  const look = LOOKS.find((known) => known === [raw.look].flat()[0]) ?? 'trucks';
  return { query: { look, time: query.time }, refused };
}

/** The address parameters, without a leading "?"; readOverviewQuery reads them back. */
export function writeOverviewQuery({ look, time }: OverviewQuery): string {
  const out = new URLSearchParams(writeLiftQuery({ time }));
  if (look !== 'trucks') out.set('look', look);
  return out.toString();
}
