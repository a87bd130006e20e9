import { exceedsRecommended, type HandLift } from '@/lib/hand-pick/hand-lift.ts';
import { handLiftWord } from '@/lib/words/hand-pick.ts';
import styles from './hand-pick.module.css';

/** Within or above the recommended limit: word, mark and colour together, so that none is needed alone. */
export function LimitBadge({ lift }: { lift: HandLift }) {
  const above = exceedsRecommended(lift);
  return (
    <span className={`${styles.badge} ${above ? styles.above : styles.within}`}>
      <svg viewBox="0 0 16 16" aria-hidden="true">
        {above ? <path d="M8 13V4M4 7.5L8 3.5l4 4" /> : <path d="M3 5h10M8 13V8" />}
      </svg>
      {handLiftWord(lift)}
    </span>
  );
}
