import { VERDICT_STROKES } from '@/app/_parts/verdict-strokes.ts';
import type { Outcome } from '@/lib/check/step.ts';
import { outcomeWord } from '@/lib/words/verdict.ts';
import styles from './outcome-badge.module.css';

/** An outcome bears the mark of the verdict it leads to; a rule that does not apply bears a dot. */
const STROKES: Record<Outcome, { path: string; width: number }> = {
  pass: VERDICT_STROKES.clear,
  thin: VERDICT_STROKES.thin,
  fail: VERDICT_STROKES.refuse,
  unknown: VERDICT_STROKES.unproven,
  'not-applicable': { path: 'M8 7.6v.8', width: 2.2 },
};

/** How one rule came out: mark, word and ink together. `words` say it more closely than the outcome's own word. */
export function OutcomeBadge({ outcome, words }: { outcome: Outcome; words?: string }) {
  const { path, width } = STROKES[outcome];
  return (
    <span className={`${styles.badge} ${styles[outcome]}`}>
      <svg viewBox="0 0 16 16" aria-hidden="true">
        <path d={path} strokeWidth={width} />
      </svg>
      {words ?? outcomeWord(outcome)}
    </span>
  );
}
