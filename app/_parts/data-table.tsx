'use client';

import { type ReactNode, useId, useMemo, useState } from 'react';
import styles from './data-table.module.css';
import { type Sorting, sortRows } from './sort-rows.ts';

export type Column = { id: string; label: string; kind: 'words' | 'number' };
export type Cell = { show: ReactNode; sort: string | number | null };
/** `find`: the words that the filter looks in. */
export type Row = { id: string; find: string; cells: Record<string, Cell> };

/**
 * A list of facts as a table: rendered on the server, then sorted and filtered in place. On a phone each row becomes a
 * card with its column names. For lists that fit on a page or a few; a whole site's locations have their own table.
 */
export function DataTable({
  caption,
  columns,
  rows,
  filterLabel,
}: {
  caption: string;
  columns: readonly Column[];
  rows: readonly Row[];
  filterLabel?: string;
}) {
  const [sorting, setSorting] = useState<Sorting>(null);
  const [find, setFind] = useState('');
  const field = useId();
  const shown = useMemo(() => {
    const words = find.trim().toLowerCase().split(/\s+/);
    const kept = rows.filter((row) => words.every((word) => row.find.toLowerCase().includes(word)));
    return sortRows(kept, sorting);
  }, [rows, find, sorting]);

  return (
    <div className={styles.frame}>
      {filterLabel === undefined ? null : (
        <div className={`${styles.filter} no-print`}>
          <label htmlFor={field}>{filterLabel}</label>
          <input id={field} type="search" value={find} onChange={(event) => setFind(event.target.value)} />
          <span className="soft dense" aria-live="polite">
            {shown.length === rows.length ? `${rows.length} in all` : `${shown.length} of ${rows.length}`}
          </span>
        </div>
      )}
      <table className={styles.table}>
        <caption className="unseen">{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th
                key={column.id}
                scope="col"
                className={styles[column.kind]}
                aria-sort={sortState(sorting, column.id)}
              >
                <button type="button" onClick={() => setSorting(nextSorting(sorting, column.id))}>
                  {column.label}
                  <span aria-hidden="true">{arrow(sorting, column.id)}</span>
                </button>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {shown.map((row) => (
            <tr key={row.id}>
              {columns.map((column, at) =>
                at === 0 ? (
                  <th key={column.id} scope="row" className={styles[column.kind]} data-label={column.label}>
                    {row.cells[column.id]?.show}
                  </th>
                ) : (
                  <td key={column.id} className={styles[column.kind]} data-label={column.label}>
                    {row.cells[column.id]?.show}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
      {shown.length === 0 ? <p className={styles.none}>Nothing matches. Use fewer words.</p> : null}
    </div>
  );
}

function nextSorting(now: Sorting, column: string): Sorting {
  if (now?.column !== column) return { column, direction: 'up' };
  return now.direction === 'up' ? { column, direction: 'down' } : null;
}

function sortState(now: Sorting, column: string): 'ascending' | 'descending' | 'none' {
  if (now?.column !== column) return 'none';
  return now.direction === 'up' ? 'ascending' : 'descending';
}

function arrow(now: Sorting, column: string): string {
  if (now?.column !== column) return '';
  return now.direction === 'up' ? ' ▲' : ' ▼';
}
