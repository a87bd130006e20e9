import { LoadChartDrawing } from '@/app/_parts/load-chart-drawing.tsx';
import { chartLines, endOfPlateMm } from '@/app/_parts/load-chart-lines.ts';
import { type ChartMark, markSentence } from '@/app/_parts/load-chart-words.ts';
import type { Truck } from '@/lib/model/truck.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';
import styles from './load-chart.module.css';

/**
 * A truck's load chart: the mass that its plate proves over the lift height, a line for each load centre, forward tilt
 * dashed; with the lift that is asked about marked on it. Nothing is drawn beyond the plate. The plate as a table stands
 * beside it wherever it is shown.
 */
export function LoadChart(props: { truck: Truck; units: DisplayUnits; mark?: ChartMark }) {
  const lines = chartLines(props.truck);
  if (lines.length === 0) {
    return (
      <p className={styles.none}>The plate states nothing for what is fitted: there is no chart to draw.</p>
    );
  }
  return (
    <figure className={styles.figure}>
      <div className={styles.wide}>
        <LoadChartDrawing {...props} lines={lines} width={700} height={380} />
      </div>
      <div className={styles.narrow}>
        <LoadChartDrawing {...props} lines={lines} width={350} height={320} />
      </div>
      <figcaption className={styles.caption}>
        {props.mark === undefined ? null : (
          <strong>{markSentence(props.truck, props.mark, props.units)} </strong>
        )}
        <span className="soft">
          At each line its load centre; dashed where the mast is tilted forward. Dotted upright: the largest
          lift.
          {endOfPlateMm(lines) < props.truck.maxLiftMm ? ' Hatched: the plate states nothing there.' : ''}
        </span>
      </figcaption>
    </figure>
  );
}
