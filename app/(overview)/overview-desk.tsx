'use client';

import { useMemo, useState } from 'react';
import { EmptyState } from '@/app/_parts/empty-state.tsx';
import { contextOf, PLAIN_LIFT_QUERY } from '@/app/_parts/lift-query.ts';
import type { RacksAnswer } from '@/app/_parts/racks-answer.ts';
import { StaleChecksStrip } from '@/app/_parts/stale-checks-strip.tsx';
import { useGrid } from '@/app/_parts/use-grid.ts';
import { VerdictMark } from '@/app/_parts/verdict-badge.tsx';
import { WorkStrip } from '@/app/_parts/work-strip.tsx';
import { VERDICTS } from '@/lib/check/step.ts';
import type { GridQuestion } from '@/lib/grid/question.ts';
import { summariseLocations } from '@/lib/grid/summary.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import { groupDigits } from '@/lib/units/format-quantity.ts';
import { instantWords } from '@/lib/words/plain-words.ts';
import { codeWord, LOOK_LABELS, LOOK_MEANINGS } from './look-words.ts';
import styles from './overview.module.css';
import { LOOKS, type OverviewQuery } from './overview-query.ts';
import { SiteStrips } from './site-strips.tsx';
import { codesOf, countCodes } from './trouble.ts';
import { WorstPlaces } from './worst-places.tsx';

/** Counts, the worst places, and every location of the site as a cell. */
export function OverviewDesk({
  index,
  query,
  onChange,
}: {
  index: SiteIndex;
  query: OverviewQuery;
  onChange: (part: Partial<OverviewQuery>) => void;
}) {
  const { look, time } = query;
  const [now] = useState(() => new Date().toISOString());
  const operation = look === 'put-back' ? 'place' : 'retrieve';
  const question = useMemo<GridQuestion>(
    () => ({
      load: { kind: 'stored' },
      trucks: index.site.trucks.map(({ id }) => id),
      context: contextOf({ ...PLAIN_LIFT_QUERY, operation, time }, now),
    }),
    [index, operation, time, now],
  );
  const run = useGrid(index, question);
  const places = useMemo(() => [...index.places.values()], [index]);
  const { answered } = run;
  const answer = useMemo<RacksAnswer | null>(
    () =>
      answered === null || answered.index !== index
        ? null
        : {
            index,
            places,
            summary: summariseLocations(answered.answer),
            trucks: answered.question.trucks,
            assessedKg: answered.answer.assessedKg,
          },
    [answered, index, places],
  );
  const codes = useMemo(() => (answer === null ? null : codesOf(answer, look)), [answer, look]);
  const counts = useMemo(() => (codes === null ? null : countCodes(codes, 0, codes.length)), [codes]);

  if (places.length === 0) {
    return (
      <EmptyState title="This site has no locations">
        <p>Read in a site file that has runs, bays and levels.</p>
      </EmptyState>
    );
  }
  return (
    <>
      <div className={styles.looks}>
        <fieldset>
          <legend className="unseen">What each location tells</legend>
          {LOOKS.map((one) => (
            <button
              key={one}
              type="button"
              aria-pressed={one === look}
              onClick={() => onChange({ look: one })}
            >
              {LOOK_LABELS[one]}
            </button>
          ))}
        </fieldset>
        <p className="soft">{LOOK_MEANINGS[look]}</p>
      </div>
      <StaleChecksStrip index={index} time={time} now={now} onTime={(asked) => onChange({ time: asked })} />
      <WorkStrip run={run}>
        <span className="soft">{timeWords(query, now)}</span>
        {time.kind === 'now' ? null : (
          <button type="button" onClick={() => onChange({ time: { kind: 'now' } })}>
            Judge as of now
          </button>
        )}
      </WorkStrip>
      <ul className={styles.counts} aria-label="Locations by what they tell">
        {VERDICTS.toReversed().map((verdict) => (
          <li key={verdict} className={`sheet ${styles[verdict]}`}>
            <VerdictMark verdict={verdict} />
            <strong>{counts === null ? '·' : groupDigits(counts.each[VERDICTS.indexOf(verdict)]!)}</strong>
            <span>{codeWord(verdict, look)}</span>
          </li>
        ))}
        <li className="sheet">
          <span className={styles.blank} aria-hidden="true" />
          <strong>{counts === null ? '·' : groupDigits(counts.none)}</strong>
          <span>Empty</span>
        </li>
      </ul>
      <div className={styles.sides}>
        <SiteStrips index={index} places={places} codes={codes} query={query} />
        <WorstPlaces answer={answer} codes={codes} query={query} />
      </div>
    </>
  );
}

function timeWords({ time }: OverviewQuery, now: string): string {
  if (time.kind === 'not-judged') return 'Checks, holds and expiry dates are not judged';
  return `Judged as of ${instantWords(time.kind === 'now' ? now : time.instant)}, with all trucks`;
}
