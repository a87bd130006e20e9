import { VERDICT_STROKES } from '@/app/_parts/verdict-strokes.ts';
import type { Verdict } from '@/lib/check/step.ts';
import { verdictWord } from '@/lib/words/verdict.ts';
import styles from './verdict-badge.module.css';

/** A verdict's mark alone, for places where its word stands beside it. */
export function VerdictMark({ verdict }: { verdict: Verdict }) {
  const { path, width } = VERDICT_STROKES[verdict];
  return (
    <svg viewBox="0 0 16 16" aria-hidden="true" className={`${styles.mark} ${styles[verdict]}`}>
      <path d={path} strokeWidth={width} />
    </svg>
  );
}

/** A verdict as a person meets it: mark, word and colour together, so that none is needed alone. */
export function VerdictBadge({ verdict, size = 'line' }: { verdict: Verdict; size?: 'line' | 'large' }) {
  return (
    <span className={`${styles.badge} ${styles[size]} ${styles[verdict]}`}>
      <VerdictMark verdict={verdict} />
      {verdictWord(verdict)}
    </span>
  );
}
