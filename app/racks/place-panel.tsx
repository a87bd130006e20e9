'use client';

import Link from 'next/link';
import { type Ref, useMemo, useState } from 'react';
import { resolveLift } from '@/app/_parts/asked-lift.ts';
import { AskedRefusals } from '@/app/_parts/asked-refusals.tsx';
import { CautionStrip } from '@/app/_parts/caution-strip.tsx';
import { writeLiftQuery } from '@/app/_parts/lift-query.ts';
import { type RacksAnswer, truckAt } from '@/app/_parts/racks-answer.ts';
import { workingHref } from '@/app/_parts/screen-links.ts';
import { useUnits } from '@/app/_parts/units-context.tsx';
import { VerdictHead } from '@/app/_parts/verdict-head.tsx';
import { WorkingSteps } from '@/app/_parts/working-steps.tsx';
import { handPickHref } from '@/app/hand-pick/hand-pick-query.ts';
import type { RacksQuery } from '@/app/racks/racks-query.ts';
import { checkLift } from '@/lib/check/check-lift.ts';
import { VERDICTS } from '@/lib/check/step.ts';
import { grossMass } from '@/lib/model/load.ts';
import { found, palletOf, type SiteIndex } from '@/lib/model/site-index.ts';
import { formatLength } from '@/lib/units/format-quantity.ts';
import { cautions } from '@/lib/words/cautions.ts';
import { verdictWord } from '@/lib/words/verdict.ts';
import styles from './place-panel.module.css';

/** The working of one place, one tap from its cell: with the truck that does best there, or another one chosen here. */
export function PlacePanel({
  ref,
  index,
  query,
  location,
  now,
  answer,
  onClose,
}: {
  ref: Ref<HTMLElement>;
  index: SiteIndex;
  query: RacksQuery;
  location: string;
  now: string;
  answer: RacksAnswer | null;
  onClose: () => void;
}) {
  const units = useUnits();
  const [preferred, setPreferred] = useState<string | null>(null);
  const place = found(index.places, location, 'location');
  const trucks = query.trucks.length > 0 ? query.trucks : index.site.trucks.map(({ id }) => id);
  const lift = useMemo(() => ({ ...query.lift, location }), [query.lift, location]);
  const resolved = useMemo(() => resolveLift(index, { query: lift, refused: [] }, now), [index, lift, now]);
  const ranked = useMemo(() => {
    if (resolved.kind !== 'asked') return [];
    const { asked } = resolved;
    return trucks
      .flatMap((id) => index.trucks.get(id) ?? [])
      .map((truck) => checkLift(index, { ...asked, truck }))
      .sort(
        (a, b) =>
          VERDICTS.indexOf(a.verdict) - VERDICTS.indexOf(b.verdict) || (b.mostKg ?? -1) - (a.mostKg ?? -1),
      );
  }, [index, resolved, trucks]);
  const best = answer === null ? null : truckAt(answer, [...index.places.keys()].indexOf(location));
  const shown =
    ranked.find(({ truck }) => truck === preferred) ??
    ranked.find(({ truck }) => truck === best) ??
    ranked[0];

  return (
    <section
      ref={ref}
      tabIndex={-1}
      className={styles.panel}
      aria-label={`Working at ${location}`}
      onKeyDown={(event) => event.key === 'Escape' && onClose()}
    >
      <header className={styles.head}>
        <div>
          <h2>{location}</h2>
          <p className="soft dense">
            Run {place.run.id} · bay {place.bay.id} · level {place.level.level}
            {place.level.beamTopMm > 0
              ? ` · beam ${formatLength(place.level.beamTopMm, units, 'up')}`
              : ' · floor'}
            {place.level.depthPositions === 2 ? (place.row === 1 ? ' · front row' : ' · rear row') : ''}
          </p>
          <p className="dense no-print">
            <Link href={`/rack-shape/${encodeURIComponent(place.run.id)}`}>Shape of this run</Link>
            {' · '}
            <Link href={`/rack-advice?bay=${encodeURIComponent(place.bay.id)}`}>Steel of this bay</Link>
            {' · '}
            <Link href={handPickHref({ location })}>Picks by hand here</Link>
          </p>
        </div>
        <button type="button" onClick={onClose} aria-label="Close the working">
          ✕
        </button>
      </header>
      {resolved.kind === 'refused' ? (
        <Unasked location={location} standing={index.stockAt.has(location)} resolved={resolved} />
      ) : shown === undefined ? (
        <p>No truck is asked about.</p>
      ) : (
        <>
          <p>
            {resolved.asked.context.operation === 'place' ? 'Put away' : 'Take down'}{' '}
            <strong>{resolved.asked.load.name}</strong>
          </p>
          <div className="field">
            <label htmlFor="panel-truck">With</label>
            <select
              id="panel-truck"
              value={shown.truck}
              onChange={({ target }) => setPreferred(target.value)}
            >
              {ranked.map(({ truck, verdict }) => (
                <option key={truck} value={truck}>
                  {verdictWord(verdict)}: {truck} {index.trucks.get(truck)?.name}
                </option>
              ))}
            </select>
          </div>
          <VerdictHead answer={shown} />
          <CautionStrip
            title="The person at the truck decides"
            cautions={cautions(
              shown,
              resolved.asked.context,
              grossMass(resolved.asked.load, palletOf(index, resolved.asked.load))?.basis ?? null,
            )}
          />
          <Link className="button button-main" href={workingHref({ ...lift, truck: shown.truck })}>
            Open the working on its own page
          </Link>
          <WorkingSteps answer={shown} />
        </>
      )}
    </section>
  );
}

function Unasked({
  location,
  standing,
  resolved,
}: {
  location: string;
  standing: boolean;
  resolved: Extract<ReturnType<typeof resolveLift>, { kind: 'refused' }>;
}) {
  if (standing || resolved.query.load.kind !== 'stored')
    return <AskedRefusals title="This lift cannot be judged as it was asked" refused={resolved.refused} />;
  return (
    <>
      <p>Nothing stands here, so there is nothing to take down.</p>
      <Link className="button" href={`/which-truck?${writeLiftQuery({ location, operation: 'place' })}`}>
        Put a load away here
      </Link>
    </>
  );
}
