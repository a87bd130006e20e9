'use client';

import { useId, useState } from 'react';
import { findLocation } from '@/app/racks/racks-question.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import styles from './racks.module.css';

/** Which run is looked at: chosen from the list, the next or the one before, or by a location's id. */
export function RunPicker({
  index,
  runId,
  onRun,
  onLocation,
}: {
  index: SiteIndex;
  runId: string;
  onRun: (id: string) => void;
  onLocation: (id: string) => void;
}) {
  const ids = useId();
  const [words, setWords] = useState('');
  const [fault, setFault] = useState<string | null>(null);
  const { runs, aisles } = index.site;
  const at = runs.findIndex(({ id }) => id === runId);
  const step = (by: number) => onRun(runs[(at + by + runs.length) % runs.length]!.id);
  return (
    <div className={styles.picker}>
      <div className={styles.runs}>
        <button type="button" className="no-print" aria-label="Run before" onClick={() => step(-1)}>
          ‹
        </button>
        <label htmlFor={`${ids}-run`}>Run</label>
        <select id={`${ids}-run`} value={runId} onChange={({ target }) => onRun(target.value)}>
          {aisles.map((aisle) => (
            <optgroup key={aisle.id} label={`Aisle ${aisle.id}`}>
              {runs
                .filter((run) => run.aisleId === aisle.id)
                .map(({ id }) => (
                  <option key={id} value={id}>
                    {id}
                  </option>
                ))}
            </optgroup>
          ))}
        </select>
        <button type="button" className="no-print" aria-label="Next run" onClick={() => step(1)}>
          ›
        </button>
      </div>
      <form
        className={`${styles.goto} no-print`}
        onSubmit={(event) => {
          event.preventDefault();
          const found = findLocation(index, words);
          setFault(found === null ? 'No location has this id' : null);
          if (found !== null) onLocation(found);
        }}
      >
        <label className="unseen" htmlFor={`${ids}-goto`}>
          Location
        </label>
        <input
          id={`${ids}-goto`}
          type="search"
          placeholder="Location"
          autoComplete="off"
          value={words}
          onChange={({ target }) => setWords(target.value)}
          aria-describedby={`${ids}-fault`}
        />
        <button type="submit">Go</button>
        <span id={`${ids}-fault`} role="status" className="fault">
          {fault}
        </span>
      </form>
    </div>
  );
}
