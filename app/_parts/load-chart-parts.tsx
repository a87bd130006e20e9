import { lengthUnit, massUnit } from '@/app/_parts/chart-scale.ts';
import type { ChartMark } from '@/app/_parts/load-chart-words.ts';
import { type DisplayUnits, groupDigits } from '@/lib/units/format-quantity.ts';
import styles from './load-chart.module.css';

/** Where the lines are drawn, in the drawing's own units. */
export type Plot = { left: number; right: number; top: number; bottom: number };

/** Both axes with their round marks and names; `up` and `across` are the marks in the shown units. */
export function Axes({
  plot,
  up,
  across,
  units,
  height,
}: {
  plot: Plot;
  up: readonly number[];
  across: readonly number[];
  units: DisplayUnits;
  height: number;
}) {
  return (
    <>
      {up.map((value) => {
        const at = plot.bottom - ((plot.bottom - plot.top) * value) / (up.at(-1) ?? 1);
        return (
          <g key={value}>
            <path d={`M${plot.left} ${at}H${plot.right}`} className={styles.rule} />
            <text x={plot.left - 8} y={at + 4} textAnchor="end">
              {groupDigits(value)}
            </text>
          </g>
        );
      })}
      {across.map((value) => {
        const at = plot.left + ((plot.right - plot.left) * value) / (across.at(-1) ?? 1);
        return (
          <g key={value}>
            <path d={`M${at} ${plot.bottom}v5`} className={styles.axis} />
            <text x={at} y={plot.bottom + 18} textAnchor="middle">
              {groupDigits(value)}
            </text>
          </g>
        );
      })}
      <path d={`M${plot.left} ${plot.top - 6}V${plot.bottom}H${plot.right}`} className={styles.axis} />
      <text x={plot.left - 8} y={12} textAnchor="start" className={styles.name}>
        {`Capacity, ${massUnit(units)}`}
      </text>
      <text x={plot.right} y={height - 8} textAnchor="end" className={styles.name}>
        {`Lift height, ${lengthUnit(units)}`}
      </text>
    </>
  );
}

/** The lift that is asked about: full where a line of the plate covers it, open where none does. */
export function Mark({
  mark,
  proven,
  plot,
  x,
  y,
}: {
  mark: ChartMark;
  proven: boolean;
  plot: Plot;
  x: number;
  y: number | null;
}) {
  const toLeft = x > (plot.left + plot.right) / 2;
  if (y === null) {
    return (
      <g className={styles.mark}>
        <path d={`M${x} ${plot.top}V${plot.bottom}`} className={styles.markLine} />
        <text x={toLeft ? x - 6 : x + 6} y={plot.bottom - 8} textAnchor={toLeft ? 'end' : 'start'}>
          this lift, mass not known
        </text>
      </g>
    );
  }
  return (
    <g className={styles.mark} data-mark={mark.liftMm}>
      <path d={`M${x} ${plot.bottom}V${y}H${plot.left}`} className={styles.markLine} />
      <path d={`M${x} ${y - 9}l9 9l-9 9l-9 -9z`} className={proven ? styles.markPoint : styles.markOpen} />
      <text x={toLeft ? x - 13 : x + 13} y={y + 16} textAnchor={toLeft ? 'end' : 'start'}>
        {proven ? 'this lift' : 'this lift: no line covers it'}
      </text>
    </g>
  );
}
