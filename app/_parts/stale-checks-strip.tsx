'use client';

import { CautionStrip } from '@/app/_parts/caution-strip.tsx';
import type { AskedTime } from '@/app/_parts/lift-query.ts';
import { lastStaleCheck } from '@/app/_parts/stale-checks.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import { instantWords } from '@/lib/words/plain-words.ts';
import styles from './stale-checks-strip.module.css';

/** Says why nothing can be clear as of now when every walk-round is too old, and offers the two other times to judge at. */
export function StaleChecksStrip({
  index,
  time,
  now,
  onTime,
}: {
  index: SiteIndex;
  time: AskedTime;
  now: string;
  onTime: (time: AskedTime) => void;
}) {
  const last = time.kind === 'now' ? lastStaleCheck(index, now) : null;
  if (last === null) return null;
  return (
    <CautionStrip
      title="No truck counts as checked"
      cautions={[
        <div key="stale" className={styles.said}>
          <p>
            The last walk-round was on {instantWords(last)}; one counts for {index.policy.checkValidHours}{' '}
            hours. Until there is a new one, nothing is clear as of now.
          </p>
          <div className="row no-print">
            <button type="button" onClick={() => onTime({ kind: 'at', instant: last })}>
              Judge as of then
            </button>
            <button type="button" onClick={() => onTime({ kind: 'not-judged' })}>
              Leave checks out
            </button>
          </div>
        </div>,
      ]}
    />
  );
}
