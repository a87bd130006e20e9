import { type LiftQuery, type RawQuery, readLiftQuery, writeLiftQuery } from '@/app/_parts/lift-query.ts';
import type { Refusal } from '@/lib/model/refusal.ts';

/** What the racks screen shows: a question about lifts, and where and how its answers are looked at. */
export type RacksQuery = {
  lift: LiftQuery;
  /** The run looked at; null: the run of the location named, else the site's first. */
  run: string | null;
  row: 1 | 2;
  /** The trucks asked about; none named: all. */
  trucks: readonly string[];
  view: 'drawing' | 'table';
  /** The figure in each cell: the most that could be lifted there, or what is left of it with this load. */
  figure: 'most' | 'spare';
};

export type ReadRacksQuery = { query: RacksQuery; refused: readonly Refusal[] };

/** The address of the racks screen: the parameters of a lift, `truck` as often as trucks are asked, run, row, view, figure. */
export function readRacksQuery(raw: RawQuery): ReadRacksQuery {
  const { query: lift, refused } = readLiftQuery(raw);
  const trucks = [raw.truck ?? []].flat().filter((id) => id !== '');
  return {
    query: {
      lift: { ...lift, truck: null },
      run: one(raw.run) ?? null,
      row: one(raw.row) === '2' ? 2 : 1,
      trucks: [...new Set(trucks)],
      view: one(raw.view) === 'table' ? 'table' : 'drawing',
      figure: one(raw.figure) === 'spare' ? 'spare' : 'most',
    },
    refused,
  };
}

/** The address parameters of a view, without a leading "?"; readRacksQuery reads them back. */
export function writeRacksQuery(query: RacksQuery): string {
  const out = new URLSearchParams(writeLiftQuery({ ...query.lift, truck: null }));
  if (query.run !== null) out.set('run', query.run);
  if (query.row === 2) out.set('row', '2');
  for (const truck of query.trucks) out.append('truck', truck);
  if (query.view === 'table') out.set('view', 'table');
  if (query.figure === 'spare') out.set('figure', 'spare');
  return out.toString();
}

function one(value: string | string[] | undefined): string | undefined {
  const first = Array.isArray(value) ? value[0] : value;
  return first === '' ? undefined : first;
}
