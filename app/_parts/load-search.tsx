'use client';

import { useId, useMemo, useState } from 'react';
import type { Load } from '@/lib/model/load.ts';
import { findLoads } from './find-loads.ts';
import styles from './load-search.module.css';

const SHOWN = 12;

/** Finds one of the site's loads by id or name: type, then choose with the arrows and Enter, or with a tap. */
export function LoadSearch({
  label,
  loads,
  chosen,
  onChoose,
}: {
  label: string;
  loads: readonly Load[];
  chosen: Load | null;
  onChoose: (load: Load) => void;
}) {
  const ids = useId();
  const [words, setWords] = useState<string | null>(null);
  const [at, setAt] = useState(0);
  const open = words !== null;
  const matches = useMemo(() => (words === null ? [] : findLoads(loads, words, SHOWN)), [loads, words]);

  const choose = (load: Load | undefined) => {
    if (load === undefined) return;
    onChoose(load);
    setWords(null);
  };
  const move = (step: number) => setAt((at + step + matches.length) % Math.max(matches.length, 1));

  return (
    <div className={`field ${styles.search}`}>
      <label htmlFor={`${ids}-field`}>{label}</label>
      <input
        id={`${ids}-field`}
        type="text"
        role="combobox"
        autoComplete="off"
        aria-expanded={open}
        aria-controls={`${ids}-list`}
        aria-activedescendant={open && matches[at] ? `${ids}-${at}` : undefined}
        placeholder="Id or name"
        value={words ?? (chosen === null ? '' : `${chosen.id} ${chosen.name}`)}
        onFocus={(event) => event.target.select()}
        onChange={(event) => {
          setWords(event.target.value);
          setAt(0);
        }}
        onBlur={() => setWords(null)}
        onKeyDown={(event) => {
          if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
            event.preventDefault();
            if (open) move(event.key === 'ArrowDown' ? 1 : -1);
            else setWords('');
          } else if (event.key === 'Enter' && open) {
            event.preventDefault();
            choose(matches[at]);
          } else if (event.key === 'Escape') {
            setWords(null);
          }
        }}
      />
      <div id={`${ids}-list`} role="listbox" aria-label={label} className={styles.list} hidden={!open}>
        {matches.map((load, option) => (
          <div
            key={load.id}
            id={`${ids}-${option}`}
            role="option"
            aria-selected={option === at}
            tabIndex={-1}
            // pointerdown, since a click would come after the field has lost its focus and closed the list
            onPointerDown={(event) => {
              event.preventDefault();
              choose(load);
            }}
          >
            <strong>{load.id}</strong> {load.name}
          </div>
        ))}
        {open && matches.length === 0 ? (
          <div role="option" aria-selected={false} aria-disabled="true" tabIndex={-1}>
            No load has these words
          </div>
        ) : null}
      </div>
    </div>
  );
}
