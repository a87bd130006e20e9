'use client';

import type { ReactNode } from 'react';
import type { GridRun } from '@/app/_parts/use-grid.ts';
import styles from './work-strip.module.css';

/** What the strip says of a kind of work. */
export type WorkWords = { share: string; busy: string; stopped: string; failed: string };

const JUDGING: WorkWords = {
  share: 'Share of the locations judged',
  busy: 'Judging',
  stopped: 'Stopped. What is shown may not answer what is asked.',
  failed: 'The answers did not come',
};

/** How far a worker's work is, with a way to stop; always of the same height, so that nothing jumps when it is done. */
export function WorkStrip({
  run,
  words = JUDGING,
  className = '',
  children,
}: {
  run: Pick<GridRun, 'work' | 'stop' | 'again'>;
  words?: WorkWords;
  className?: string;
  children?: ReactNode;
}) {
  const { work } = run;
  return (
    <div className={`${styles.strip} ${className} no-print`} role="status">
      {work.state === 'busy' ? (
        <span className={styles.busy}>
          <progress value={work.done} max={1} aria-label={words.share} />
          <span>{`${words.busy}, ${Math.floor(work.done * 100)} %`}</span>
          <button type="button" onClick={run.stop}>
            Stop
          </button>
        </span>
      ) : null}
      {work.state === 'stopped' || work.state === 'failed' ? (
        <>
          <strong className="fault">
            {work.state === 'stopped' ? words.stopped : `${words.failed}: ${work.why}`}
          </strong>
          <button type="button" onClick={run.again}>
            Ask again
          </button>
        </>
      ) : null}
      {work.state === 'rest' ? children : null}
    </div>
  );
}
