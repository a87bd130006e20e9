import { useId } from 'react';
import { axisMarks, lengthIn, lengthUnit, massIn, massUnit, spreadLabels } from '@/app/_parts/chart-scale.ts';
import { type ChartLine, chartLines } from '@/app/_parts/load-chart-lines.ts';
import type { ShownUnits } from '@/app/_parts/units-cookie.ts';
import { plateRating } from '@/lib/check/plate-rating.ts';
import type { Truck } from '@/lib/model/truck.ts';
import { formatLength, formatMass, groupDigits } from '@/lib/units/format-quantity.ts';
import { causeWords } from '@/lib/words/cause.ts';
import styles from './load-chart.module.css';

/** The lift that is asked about, to be marked on the chart. */
export type ChartMark = { liftMm: number; loadCentreMm: number; assessedKg: number | null };

type ChartProps = { truck: Truck; units: ShownUnits; mark?: ChartMark };

/**
 * A truck's load chart: the mass that its plate proves over the lift height, a line for each load centre, forward tilt
 * dashed; with the lift that is asked about marked on it. Nothing is drawn beyond the plate. The plate as a table stands
 * beside it wherever it is shown.
 */
export function LoadChart(props: ChartProps) {
  const lines = chartLines(props.truck);
  if (lines.length === 0) {
    return (
      <p className={styles.none}>The plate states nothing for what is fitted: there is no chart to draw.</p>
    );
  }
  return (
    <figure className={styles.figure}>
      <div className={styles.wide}>
        <Drawing {...props} lines={lines} width={700} height={380} />
      </div>
      <div className={styles.narrow}>
        <Drawing {...props} lines={lines} width={350} height={320} />
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

const EDGE = { top: 26, right: 104, bottom: 46, left: 58 };
const TEXT_HEIGHT = 15;

function Drawing({
  truck,
  units,
  mark,
  lines,
  width,
  height,
}: ChartProps & { lines: readonly ChartLine[]; width: number; height: number }) {
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

type Plot = { left: number; right: number; top: number; bottom: number };

function Mark({
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

/** How high the plate rates the truck with its mast vertical. */
function endOfPlateMm(lines: readonly ChartLine[]): number {
  return Math.max(0, ...lines.filter((line) => line.mast === 'vertical').map(endMm));
}

function endMm(line: ChartLine): number {
  return line.steps.at(-1)?.toMm ?? 0;
}

/** The lift that is marked, and what the plate says to it. */
function markSentence(truck: Truck, mark: ChartMark, units: ShownUnits): string {
  const plate = plateRating(truck, 'vertical', mark.liftMm, mark.loadCentreMm);
  const mass = mark.assessedKg === null ? 'a mass not known' : formatMass(mark.assessedKg, units, 'up');
  const lift = `This lift: ${mass} at ${formatLength(mark.liftMm, units, 'up')}, load centre ${formatLength(mark.loadCentreMm, units, 'up')}.`;
  return plate.kind === 'proven'
    ? `${lift} With the mast vertical the plate proves ${formatMass(plate.rating.capacityKg, units, 'down')} there.`
    : `${lift} The plate proves nothing there: ${causeWords(plate.cause)}.`;
}

/** The chart in words for those who hear the page: each line's steps, then the lift that is asked about. */
function describeChart(lines: readonly ChartLine[], units: ShownUnits, mark: ChartMark | undefined): string {
  const told = lines.map((line) => {
    const steps = line.steps.map(
      ({ toMm, capacityKg }) =>
        `${formatMass(capacityKg, units, 'down')} up to ${formatLength(toMm, units, 'down')}`,
    );
    const mast = line.mast === 'vertical' ? 'mast vertical' : 'mast tilted forward';
    return `Load centre ${formatLength(line.loadCentreMm, units, 'down')}, ${mast}: ${steps.join(', ')}.`;
  });
  if (mark !== undefined) {
    const mass =
      mark.assessedKg === null ? 'a load of unknown mass' : formatMass(mark.assessedKg, units, 'up');
    told.push(
      `This lift: ${mass} at ${formatLength(mark.liftMm, units, 'up')}, load centre ${formatLength(mark.loadCentreMm, units, 'up')}.`,
    );
  }
  return told.join(' ');
}
