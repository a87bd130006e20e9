import Link from 'next/link';
import { handPickHref } from '@/app/hand-pick/hand-pick-query.ts';
import { exceedsRecommended, type HandLift, rankOf } from '@/lib/hand-pick/hand-lift.ts';
import { handPickAt } from '@/lib/hand-pick/pick-face.ts';
import type { Load } from '@/lib/model/load.ts';
import type { Place, SiteIndex } from '@/lib/model/site-index.ts';
import { type DisplayUnits, formatLength, formatMass } from '@/lib/units/format-quantity.ts';
import { indexWords } from '@/lib/words/hand-pick.ts';
import styles from './hand-pick.module.css';

const SHOWN = 12;

/** The pick faces of the site that ask most of a person, highest index first, those without an index last. */
export function HeaviestPicks({ index, units }: { index: SiteIndex; units: DisplayUnits }) {
  const picks = picksOf(index);
  const outside = picks.filter(({ lift }) => lift.result.kind === 'outside').length;
  const above = picks.filter(({ lift }) => exceedsRecommended(lift)).length - outside;
  return (
    <section className="sheet stack" aria-labelledby="heaviest-heading">
      <h2 id="heaviest-heading">Pick faces that ask most of a person</h2>
      <p className="soft">
        {picks.length === 0
          ? 'No load that stands in this site is picked by hand.'
          : `Of ${picks.length} places where a load picked by hand stands, ${above} are above an index of 1, and at ${outside} nothing should be picked by hand as it stands (most are too high: bring the pallet down first).`}
      </p>
      {picks.length === 0 ? null : (
        <table className={styles.levels}>
          <caption className="unseen">Pick faces, highest lifting index first</caption>
          <thead>
            <tr>
              <th scope="col">Location</th>
              <th scope="col">Case</th>
              <th scope="col">Hands</th>
              <th scope="col">Index</th>
            </tr>
          </thead>
          <tbody>
            {picks.slice(0, SHOWN).map(({ place, load, lift }) => (
              <tr key={place.id}>
                <th scope="row">
                  <Link href={handPickHref({ location: place.id })}>{place.id}</Link>
                  <span className={`soft ${styles.name}`}>{load.name}</span>
                </th>
                <td>{formatMass(lift.task.massKg, units, 'up')}</td>
                <td>{formatLength(lift.task.handHeightMm, units, 'up')}</td>
                <td>{lift.result.kind === 'index' ? indexWords(lift.result.liftingIndex) : 'none'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

type Pick = { place: Place; load: Load; lift: HandLift };

function picksOf(index: SiteIndex): Pick[] {
  const picks: Pick[] = [];
  for (const [id, load] of index.stockAt) {
    const place = index.places.get(id)!;
    const answer = handPickAt(place, load);
    if (answer !== null) picks.push({ place, load, lift: answer.origin });
  }
  return picks.sort((a, b) => shownRank(b.lift) - shownRank(a.lift));
}

/** A pallet that stands too high to be picked from says less than a case that is lifted daily and too heavy. */
function shownRank(lift: HandLift): number {
  return lift.result.kind === 'outside' ? 0 : rankOf(lift);
}
