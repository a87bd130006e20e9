import Link from 'next/link';
import type { AskedLift } from '@/app/_parts/asked-lift.ts';
import type { LiftQuery } from '@/app/_parts/lift-query.ts';
import { writeLiftQuery } from '@/app/_parts/lift-query.ts';
import { loadHref, truckHref } from '@/app/_parts/screen-links.ts';
import type { Truck } from '@/lib/model/truck.ts';
import { type DisplayUnits, formatLength } from '@/lib/units/format-quantity.ts';
import { instantWords } from '@/lib/words/plain-words.ts';
import styles from './working.module.css';

/** What was asked, fact by fact, each leading to where it can be seen or asked differently. */
export function LiftQuestion({
  asked,
  truck,
  query,
  units,
}: {
  asked: AskedLift;
  truck: Truck;
  query: LiftQuery;
  units: DisplayUnits;
}) {
  const { place, load, context } = asked;
  const inRacks = `/racks?${writeLiftQuery(query)}`;
  return (
    <dl className={styles.question}>
      <div>
        <dt>Location</dt>
        <dd>
          <Link href={inRacks}>{place.id}</Link>
          <span className="soft">
            {' '}
            {place.level.level === 0
              ? 'on the floor'
              : `level ${place.level.level}, beam top ${formatLength(place.level.beamTopMm, units, 'up')}`}
            {place.level.depthPositions === 2 ? (place.row === 1 ? ', front row' : ', rear row') : ''}
          </span>
        </dd>
      </div>
      <div>
        <dt>Truck</dt>
        <dd>
          <Link href={truckHref(truck.id)}>{truck.id}</Link> <span className="soft">{truck.name}</span>
        </dd>
      </div>
      <div>
        <dt>Load</dt>
        <dd>
          {query.load.kind === 'typed' ? (
            load.name
          ) : (
            <>
              <Link href={loadHref(load.id)}>{load.id}</Link> <span className="soft">{load.name}</span>
            </>
          )}
        </dd>
      </div>
      <div>
        <dt>Operation</dt>
        <dd>
          {context.operation === 'place' ? 'Put away' : 'Take down'}
          {context.stock === 'empty' ? ', racks taken as empty' : ''}
          {context.from === null ? '' : `, from ${context.from}`}
        </dd>
      </div>
      <div>
        <dt>As of</dt>
        <dd>{context.asOf === null ? 'not judged' : instantWords(context.asOf)}</dd>
      </div>
      <div>
        <dt>Operator</dt>
        <dd>{context.operator ?? 'nobody named'}</dd>
      </div>
    </dl>
  );
}
