import { useId } from 'react';
import { axisMarks, lengthIn, massIn, spreadLabels } from '@/app/_parts/chart-scale.ts';
import { type ChartLine, endMm, endOfPlateMm } from '@/app/_parts/load-chart-lines.ts';
import { Axes, Mark, type Plot } from '@/app/_parts/load-chart-parts.tsx';
import { type ChartMark, describeChart } from '@/app/_parts/load-chart-words.ts';
import { plateRating } from '@/lib/check/plate-rating.ts';
import type { Truck } from '@/lib/model/truck.ts';
import { type DisplayUnits, formatLength } from '@/lib/units/format-quantity.ts';
import styles from './load-chart.module.css';

const EDGE = { top: 26, right: 104, bottom: 46, left: 58 };
const TEXT_HEIGHT = 15;

/** The chart at one size: axes, one line for each load centre and mast position, and the lift that is asked about. */
export function LoadChartDrawing({
  truck,
  units,
  mark,
  lines,
  width,
  height,
}: {
  truck: Truck;
  units: DisplayUnits;
  mark?: ChartMark;
  lines: readonly ChartLine[];
  width: number;
  height: number;
}) {
  const id = useId();
  const plot = {
    left: EDGE.left,
    right: width - (width < 500 ? 84 : EDGE.right),
    top: EDGE.top,
    bottom: height - EDGE.bottom,
  };
  const highestMm = Math.max(truck.maxLiftMm, mark?.liftMm ?? 0, ...lines.map(endMm));
  const heaviestKg = Math.max(
    mark?.assessedKg ?? 0,
    ...lines.flatMap((line) => line.steps.map(({ capacityKg }) => capacityKg)),
  );
  const across = axisMarks(lengthIn(highestMm, units), width < 500 ? 4 : 8);
  const up = axisMarks(massIn(heaviestKg, units), 6);
  const x = (mm: number) =>
    plot.left + ((plot.right - plot.left) * lengthIn(mm, units)) / (across.at(-1) ?? 1);
  const y = (kg: number) => plot.bottom - ((plot.bottom - plot.top) * massIn(kg, units)) / (up.at(-1) ?? 1);
  const plateEndMm = endOfPlateMm(lines);
  const centres = [...new Set(lines.map((line) => line.loadCentreMm))];
  const labelsY = labelHeights(lines, y, plot);

  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      className={styles.chart}
      role="img"
      aria-labelledby={`${id}-t ${id}-d`}
    >
      <title id={`${id}-t`}>{`Load chart of ${truck.name}`}</title>
      <desc id={`${id}-d`}>{describeChart(lines, units, mark)}</desc>
      <defs>
        <pattern
          id={`${id}-h`}
          width="7"
          height="7"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <path d="M0 0v7" className={styles.hatch} />
        </pattern>
      </defs>
      <Axes plot={plot} up={up} across={across} units={units} height={height} />

      {plateEndMm < truck.maxLiftMm ? (
        <g>
          <path
            d={`M${x(plateEndMm)} ${plot.top}H${x(truck.maxLiftMm)}V${plot.bottom}H${x(plateEndMm)}z`}
            fill={`url(#${id}-h)`}
          />
        </g>
      ) : null}
      <path d={`M${x(truck.maxLiftMm)} ${plot.top}V${plot.bottom}`} className={styles.most} />

      {lines.map((line, at) => (
        <g
          key={`${line.mast} ${line.loadCentreMm}`}
          className={styles[`line${centres.indexOf(line.loadCentreMm) % 4}`]}
        >
          <path
            d={pathOf(line, x, y)}
            className={line.mast === 'vertical' ? styles.upright : styles.tilted}
          />
          <path
            d={`M${x(endMm(line))} ${y(line.steps.at(-1)?.capacityKg ?? 0)}L${x(endMm(line)) + 5} ${labelsY[at]}`}
            className={styles.lead}
          />
          <text x={x(endMm(line)) + 8} y={(labelsY[at] ?? 0) + 4} className={styles.label}>
            {`${formatLength(line.loadCentreMm, units, 'down')}${line.mast === 'vertical' ? '' : ', tilt'}`}
          </text>
        </g>
      ))}
      {mark === undefined ? null : (
        <Mark
          mark={mark}
          proven={plateRating(truck, 'vertical', mark.liftMm, mark.loadCentreMm).kind === 'proven'}
          plot={plot}
          x={x(mark.liftMm)}
          y={mark.assessedKg === null ? null : y(mark.assessedKg)}
        />
      )}
    </svg>
  );
}

/** Where each line's label stands: at its end, clear of the labels of the other lines that end at that height. */
function labelHeights(lines: readonly ChartLine[], y: (kg: number) => number, plot: Plot): number[] {
  const placed = lines.map((line) => y(line.steps.at(-1)?.capacityKg ?? 0));
  for (const end of new Set(lines.map(endMm))) {
    const group = lines.flatMap((line, at) => (endMm(line) === end ? [at] : []));
    const spread = spreadLabels(
      group.map((at) => placed[at] ?? 0),
      { apart: TEXT_HEIGHT, from: plot.top + 4, to: plot.bottom - 4 },
    );
    for (const [order, at] of group.entries()) placed[at] = spread[order] ?? 0;
  }
  return placed;
}

function pathOf(line: ChartLine, x: (mm: number) => number, y: (kg: number) => number): string {
  return line.steps
    .map((step, at) => `${at === 0 ? 'M' : 'L'}${x(step.fromMm)} ${y(step.capacityKg)}H${x(step.toMm)}`)
    .join('');
}
