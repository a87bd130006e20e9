'use client';

import { useState } from 'react';
import { downloadText } from '@/app/_parts/download-text.ts';
import type { ReadyFile } from '@/app/import/import-file.ts';
import { factLabel } from '@/app/import/list-words.ts';
import { refusedRowsCsv } from '@/lib/import/refused-rows.ts';
import type { RowRefusal } from '@/lib/import/row-refusal.ts';
import { groupDigits } from '@/lib/units/format-quantity.ts';
import { rowReason } from '@/lib/words/import-refusal.ts';
import styles from './import.module.css';

const PER_PAGE = 100;

/** The rows that are not taken in: where, what came, why; and as a file to mend and read in again. */
export function RefusedRows({
  file,
  refused,
  rows,
}: {
  file: ReadyFile;
  refused: readonly RowRefusal[];
  rows: number;
}) {
  const [shown, setShown] = useState(PER_PAGE);
  const [fault, setFault] = useState<string | null>(null);
  const { mapping } = file.state;
  const download = async () => {
    setFault(null);
    try {
      const reply = await file.client.rowsOf([...new Set(refused.map(({ row }) => row))]);
      if (reply.kind === 'stopped') return;
      const sentence = (refusal: RowRefusal) => {
        const where =
          refusal.column ?? (refusal.fact === null ? null : factLabel(mapping.list, refusal.fact));
        return where === null ? rowReason(refusal) : `${where}: ${rowReason(refusal)}`;
      };
      const text = refusedRowsCsv(reply.result, mapping, refused, sentence);
      downloadText(`${file.name.replace(/\.[^.]*$/, '')}-refused.csv`, 'text/csv;charset=utf-8', text);
    } catch (error) {
      setFault(String(error));
    }
  };
  return (
    <div className="stack">
      <div className="row">
        <h4 className={styles.small}>
          {groupDigits(rows)} {rows === 1 ? 'row' : 'rows'} refused
        </h4>
        <button type="button" onClick={download}>
          Download the refused rows
        </button>
      </div>
      {fault === null ? null : (
        <p role="alert" className="fault">
          {fault}
        </p>
      )}
      <table className={styles.refused}>
        <caption className="unseen">Refused rows of {file.name}</caption>
        <thead>
          <tr>
            <th scope="col">Row</th>
            <th scope="col">Column</th>
            <th scope="col">Why</th>
          </tr>
        </thead>
        <tbody>
          {refused.slice(0, shown).map((refusal, at) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the list never changes its order
            <tr key={at}>
              <th scope="row">{refusal.row === 0 ? 'the list' : `row ${refusal.row}`}</th>
              <td>
                {refusal.column ??
                  (refusal.fact === null ? 'the whole row' : factLabel(mapping.list, refusal.fact))}
              </td>
              <td>{rowReason(refusal)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {refused.length > shown ? (
        <button type="button" onClick={() => setShown(shown + PER_PAGE)}>
          Show {groupDigits(Math.min(PER_PAGE, refused.length - shown))} more of {groupDigits(refused.length)}
        </button>
      ) : null}
    </div>
  );
}
