import Link from 'next/link';
import { loadHref } from '@/app/_parts/screen-links.ts';
import {
  type LoadRow,
  type LoadSort,
  type LoadsAsk,
  type LoadsPage,
  writeLoadsAsk,
} from '@/app/loads/list-loads.ts';
import { type DisplayUnits, formatLength, formatMass, groupDigits } from '@/lib/units/format-quantity.ts';
import styles from './loads.module.css';

const COLUMNS: readonly { sort: LoadSort | null; label: string; number?: true }[] = [
  { sort: 'id', label: 'Load' },
  { sort: 'name', label: 'Name' },
  { sort: 'mass', label: 'Gross mass', number: true },
  { sort: null, label: 'Basis' },
  { sort: null, label: 'Assessed', number: true },
  { sort: 'centre', label: 'Load centre', number: true },
  { sort: 'height', label: 'Depth × width × height', number: true },
  { sort: 'pallets', label: 'Stands in' },
];

/** One page of the loads; each heading is a link that sorts by it, and a second time the other way. */
export function LoadsTable({ page, ask, units }: { page: LoadsPage; ask: LoadsAsk; units: DisplayUnits }) {
  return (
    <div className={styles.frame}>
      <table className={styles.table}>
        <caption className="unseen">Loads of this site</caption>
        <thead>
          <tr>
            {COLUMNS.map(({ sort, label, number }) => (
              <th
                key={label}
                scope="col"
                className={number ? styles.number : undefined}
                aria-sort={
                  sort === ask.sort ? (ask.direction === 'up' ? 'ascending' : 'descending') : undefined
                }
              >
                {sort === null ? (
                  <span>{label}</span>
                ) : (
                  <Link href={`/loads?${writeLoadsAsk(ask, nextSort(ask, sort))}`} prefetch={false}>
                    {label}
                    <span aria-hidden="true">
                      {sort === ask.sort ? (ask.direction === 'up' ? ' ▲' : ' ▼') : ''}
                    </span>
                  </Link>
                )}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {page.rows.map((row) => (
            <LoadLine key={row.load.id} row={row} units={units} />
          ))}
        </tbody>
      </table>
      {page.rows.length === 0 ? (
        <p className={styles.none}>No load matches. Use fewer words or another basis.</p>
      ) : null}
    </div>
  );
}

function nextSort(ask: LoadsAsk, sort: LoadSort): Pick<LoadsAsk, 'sort' | 'direction'> {
  return { sort, direction: ask.sort === sort && ask.direction === 'up' ? 'down' : 'up' };
}

function LoadLine({ row, units }: { row: LoadRow; units: DisplayUnits }) {
  const { load, gross, assessedKg, centreMm, places } = row;
  const size = [load.depthMm, load.widthMm, load.heightMm]
    .map((mm) => formatLength(mm, units, 'up'))
    .join(' × ');
  return (
    <tr>
      <th scope="row" data-label="Load">
        <Link href={loadHref(load.id)} prefetch={false}>
          {load.id}
        </Link>
      </th>
      <td data-label="Name">{load.name}</td>
      <td data-label="Gross mass" className={styles.number}>
        {gross === null ? (
          <strong className={styles.unknown}>not known</strong>
        ) : (
          formatMass(gross.kg, units, 'up')
        )}
      </td>
      <td data-label="Basis">
        {gross === null ? '' : <span className={styles[gross.basis]}>{gross.basis}</span>}
      </td>
      <td data-label="Assessed" className={styles.number}>
        {assessedKg === null ? '' : formatMass(assessedKg, units, 'up')}
      </td>
      <td data-label="Load centre" className={styles.number}>
        {formatLength(centreMm, units, 'up')}
      </td>
      <td data-label="Depth × width × height" className={styles.number}>
        {size}
      </td>
      <td data-label="Stands in">
        {places.length === 0 ? <span className="soft">nowhere</span> : placesWords(places)}
      </td>
    </tr>
  );
}

function placesWords(places: readonly string[]): string {
  return places.length <= 2 ? places.join(', ') : `${places[0]} and ${groupDigits(places.length - 1)} more`;
}
