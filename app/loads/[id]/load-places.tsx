import Link from 'next/link';
import { type AskedTime, contextOf, PLAIN_LIFT_QUERY } from '@/app/_parts/lift-query.ts';
import { loadHref, workingHref } from '@/app/_parts/screen-links.ts';
import { VerdictBadge } from '@/app/_parts/verdict-badge.tsx';
import { type TakeDown, takeDownAt } from '@/app/loads/[id]/take-down.ts';
import type { Load } from '@/lib/model/load.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import { type DisplayUnits, formatLength } from '@/lib/units/format-quantity.ts';
import { counted, instantWords } from '@/lib/words/plain-words.ts';
import { ruleTitle } from '@/lib/words/rule.ts';
import { stepSentence } from '@/lib/words/step.ts';
import styles from './load.module.css';

const MOST_PLACES = 30;
/** Each place is asked of each truck: with many trucks fewer places are judged, so that the page does not keep others waiting. */
const MOST_LIFTS = 600;
const TRUCKS_SHOWN = 12;

/** Each place where the load stands, with the trucks that may take it down from there; each leads to the working. */
export function LoadPlaces({
  index,
  load,
  places,
  time,
  nowIso,
  units,
}: {
  index: SiteIndex;
  load: Load;
  places: readonly string[];
  time: AskedTime;
  nowIso: string;
  units: DisplayUnits;
}) {
  if (places.length === 0) return <p className="sheet">It stands nowhere in the racks.</p>;
  const { asOf } = contextOf({ ...PLAIN_LIFT_QUERY, time }, nowIso);
  const shown = Math.min(MOST_PLACES, Math.max(3, Math.floor(MOST_LIFTS / (index.site.trucks.length || 1))));
  const answers = places.slice(0, shown).map((location) => takeDownAt(index, load, location, asOf));
  return (
    <>
      <div className="row">
        <p className="soft">
          {counted(places.length, 'pallet')},{' '}
          {asOf === null ? 'checks, holds and expiry dates not judged' : `judged as of ${instantWords(asOf)}`}
          .{places.length > shown ? ` The first ${shown} are shown.` : ''}
        </p>
        <Link
          href={`${loadHref(load.id)}${asOf === null ? '' : '?asOf=not-judged'}#places-heading`}
          className="button no-print"
        >
          {asOf === null ? 'Judge checks as of now' : 'Leave checks and holds out'}
        </Link>
      </div>
      <ol className={styles.places}>
        {answers.map((answer) => (
          <PlaceLine key={answer.location} answer={answer} time={time} units={units} />
        ))}
      </ol>
    </>
  );
}

function PlaceLine({ answer, time, units }: { answer: TakeDown; time: AskedTime; units: DisplayUnits }) {
  const query = { ...PLAIN_LIFT_QUERY, time, location: answer.location };
  const { best } = answer;
  const governing = best?.steps.find((step) => step.rule === best.governing);
  return (
    <li>
      <div className={styles.place}>
        <Link href={workingHref(query)} prefetch={false}>
          {answer.location}
        </Link>{' '}
        <span className="soft">
          {answer.beamTopMm === 0
            ? 'on the floor'
            : `beam top ${formatLength(answer.beamTopMm, units, 'up')}`}
        </span>
      </div>
      {best === null ? (
        <p>The site has no trucks.</p>
      ) : (
        <>
          <div>
            <VerdictBadge verdict={best.verdict} />
          </div>
          <div>
            {answer.able.length === 0 ? (
              <p>
                No truck may. Nearest is{' '}
                <Link href={workingHref({ ...query, truck: best.truck })} prefetch={false}>
                  {best.truck}
                </Link>
                .{' '}
                <span className="soft">
                  {ruleTitle(best.governing)}: {governing === undefined ? '' : stepSentence(governing, units)}
                </span>
              </p>
            ) : (
              <ul className={styles.able} aria-label={`Trucks that may take it down from ${answer.location}`}>
                {answer.able.slice(0, TRUCKS_SHOWN).map((truck) => (
                  <li key={truck}>
                    <Link href={workingHref({ ...query, truck })} prefetch={false}>
                      {truck}
                    </Link>
                  </li>
                ))}
                {answer.able.length > TRUCKS_SHOWN ? (
                  <li>
                    <Link href={workingHref(query)} prefetch={false}>
                      and {answer.able.length - TRUCKS_SHOWN} more
                    </Link>
                  </li>
                ) : null}
              </ul>
            )}
          </div>
        </>
      )}
    </li>
  );
}
