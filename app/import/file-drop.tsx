'use client';

import { type DragEvent, useId, useState } from 'react';
import styles from './import.module.css';

/** Where files are dropped or chosen; several at once are taken in together. */
export function FileDrop({
  onFiles,
  hint,
}: {
  onFiles: (files: readonly File[]) => void;
  hint: string | null;
}) {
  const id = useId();
  const [isOver, setIsOver] = useState(false);
  const onDrop = (event: DragEvent) => {
    event.preventDefault();
    setIsOver(false);
    const files = [...event.dataTransfer.files];
    if (files.length > 0) onFiles(files);
  };
  return (
    <section
      className={styles.drop}
      data-over={isOver || undefined}
      aria-label="Choose files"
      onDragOver={(event) => {
        event.preventDefault();
        setIsOver(true);
      }}
      onDragLeave={() => setIsOver(false)}
      onDrop={onDrop}
    >
      <div className="field">
        <label htmlFor={id}>Lists to read in (CSV or XLSX)</label>
        <input
          id={id}
          type="file"
          multiple
          accept=".csv,.tsv,.txt,.xlsx,text/csv,application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"
          aria-describedby={`${id}-hint`}
          onChange={({ target }) => {
            onFiles([...(target.files ?? [])]);
            target.value = ''; // so that the same file, mended, can be chosen again
          }}
        />
      </div>
      <p id={`${id}-hint`} className="soft">
        {hint} Drop them here as well. Several are read in together, in the order in which they need one
        another. The files stay in this browser until you store them.
      </p>
    </section>
  );
}
