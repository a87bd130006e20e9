'use client';

import { useState } from 'react';
import type { Mapping } from '@/lib/import/mapping.ts';
import type { OpenChoice, OpenedList } from '@/workers/import-desk.ts';
import styles from './import.module.css';

/** For a file that is not read as it is meant: which sheet, which header row, what parts the columns, which words say nothing. */
export function ReadingChoice({
  fileKey,
  opened,
  choice,
  mapping,
  onReopen,
  onMapping,
}: {
  fileKey: number;
  opened: OpenedList;
  choice: OpenChoice;
  mapping: Mapping;
  onReopen: (choice: OpenChoice) => void;
  onMapping: (mapping: Mapping) => void;
}) {
  const id = `reading-${fileKey}`;
  const other = opened.notes.find((note) => note.note === 'other-sheets');
  const sheets = other === undefined ? [] : [other.read, ...other.left];
  const [headerRow, setHeaderRow] = useState(String(choice.headerRow ?? ''));
  const [words, setWords] = useState(mapping.nullWords.filter((word) => word !== '').join(', '));
  return (
    <details>
      <summary>How the file is read</summary>
      <div className={styles.choices}>
        {sheets.length > 1 ? (
          <div className="field">
            <label htmlFor={`${id}-sheet`}>Sheet</label>
            <select
              id={`${id}-sheet`}
              value={opened.sheet ?? ''}
              onChange={({ target }) => onReopen({ ...choice, sheet: target.value })}
            >
              {sheets.map((sheet) => (
                <option key={sheet}>{sheet}</option>
              ))}
            </select>
          </div>
        ) : null}
        {opened.sheet === null ? (
          <div className="field">
            <label htmlFor={`${id}-delimiter`}>Columns are parted by</label>
            <select
              id={`${id}-delimiter`}
              value={choice.delimiter ?? ''}
              onChange={({ target }) =>
                onReopen({ ...choice, delimiter: target.value === '' ? undefined : target.value })
              }
            >
              <option value="">what was guessed</option>
              <option value=",">commas</option>
              <option value=";">semicolons</option>
              <option value={'\t'}>tabs</option>
              <option value="|">upright bars</option>
            </select>
          </div>
        ) : null}
        <form
          className="field"
          onSubmit={(event) => {
            event.preventDefault();
            const row = Number(headerRow);
            onReopen({ ...choice, headerRow: Number.isInteger(row) && row > 0 ? row : undefined });
          }}
        >
          <label htmlFor={`${id}-header`}>The header is in row</label>
          <span className={styles.withButton}>
            <input
              id={`${id}-header`}
              inputMode="numeric"
              value={headerRow}
              placeholder="the first that is not blank"
              onChange={({ target }) => setHeaderRow(target.value)}
            />
            <button type="submit">Read again</button>
          </span>
        </form>
        <div className="field">
          <label htmlFor={`${id}-null`}>
            Words for “not known” <span className="soft">(parted by commas)</span>
          </label>
          <input
            id={`${id}-null`}
            value={words}
            onChange={({ target }) => {
              setWords(target.value);
              const nullWords = ['', ...target.value.split(',').map((word) => word.trim())];
              onMapping({ ...mapping, nullWords: [...new Set(nullWords)] });
            }}
          />
        </div>
      </div>
    </details>
  );
}
