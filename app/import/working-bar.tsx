'use client';

import { useEffect, useState } from 'react';
import type { FileProgress } from '@/app/import/dry-run.ts';
import type { RunState } from '@/app/import/use-dry-run.ts';
import { groupDigits } from '@/lib/units/format-quantity.ts';
import styles from './import.module.css';

/** How far the dry run or the storing is. A dry run can be stopped; what is being stored is stored whole or not at all. */
export function WorkingBar({ state, onStop }: { state: RunState; onStop: () => void }) {
  if (state.is === 'running') {
    const { progress } = state;
    return (
      <div className={styles.working} role="status">
        <progress
          aria-label="Dry run"
          {...(progress === null || progress.stage === 'agreeing'
            ? {}
            : { value: progress.done, max: Math.max(1, progress.total) })}
        />
        <span>{progress === null ? 'Fetching the site…' : progressWords(progress)}</span>
        <button type="button" onClick={onStop}>
          Stop
        </button>
      </div>
    );
  }
  if (state.is === 'storing') {
    return (
      <div className={styles.working} role="status">
        <progress aria-label="Storing" {...(state.sent < 1 ? { value: state.sent, max: 1 } : {})} />
        <span>
          {state.sent < 1 ? `Sending, ${Math.floor(state.sent * 100)} %` : <StoringFor since={state.since} />}
        </span>
      </div>
    );
  }
  return null;
}

function progressWords({ file, stage, done, total }: FileProgress): string {
  if (stage === 'rows') return `${file.name}: row ${groupDigits(done)} of ${groupDigits(total)}`;
  return stage === 'reading' ? `${file.name}: reading` : `${file.name}: comparing with the site`;
}

function StoringFor({ since }: { since: number }) {
  const [seconds, setSeconds] = useState(0);
  useEffect(() => {
    const timer = setInterval(() => setSeconds(Math.floor((Date.now() - since) / 1000)), 1000);
    return () => clearInterval(timer);
  }, [since]);
  return <>The server checks and stores: {seconds} s</>;
}
