'use client';

import { VerdictMark } from '@/app/_parts/verdict-badge.tsx';
import { VERDICTS } from '@/lib/check/step.ts';
import type { VerdictCounts as Counts } from '@/lib/grid/summary.ts';
import { verdictMeaning, verdictWord } from '@/lib/words/verdict.ts';
import styles from './racks.module.css';

/** What the marks mean, and how many of each there are in this run. */
export function VerdictCounts({ counts, storedAsked }: { counts: Counts | null; storedAsked: boolean }) {
  return (
    <ul className={styles.legend} aria-label="Verdicts in this run">
      {VERDICTS.map((verdict) => (
        <li key={verdict} title={verdictMeaning(verdict)}>
          <VerdictMark verdict={verdict} /> {verdictWord(verdict)} <strong>{counts?.[verdict] ?? '·'}</strong>
        </li>
      ))}
      {storedAsked ? (
        <li>
          <span className={styles.blank} aria-hidden="true" /> Empty <strong>{counts?.unasked ?? '·'}</strong>
        </li>
      ) : null}
    </ul>
  );
}
