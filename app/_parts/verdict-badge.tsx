import type { Verdict } from '@/lib/check/step.ts';
import styles from './verdict-badge.module.css';

/** The mark of each verdict, drawn on a 16 grid: two level bars, one thin bar, a question, a cross. */
function Strokes({ verdict }: { verdict: Verdict }) {
  switch (verdict) {
    case 'clear':
      return <path d="M4 6h8M4 10h8" />;
    case 'thin':
      return <path d="M3.5 8h9" strokeWidth="1.5" />;
    case 'unproven':
      return <path d="M5.6 6.2c0-3.2 4.8-3.2 4.8-.3 0 1.9-2.4 1.7-2.4 3.8M8 12v.4" />;
    case 'refuse':
      return <path d="M4.5 4.5l7 7M11.5 4.5l-7 7" />;
  }
}

/** A verdict's mark alone, for places where its word stands beside it. */
export function VerdictMark({ verdict }: { verdict: Verdict }) {
  return (
    <svg viewBox="0 0 16 16" aria-hidden="true" className={`${styles.mark} ${styles[verdict]}`}>
      <Strokes verdict={verdict} />
    </svg>
  );
}

const WORDS: Record<Verdict, string> = {
  clear: 'Clear',
  thin: 'Thin',
  unproven: 'Unproven',
  refuse: 'Refuse',
};

/** A verdict as a person meets it: mark, word and colour together, so that none is needed alone. */
export function VerdictBadge({ verdict, size = 'line' }: { verdict: Verdict; size?: 'line' | 'large' }) {
  return (
    <span className={`${styles.badge} ${styles[size]} ${styles[verdict]}`}>
      <VerdictMark verdict={verdict} />
      {WORDS[verdict]}
    </span>
  );
}
