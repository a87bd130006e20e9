'use client';

import { cellText } from '@/lib/import/table.ts';
import { readNoteSentence } from '@/lib/words/import-refusal.ts';
import type { OpenedList } from '@/workers/import-desk.ts';
import styles from './import.module.css';

const SHOWN = 5;

/** The first rows as they stand in the file, and what to know about how it was read. */
export function FirstRows({ opened, name }: { opened: OpenedList; name: string }) {
  const rows = opened.firstRows.slice(0, SHOWN);
  return (
    <div className="stack">
      <section
        className={styles.rows}
        aria-label={`First rows of ${name}`}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must take the focus to be scrolled by keys
        tabIndex={0}
      >
        <table>
          <caption className="unseen">First rows of {name}, as they came</caption>
          <thead>
            <tr>
              <th scope="col">Row</th>
              {opened.header.map((header, at) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: columns have no other name that is their own
                <th key={at} scope="col">
                  {header}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ row, cells }) => (
              <tr key={row}>
                <th scope="row">{row}</th>
                {opened.header.map((_, at) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: columns have no other name that is their own
                  <td key={at}>{cellText(cells[at])}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {opened.rowCount === 0 ? <p className="fault">There is no row under the header.</p> : null}
      <ul className={`${styles.notes} soft dense`}>
        {opened.notes.map((note) => (
          <li key={note.note}>{readNoteSentence(note)}</li>
        ))}
      </ul>
    </div>
  );
}
