import Link from 'next/link';
import type { AskedLift } from '@/app/_parts/asked-lift.ts';
import { CautionStrip } from '@/app/_parts/caution-strip.tsx';
import type { LiftQuery } from '@/app/_parts/lift-query.ts';
import { RankedTrucks } from '@/app/_parts/ranked-trucks.tsx';
import { loadHref, workingHref } from '@/app/_parts/screen-links.ts';
import { VerdictBadge } from '@/app/_parts/verdict-badge.tsx';
import { rankTrucks } from '@/lib/check/rank-trucks.ts';
import { grossMass } from '@/lib/model/load.ts';
import { palletOf, type SiteIndex } from '@/lib/model/site-index.ts';
import { type DisplayUnits, formatLength, formatMass } from '@/lib/units/format-quantity.ts';
import { mostSentence } from '@/lib/words/answer.ts';
import { cautions } from '@/lib/words/cautions.ts';
import { instantWords } from '@/lib/words/plain-words.ts';
import { answerLead, leadSentence } from '@/lib/words/room.ts';
import styles from './which-truck.module.css';

/** The answer first: the best truck and its one reason, then what was asked, then all trucks in order. */
export function WhichTruckAnswer({
  index,
  asked,
  query,
  units,
}: {
  index: SiteIndex;
  asked: AskedLift;
  query: LiftQuery;
  units: DisplayUnits;
}) {
  const { place, load, context } = asked;
  const ranked = rankTrucks(index, asked);
  const best = ranked[0];
  if (best === undefined) return <p className="sheet">This site has no trucks.</p>;
  const able = best.verdict === 'clear' || best.verdict === 'thin';
  return (
    <section className="stack" aria-label="The answer">
      <div className={`sheet ${styles.best}`}>
        <div className={styles.verdict}>
          <VerdictBadge verdict={best.verdict} size="large" />
          <h2>{able ? `Use ${best.truck}` : 'No truck may'}</h2>
        </div>
        <p>
          {able ? '' : `Nearest is ${best.truck}. `}
          {leadSentence(answerLead(best, units))}{' '}
          {best.verdict === 'thin' ? mostSentence(best.mostKg, units) : ''}
        </p>
        <Link href={workingHref({ ...query, truck: best.truck })} className="button button-main">
          See the working
        </Link>
        <p className="soft">
          {context.operation === 'place' ? 'Putting away ' : 'Taking down '}
          {query.load.kind === 'typed' ? 'a load typed in' : <Link href={loadHref(load.id)}>{load.id}</Link>}
          {query.load.kind === 'typed' ? '' : ` ${load.name}`},{' '}
          {best.assessedKg === null
            ? 'mass not known'
            : `${formatMass(best.assessedKg, units, 'up')} assessed`}
          , at {place.id},{' '}
          {place.level.level === 0
            ? 'on the floor'
            : `beam top ${formatLength(place.level.beamTopMm, units, 'up')}`}
          . {context.asOf === null ? 'Checks and holds not judged.' : `As of ${instantWords(context.asOf)}.`}
        </p>
      </div>
      <RankedTrucks
        answers={ranked}
        index={index}
        query={query}
        units={units}
        label="All trucks, best first"
      />
      <CautionStrip
        title="The person at the truck decides"
        cautions={cautions(best, context, grossMass(load, palletOf(index, load))?.basis ?? null)}
      />
    </section>
  );
}
