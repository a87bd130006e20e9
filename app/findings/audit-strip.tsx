'use client';

import type { ReactNode } from 'react';
import strip from '@/app/_parts/work-strip.module.css';
import type { useAudit } from '@/app/findings/use-audit.ts';
import styles from './findings.module.css';

/** How far the audit is, with a way to stop; what it was asked once it is done. */
export function AuditStrip({ run, children }: { run: ReturnType<typeof useAudit>; children: ReactNode }) {
  const { work } = run;
  return (
    <div className={`${strip.strip} ${styles.strip} no-print`} role="status">
      {work.state === 'busy' ? (
        <span className={strip.busy}>
          <progress value={work.done} max={1} aria-label="Share of the audit done" />
          <span>{`Looking through the site, ${Math.floor(work.done * 100)} %`}</span>
          <button type="button" onClick={run.stop}>
            Stop
          </button>
        </span>
      ) : null}
      {work.state === 'stopped' || work.state === 'failed' ? (
        <>
          <strong className="fault">
            {work.state === 'stopped'
              ? 'Stopped. What is shown may not be what was asked.'
              : `The findings did not come: ${work.why}`}
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
