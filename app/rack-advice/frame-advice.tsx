import type { RackQuery } from '@/app/rack-advice/rack-query.ts';
import { found, type SiteIndex } from '@/lib/model/site-index.ts';
import { capacityAtLongerGapKg } from '@/lib/rack/buckling.ts';
import { frameLoad } from '@/lib/rack/frame-load.ts';
import {
  ANCHOR_TEST_FORCE_N,
  frameStability,
  highestBeamMm,
  outOfPlumbLimitMm,
  overturning,
  PLUMB_RULES,
  type PlumbRule,
} from '@/lib/rack/frame-stability.ts';
import { bearingNmm2, footLoadN } from '@/lib/rack/support-shares.ts';
import { type DisplayUnits, formatLength, formatMass } from '@/lib/units/format-quantity.ts';
import { plumbWords, stabilityWords } from '@/lib/words/rack-advice.ts';
import styles from './rack-advice.module.css';

/** How slender the row is, how far its uprights may lean, and what its two frames press on the floor with. */
export function FrameAdvice({
  at,
  plate,
  index,
  units,
}: {
  at: NonNullable<RackQuery['bay']>;
  plate: RackQuery['plate'];
  index: SiteIndex;
  units: DisplayUnits;
}) {
  const { run, bay, bayIndex } = at;
  const topBeamMm = Math.max(...bay.levels.map((level) => level.beamTopMm));
  if (topBeamMm === 0) return null;
  const { coupleN } = overturning({
    forceN: ANCHOR_TEST_FORCE_N,
    heightMm: topBeamMm,
    frameDepthMm: run.frameDepthMm,
  });
  const { ratio, class: stability } = frameStability({ topBeamMm, frameDepthMm: run.frameDepthMm });
  return (
    <section className="sheet stack" aria-labelledby="frames-heading">
      <h2 id="frames-heading">Frames, {formatLength(run.frameDepthMm, units, 'up')} deep</h2>
      <p>
        Top beam {formatLength(topBeamMm, units, 'up')}: {(Math.ceil(ratio * 100) / 100).toFixed(2)} times the
        depth. For a single row that asks for {stabilityWords(stability)}; normal anchors do up to{' '}
        {formatLength(highestBeamMm(run.frameDepthMm), units, 'down')} (ANSI MH16.1). A pull of 350 lbf at the
        top beam asks {kilonewtons(coupleN)} of a foot, the frame’s own mass left out. A row tied back to back
        is judged by its supplier.
      </p>
      <table className={styles.table}>
        <caption>How far an upright may lean over {formatLength(topBeamMm, units, 'up')}</caption>
        <tbody>
          {(Object.keys(PLUMB_RULES) as PlumbRule[]).map((rule) => (
            <tr key={rule}>
              <th scope="row">{plumbWords(rule)}</th>
              <td>{formatLength(outOfPlumbLimitMm(topBeamMm, rule), units, 'down')}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <ul className={styles.list}>
        {[bayIndex, bayIndex + 1].map((frameIndex) => (
          <FrameLine
            key={frameIndex}
            frameIndex={frameIndex}
            run={run}
            plate={plate}
            index={index}
            units={units}
          />
        ))}
      </ul>
    </section>
  );
}

function FrameLine({
  frameIndex,
  run,
  plate,
  index,
  units,
}: {
  plate: RackQuery['plate'];
  frameIndex: number;
  run: NonNullable<RackQuery['bay']>['run'];
  index: SiteIndex;
  units: DisplayUnits;
}) {
  const { frame, standing, largestGapMm, rating } = frameLoad(index, run, frameIndex, {
    stock: 'as-is',
    from: null,
  });
  const carriedKg = standing.kg === null ? null : standing.kg / 2;
  return (
    <li>
      <strong>{frame.id}</strong>{' '}
      {carriedKg === null
        ? 'carries a load of unknown mass: what it presses on the floor cannot be said.'
        : `carries ${formatMass(carriedKg, units, 'up')} as the bays stand now: ${kilonewtons(
            footLoadN({ carriedKg, ownKg: 0 }),
          )} on each foot, its own mass left out.`}{' '}
      {carriedKg === null || plate === null
        ? null
        : `Under its plate: ${megapascals(bearingNmm2({ forceN: footLoadN({ carriedKg, ownKg: 0 }), ...plate }))}. `}
      {rating === null && largestGapMm !== null
        ? beyondTable(index, frame.typeId, largestGapMm, units)
        : null}
    </li>
  );
}

/** A gap that the frame's table does not reach: what Euler alone would leave, for a talk with the supplier. */
function beyondTable(index: SiteIndex, typeId: string, gapMm: number, units: DisplayUnits): string {
  const { ratings } = found(index.frameTypes, typeId, 'frame type');
  const longest = ratings.reduce<(typeof ratings)[number] | null>(
    (best, rating) => (best === null || rating.maxGapMm > best.maxGapMm ? rating : best),
    null,
  );
  const gap = `Its largest gap, ${formatLength(gapMm, units, 'up')}, is beyond its table`;
  if (longest === null) return `${gap}, which states nothing.`;
  const leftKg = capacityAtLongerGapKg({
    capacityKg: longest.capacityKg,
    ratedGapMm: longest.maxGapMm,
    gapMm,
  });
  return `${gap}: ask the supplier. By Euler alone about ${formatMass(leftKg, units, 'down')} would be left of ${formatMass(longest.capacityKg, units, 'down')}; it proves nothing.`;
}

function megapascals(nmm2: number): string {
  return `${(Math.ceil(nmm2 * 100) / 100).toFixed(2)}\u202fMPa`;
}

function kilonewtons(newtons: number): string {
  return `${(Math.ceil(newtons / 100) / 10).toFixed(1)}\u202fkN`;
}
