import Link from 'next/link';
import { type Column, DataTable, type Row } from '@/app/_parts/data-table.tsx';
import { OutcomeBadge } from '@/app/_parts/outcome-badge.tsx';
import { truckHref } from '@/app/_parts/screen-links.ts';
import { driversOf } from '@/app/trucks/drivers-of.ts';
import { FIT_WORDS, heaviestRating, KIND_WORDS, POWER_WORDS, ratingWords } from '@/app/trucks/truck-words.ts';
import { truckFitState } from '@/lib/check/truck-fit-state.ts';
import { instantMs } from '@/lib/model/quantities.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import type { Truck } from '@/lib/model/truck.ts';
import { type DisplayUnits, formatLength } from '@/lib/units/format-quantity.ts';
import { counted, instantWords } from '@/lib/words/plain-words.ts';
import styles from './truck-list.module.css';

const COLUMNS: readonly Column[] = [
  { id: 'truck', label: 'Truck', kind: 'words' },
  { id: 'fit', label: 'Fit now', kind: 'words' },
  { id: 'check', label: 'Newest check', kind: 'words' },
  { id: 'kind', label: 'Kind', kind: 'words' },
  { id: 'power', label: 'Power', kind: 'words' },
  { id: 'lift', label: 'Lifts to', kind: 'number' },
  { id: 'plate', label: 'Plate, most', kind: 'number' },
  { id: 'fitted', label: 'Fitted', kind: 'words' },
  { id: 'drivers', label: 'May drive it', kind: 'number' },
];

/** The fleet as a table: which truck is what, and which may be used now. */
export function TruckList({
  index,
  nowIso,
  units,
}: {
  index: SiteIndex;
  nowIso: string;
  units: DisplayUnits;
}) {
  const nowMs = instantMs(nowIso);
  return (
    <DataTable
      caption="Trucks of this site"
      columns={COLUMNS}
      rows={index.site.trucks.map((truck) => rowOf(index, truck, nowMs, units))}
      filterLabel="Find a truck"
    />
  );
}

function rowOf(index: SiteIndex, truck: Truck, nowMs: number, units: DisplayUnits): Row {
  const { outcome, words } = FIT_WORDS[truckFitState(index, truck, nowMs).state];
  const newest = index.checksOf.get(truck.id)?.at(-1) ?? null;
  const heaviest = heaviestRating(truck);
  const drivers = driversOf(index, truck.kind, nowMs).filter(({ state }) => state === 'in force').length;
  return {
    id: truck.id,
    find: [
      truck.id,
      truck.name,
      KIND_WORDS[truck.kind],
      POWER_WORDS[truck.power],
      words,
      truck.fittedAttachment ?? '',
    ].join(' '),
    cells: {
      truck: {
        show: (
          <span>
            <Link href={truckHref(truck.id)}>{truck.id}</Link> <span className="soft">{truck.name}</span>
          </span>
        ),
        sort: truck.id,
      },
      fit: { show: <OutcomeBadge outcome={outcome} words={words} />, sort: words },
      check: {
        show:
          newest === null
            ? 'none'
            : `${instantWords(newest.at)}, ${newest.result === 'pass' ? 'passed' : 'failed'}`,
        sort: newest?.at ?? null,
      },
      kind: {
        show: <span className={styles.unbroken}>{KIND_WORDS[truck.kind]}</span>,
        sort: KIND_WORDS[truck.kind],
      },
      power: {
        show: <span className={styles.unbroken}>{POWER_WORDS[truck.power]}</span>,
        sort: POWER_WORDS[truck.power],
      },
      lift: { show: formatLength(truck.maxLiftMm, units, 'down'), sort: truck.maxLiftMm },
      plate: {
        show: heaviest === null ? 'no rating' : ratingWords(heaviest, units),
        sort: heaviest?.capacityKg ?? null,
      },
      fitted: { show: truck.fittedAttachment ?? 'forks', sort: truck.fittedAttachment ?? 'forks' },
      drivers: { show: counted(drivers, 'operator'), sort: drivers },
    },
  };
}
