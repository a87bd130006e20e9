'use client';

import type { ReactNode } from 'react';
import type { GridRun } from '@/app/_parts/use-grid.ts';
import styles from './work-strip.module.css';

/** How far the answers are, with a way to stop; always of the same height, so that nothing jumps when they come. */
export function WorkStrip({ run, rest, children }: { run: GridRun; rest: string; children?: ReactNode }) {
  const { work } = run;
  return (
    <div className={`${styles.strip} no-print`} role="status">
      {work.state === 'busy' ? (
        <span className={styles.busy}>
          <progress value={work.done} max={1} aria-label="Share of the locations judged" />
          <span>{`Judging, ${Math.floor(work.done * 100)} %`}</span>
          <button type="button" onClick={run.stop}>
            Stop
          </button>
        </span>
      ) : null}
      {work.state === 'stopped' || work.state === 'failed' ? (
        <>
          <strong className="fault">
            {work.state === 'stopped'
              ? 'Stopped. What is shown may not answer what is asked.'
              : `The answers did not come: ${work.why}`}
          </strong>
          <button type="button" onClick={run.again}>
            Ask again
          </button>
        </>
      ) : null}
      {work.state === 'rest' ? (
        <>
          <span className="soft">{rest}</span>
          {children}
        </>
      ) : null}
    </div>
  );
}
