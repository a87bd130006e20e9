import type { RackQuery } from '@/app/rack-advice/rack-query.ts';
import type { Level } from '@/lib/model/racking.ts';
import {
  bendBeam,
  bendPair,
  type PairLoading,
  STANDARD_GRAVITY_N_KG,
  shareOfUniform,
} from '@/lib/rack/beam-deflection.ts';
import { deflectionLimitMm, residualBendLimits } from '@/lib/rack/deflection-limit.ts';
import { beamShares } from '@/lib/rack/support-shares.ts';
import { type DisplayUnits, formatLength, formatMass } from '@/lib/units/format-quantity.ts';
import { loadingWords } from '@/lib/words/rack-advice.ts';
import styles from './rack-advice.module.css';

const LOADINGS: readonly PairLoading[] = ['uniform', 'third-points', 'central-point'];

/** How far the beams of a bay may sag and, with their stiffness known, how far they would. */
export function BeamAdvice({
  at,
  inertiaMm4,
  offset,
  units,
}: {
  at: NonNullable<RackQuery['bay']>;
  inertiaMm4: number | null;
  offset: RackQuery['offset'];
  units: DisplayUnits;
}) {
  const { bay, run } = at;
  const spanMm = bay.clearWidthMm;
  const residual = residualBendLimits(spanMm);
  const down = (mm: number) => formatLength(mm, units, 'down');
  const rated = bay.levels.filter((level) => level.level > 0 && level.pairCapacityKg !== null);
  return (
    <section className="sheet stack" aria-labelledby="beams-heading">
      <h2 id="beams-heading">Beams, span {formatLength(spanMm, units, 'up')}</h2>
      <dl className={styles.facts}>
        <div>
          <dt>Sag under load, span/200 (EN 15512)</dt>
          <dd>{down(deflectionLimitMm(spanMm, 'EN 15512'))}</dd>
        </div>
        <div>
          <dt>Sag under load, span/180 (ANSI MH16.1)</dt>
          <dd>{down(deflectionLimitMm(spanMm, 'ANSI MH16.1'))}</dd>
        </div>
        <div>
          <dt>Sag left when unloaded (DGUV 208-043)</dt>
          <dd>{down(residual.downMm)}</dd>
        </div>
        <div>
          <dt>Sideways bend left (DGUV 208-043)</dt>
          <dd>{down(residual.sidewaysMm)}</dd>
        </div>
      </dl>
      <p>
        A notice states its figure for a load spread evenly. With all of it at the middle{' '}
        {percent(shareOfUniform('central-point'))} of that, with half at each third{' '}
        {percent(shareOfUniform('third-points'))} would bend the beams as much.
      </p>
      {inertiaMm4 === null ? (
        <p className="soft">
          With the stiffness of one beam typed in below, the sag at the pair’s stated capacity is worked out.
        </p>
      ) : (
        <div className="scroll-x">
          <table className={styles.table}>
            <caption>Sag at the stated capacity of the pair: simply supported, steel, shear left out</caption>
            <thead>
              <tr>
                <th scope="col">Level</th>
                <th scope="col">Pair</th>
                {LOADINGS.map((loading) => (
                  <th key={loading} scope="col">
                    {loadingWords(loading)}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rated.map((level) => (
                <SagRow
                  key={level.level}
                  level={level}
                  spanMm={spanMm}
                  inertiaMm4={inertiaMm4}
                  units={units}
                />
              ))}
            </tbody>
          </table>
          {rated[0] === undefined ? null : (
            <p className="soft">
              With ends held fast level {rated[0].level} would sag{' '}
              {formatLength(heldFastMm(rated[0], spanMm, inertiaMm4), units, 'up')} under the same load spread
              evenly: a real connector lies between.
            </p>
          )}
        </div>
      )}
      {offset === null ? null : (
        <p>
          A load of {formatMass(offset.massKg, units, 'up')} with its centre{' '}
          {formatLength(offset.offsetMm, units, 'up')} off the middle puts{' '}
          {formatMass(beamShares({ ...offset, spacingMm: run.frameDepthMm }).heavierKg, units, 'up')} on one
          beam, beams {formatLength(run.frameDepthMm, units, 'up')} apart. A notice counts on equal halves.
        </p>
      )}
    </section>
  );
}

function SagRow({
  level,
  spanMm,
  inertiaMm4,
  units,
}: {
  level: Level;
  spanMm: number;
  inertiaMm4: number;
  units: DisplayUnits;
}) {
  const massKg = level.pairCapacityKg!;
  const limitMm = deflectionLimitMm(spanMm, 'EN 15512');
  return (
    <tr>
      <th scope="row">{level.level}</th>
      <td>{formatMass(massKg, units, 'up')}</td>
      {LOADINGS.map((loading) => {
        const { deflectionMm } = bendPair({ massKg, loading, spanMm, inertiaMm4 });
        const over = deflectionMm > limitMm;
        return (
          <td key={loading} className={over ? styles.over : undefined}>
            {formatLength(deflectionMm, units, 'up')}
            {over ? ' above span/200' : ''}
          </td>
        );
      })}
    </tr>
  );
}

function heldFastMm(level: Level, spanMm: number, inertiaMm4: number): number {
  const forceN = (level.pairCapacityKg! * STANDARD_GRAVITY_N_KG) / 2;
  return bendBeam({ kind: 'uniform-fixed-ends', forceN }, { spanMm, inertiaMm4 }).deflectionMm;
}

function percent(share: number): string {
  return `${Math.floor(share * 100)}\u202f%`;
}
