'use client';

import type { RacksQuery } from '@/app/racks/racks-query.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';
import styles from './racks.module.css';

/** Which figure stands in each cell of the drawing. */
export function FigureChoice({
  units,
  figure,
  onFigure,
}: {
  units: DisplayUnits;
  figure: RacksQuery['figure'];
  onFigure: (figure: RacksQuery['figure']) => void;
}) {
  const unit = units === 'metric' ? 'kg' : 'lb';
  return (
    <label className={styles.figure}>
      <span className="unseen">Figure in each cell</span>
      <select value={figure} onChange={({ target }) => onFigure(target.value === 'spare' ? 'spare' : 'most')}>
        <option value="most">Figures: most here, {unit}</option>
        <option value="spare">Figures: to spare, {unit}</option>
      </select>
    </label>
  );
}
