'use client';

import { VerdictMark } from '@/app/_parts/verdict-badge.tsx';
import type { RacksQuery } from '@/app/racks/racks-query.ts';
import { VERDICTS } from '@/lib/check/step.ts';
import type { VerdictCounts } from '@/lib/grid/summary.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';
import { verdictMeaning, verdictWord } from '@/lib/words/verdict.ts';
import styles from './racks.module.css';

/** What the marks and figures of the drawing mean, and how many of each there are in this run. */
export function VerdictLegend({
  counts,
  units,
  figure,
  onFigure,
  storedAsked,
}: {
  counts: VerdictCounts | null;
  units: DisplayUnits;
  figure: RacksQuery['figure'];
  onFigure: (figure: RacksQuery['figure']) => void;
  storedAsked: boolean;
}) {
  const unit = units === 'metric' ? 'kg' : 'lb';
  return (
    <div className={styles.legend}>
      <ul aria-label="Verdicts in this run">
        {VERDICTS.map((verdict) => (
          <li key={verdict} title={verdictMeaning(verdict)}>
            <VerdictMark verdict={verdict} /> {verdictWord(verdict)}{' '}
            <strong>{counts?.[verdict] ?? '·'}</strong>
          </li>
        ))}
        {storedAsked ? (
          <li>
            <span className={styles.blank} aria-hidden="true" /> Empty{' '}
            <strong>{counts?.unasked ?? '·'}</strong>
          </li>
        ) : null}
      </ul>
      <label className={styles.figure}>
        <span className="unseen">Figure in each cell</span>
        <select
          value={figure}
          onChange={({ target }) => onFigure(target.value === 'spare' ? 'spare' : 'most')}
        >
          <option value="most">Figures: most here, {unit}</option>
          <option value="spare">Figures: to spare, {unit}</option>
        </select>
      </label>
    </div>
  );
}
