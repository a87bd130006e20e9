'use client';

import { useUnits } from '@/app/_parts/units-context.tsx';
import type { Figure, SteelComparison } from '@/lib/rack-shape/compare-steel.ts';
import type { FrameRating } from '@/lib/rack-shape/rate-frames.ts';
import { formatLength, formatMass } from '@/lib/units/format-quantity.ts';
import styles from './rack-shape.module.css';

/** Openings, gaps and frame ratings before and after. */
export function SteelPart({ steel }: { steel: SteelComparison }) {
  const units = useUnits();
  const { openings, gaps, frames } = steel;
  if (openings.length + gaps.length + frames.length === 0)
    return <p>No opening, gap or frame rating changes.</p>;
  const length = (mm: number | null, none: string, lean: 'up' | 'down') =>
    mm === null ? none : formatLength(mm, units, lean);
  const row = (
    key: string,
    what: string,
    { before, after }: Figure,
    show: (value: number | null) => string,
  ) => (
    <tr key={key}>
      <th scope="row">{what}</th>
      <td className="number">{show(before)}</td>
      <td className="number">{show(after)}</td>
    </tr>
  );
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls by keys
    <section className="scroll-x" tabIndex={0} aria-label="Steel before and after">
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">Steel</th>
            <th scope="col">Before</th>
            <th scope="col">After</th>
          </tr>
        </thead>
        <tbody>
          {openings.map(({ firstBay, lastBay, level, mm }) =>
            row(
              `o ${firstBay} ${level}`,
              `Opening on level ${level}, ${between('bay', firstBay, lastBay)}`,
              mm,
              (value) => length(value, 'open above', 'down'),
            ),
          )}
          {gaps.map(({ firstBay, lastBay, mm }) =>
            row(`g ${firstBay}`, `Largest gap, ${between('bay', firstBay, lastBay)}`, mm, (value) =>
              length(value, 'no beams', 'up'),
            ),
          )}
          {frames.map(({ firstFrame, lastFrame, ratingKg }) =>
            row(`f ${firstFrame}`, `Rating, ${between('frame', firstFrame, lastFrame)}`, ratingKg, (value) =>
              value === null ? 'none applies' : formatMass(value, units, 'down'),
            ),
          )}
        </tbody>
      </table>
    </section>
  );
}

function between(what: string, first: string, last: string): string {
  return first === last ? `${what} ${first}` : `${what}s ${first} to ${last}`;
}

/** The ratings that apply to the frames of a new run. */
export function RatingsPart({ ratings }: { ratings: readonly FrameRating[] }) {
  const units = useUnits();
  return (
    <ul className={styles.plain}>
      {ratings.map(({ typeId, gapMm, ratingKg, count }) => (
        <li key={`${typeId} ${gapMm}`}>
          {count === 1 ? '1 frame' : `${count} frames`} of type {typeId},{' '}
          {gapMm === null ? 'no beams beside them' : `largest gap ${formatLength(gapMm, units, 'up')}`}:{' '}
          <strong>
            {ratingKg === null ? 'no rating applies' : `rated ${formatMass(ratingKg, units, 'down')}`}
          </strong>
        </li>
      ))}
    </ul>
  );
}
