import Link from 'next/link';
import { CautionStrip } from '@/app/_parts/caution-strip.tsx';
import { loadHref } from '@/app/_parts/screen-links.ts';
import type { PickFace } from '@/app/hand-pick/hand-pick-query.ts';
import { JobIndex } from '@/app/hand-pick/job-index.tsx';
import { LevelAdvice } from '@/app/hand-pick/level-advice.tsx';
import { LiftWorking } from '@/app/hand-pick/lift-working.tsx';
import { LimitBadge } from '@/app/hand-pick/limit-badge.tsx';
import { ZonePart } from '@/app/hand-pick/zone-part.tsx';
import { handPickFrom } from '@/lib/hand-pick/pick-face.ts';
import { reliefOf } from '@/lib/hand-pick/relief.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import { type DisplayUnits, formatLength, formatMass } from '@/lib/units/format-quantity.ts';
import { HAND_PICK_CAUTIONS, handLiftSentence, indexWords, reliefSentence } from '@/lib/words/hand-pick.ts';
import styles from './hand-pick.module.css';

/** The whole working of one pick by hand: the answer, each multiplier, what would lower the index, and at which level. */
export function HandPickView({
  face,
  job,
  index,
  units,
}: {
  face: PickFace;
  job: readonly PickFace[];
  index: SiteIndex;
  units: DisplayUnits;
}) {
  const { place, load, beamTopMm, pick } = face;
  const { origin, destination } = handPickFrom(beamTopMm, pick);
  const relief = reliefOf(origin);
  return (
    <>
      <h1>
        Pick by hand: {load?.name ?? 'a case typed in'} {place === null ? '' : `at ${place.id}`}
      </h1>
      <section className={`sheet ${styles.answer}`} aria-label="The answer">
        <div className="stack">
          <LimitBadge lift={origin} />
          <p>{handLiftSentence(origin, units)}</p>
          <p className="soft">
            {load === null ? '' : 'Load '}
            {load === null ? null : <Link href={loadHref(load.id)}>{load.id}</Link>}
            {load === null ? 'The' : ', the'} pallet stands{' '}
            {beamTopMm === 0 ? 'on the floor' : `at ${formatLength(beamTopMm, units, 'up')}`}, the hands grip{' '}
            {formatLength(pick.gripHeightMm, units, 'up')} above that.
          </p>
        </div>
        <dl className={styles.figures}>
          <div>
            <dt>Recommended weight limit</dt>
            <dd>{formatMass(origin.rwlKg, units, 'down')}</dd>
          </div>
          <div>
            <dt>Lifting index</dt>
            <dd>{origin.result.kind === 'index' ? indexWords(origin.result.liftingIndex) : 'none'}</dd>
          </div>
        </dl>
      </section>
      <CautionStrip title="What the figure rests on" cautions={HAND_PICK_CAUTIONS} />
      <LiftWorking lift={origin} title="The working at the pick face" units={units} />
      <div className={styles.pair}>
        <section className="sheet stack" aria-labelledby="relief-heading">
          <h2 id="relief-heading">What would lower the index</h2>
          {relief.length === 0 ? <p>Only a lighter case: all else is at its best.</p> : null}
          <ol className={styles.relief}>
            {relief.map((entry) => (
              <li key={entry.multipliers.join()}>{reliefSentence(entry, origin, units)}</li>
            ))}
          </ol>
          <p className="soft">
            {origin.result.kind === 'outside'
              ? 'Until all of this is put right no weight is recommended. The rest as it is.'
              : 'Each change by itself, the rest as it is.'}
          </p>
        </section>
        <LevelAdvice face={face} units={units} />
      </div>
      <section className="stack">
        <LiftWorking
          lift={destination}
          title="Set down with care"
          lead="Counts too where the case has to be placed with control: the far end judged as a lift, hands as far out and as far round as at the pick face."
          units={units}
          folded
        />
      </section>
      <JobIndex face={face} job={job} units={units} />
      <ZonePart lift={origin} destinationMm={pick.destinationHeightMm} units={units} />
      <p className="soft dense">
        Site: {index.site.site.name}. Equation and tables: NIOSH publication 94-110 (1994, revised 2021).
      </p>
    </>
  );
}
