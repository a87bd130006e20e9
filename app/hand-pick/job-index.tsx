import Link from 'next/link';
import { handPickHref, type PickFace } from '@/app/hand-pick/hand-pick-query.ts';
import { compositeLiftingIndex } from '@/lib/hand-pick/composite-index.ts';
import { handPickFrom } from '@/lib/hand-pick/pick-face.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';
import { handLiftSentence, indexWords } from '@/lib/words/hand-pick.ts';
import styles from './hand-pick.module.css';

/** The pick faces that one person serves in a shift, taken together. Nothing to say for one alone. */
export function JobIndex({
  face,
  job,
  units,
}: {
  face: PickFace;
  job: readonly PickFace[];
  units: DisplayUnits;
}) {
  if (job.length === 0) return null;
  const faces = [face, ...job];
  const lifts = faces.map(({ beamTopMm, pick }) => handPickFrom(beamTopMm, pick).origin);
  const composite = compositeLiftingIndex(lifts.map(({ task }) => task));
  return (
    <section className="sheet stack" aria-labelledby="job-heading">
      <h2 id="job-heading">Together with the other pick faces</h2>
      <p>
        {composite.kind === 'index'
          ? `Composite lifting index ${indexWords(composite.cli)}; the heaviest task alone ${indexWords(composite.largestStli)}.`
          : composite.kind === 'too-often'
            ? `Together ${composite.liftsPerMinute} lifts a minute: more than the table goes to, nothing is recommended.`
            : 'One of the tasks is outside the bounds by itself, so the job has no index.'}
      </p>
      <ol className={styles.relief}>
        {faces.map(({ place, load }, at) => (
          <li key={`${place?.id ?? 'typed'} ${load?.id ?? ''}`}>
            {place === null || at === 0 ? (
              <strong>{place?.id ?? 'Typed in'}</strong>
            ) : (
              <Link href={handPickHref({ location: place.id })}>{place.id}</Link>
            )}{' '}
            {handLiftSentence(lifts[at]!, units)}
          </li>
        ))}
      </ol>
      <p className="soft">
        Every task counts for as long as the longest; rates add up (94-110, multi-task procedure, from
        memory).
      </p>
    </section>
  );
}
