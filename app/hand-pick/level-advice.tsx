import Link from 'next/link';
import { handPickHref, type PickFace } from '@/app/hand-pick/hand-pick-query.ts';
import { bestHeight, rankLevels } from '@/lib/hand-pick/best-level.ts';
import { type DisplayUnits, formatLength } from '@/lib/units/format-quantity.ts';
import { indexWords } from '@/lib/words/hand-pick.ts';
import styles from './hand-pick.module.css';

/** On which level of this bay, and at what height at all, the same case would be lightest to lift. */
export function LevelAdvice({ face, units }: { face: PickFace; units: DisplayUnits }) {
  const { place, load, pick } = face;
  const best = bestHeight(pick);
  const length = (mm: number) => (mm === 0 ? 'the floor' : formatLength(mm, units, 'up'));
  return (
    <section className="sheet stack" aria-labelledby="level-heading">
      <h2 id="level-heading">The best level for this case</h2>
      {place === null ? null : (
        <table className={styles.levels}>
          <caption className="unseen">Levels of bay {place.bay.id}, least index first</caption>
          <thead>
            <tr>
              <th scope="col">Level of {place.bay.id}</th>
              <th scope="col">Beam top</th>
              <th scope="col">Hands</th>
              <th scope="col">Index</th>
            </tr>
          </thead>
          <tbody>
            {rankLevels(place.bay, pick).map(({ level, lift }) => {
              const here = level.level === place.level.level;
              const at = level.locations[0];
              const name = `${level.level}${here ? ' (here)' : ''}`;
              return (
                <tr key={level.level} className={here ? styles.here : undefined}>
                  <th scope="row">
                    {here || at === undefined ? (
                      name
                    ) : (
                      <Link
                        href={handPickHref({ location: at, ...(load === null ? {} : { load: load.id }) })}
                      >
                        {name}
                      </Link>
                    )}
                  </th>
                  <td>{length(level.beamTopMm)}</td>
                  <td>{length(lift.task.handHeightMm)}</td>
                  <td>{lift.result.kind === 'index' ? indexWords(lift.result.liftingIndex) : 'none'}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      )}
      <p>
        {best.lift.result.kind === 'outside'
          ? 'At no height is any weight recommended: something else is outside the bounds.'
          : `Lightest with the pallet at ${length(best.beamTopMm)}: index ${indexWords(best.lift.result.liftingIndex)}.`}
      </p>
      <p>
        {best.withinLimit.length === 0
          ? 'At no height does the index come down to 1.'
          : `At most 1 with the pallet from ${best.withinLimit
              .map(({ fromMm, toMm }) => `${length(fromMm)} to ${length(toMm)}`)
              .join(', or from ')}.`}
      </p>
      <p className="soft">Whether a level can carry the load, and a truck reach it, is another question.</p>
    </section>
  );
}
