'use client';

import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { AskedRefusals } from '@/app/_parts/asked-refusals.tsx';
import { EmptyState } from '@/app/_parts/empty-state.tsx';
import { firstPlaces } from '@/app/_parts/first-places.ts';
import type { RacksAnswer } from '@/app/_parts/racks-answer.ts';
import { StaleChecksStrip } from '@/app/_parts/stale-checks-strip.tsx';
import { useGrid } from '@/app/_parts/use-grid.ts';
import { WorkStrip } from '@/app/_parts/work-strip.tsx';
import { bandOf } from '@/app/racks/cell-cursor.ts';
import { drawElevation } from '@/app/racks/elevation.ts';
import { LocationsTable } from '@/app/racks/locations-table.tsx';
import { PlacePanel } from '@/app/racks/place-panel.tsx';
import { QuestionForm } from '@/app/racks/question-form.tsx';
import { questionWords } from '@/app/racks/question-words.ts';
import type { RacksQuery } from '@/app/racks/racks-query.ts';
import { askRacks, runLookedAt } from '@/app/racks/racks-question.ts';
import { RunDrawing } from '@/app/racks/run-drawing.tsx';
import { RunPicker } from '@/app/racks/run-picker.tsx';
import { VerdictCounts } from '@/app/racks/verdict-counts.tsx';
import { countVerdicts, summariseLocations } from '@/lib/grid/summary.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import { instantWords } from '@/lib/words/plain-words.ts';
import styles from './racks.module.css';

type SetQuery = (change: (before: RacksQuery) => RacksQuery) => void;

/** Question, drawing or table, and the working of the chosen place, side by side; on a phone one above the other. */
export function RacksDesk({
  index,
  query,
  setQuery,
}: {
  index: SiteIndex;
  query: RacksQuery;
  setQuery: SetQuery;
}) {
  const [now, setNow] = useState(() => new Date().toISOString());
  const [open, setOpen] = useState(false);
  // on a phone the question folds away, so that the racks are seen first
  const [asking, setAsking] = useState(() => window.matchMedia('(min-width: 761px)').matches);
  const panel = useRef<HTMLElement>(null);
  const drawing = useRef<HTMLDivElement>(null);
  const places = useMemo(() => [...index.places.values()], [index]);
  const firsts = useMemo(() => firstPlaces(index), [index]);

  const asked = useAsked(index, query, now);
  const run = useGrid(index, asked.kind === 'asked' ? asked.question : null);
  const answer = useMemo<RacksAnswer | null>(() => {
    if (asked.kind === 'refused' || run.answered === null || run.answered.index !== index) return null;
    const { answer: grid, question } = run.answered;
    return {
      index,
      places,
      summary: summariseLocations(grid),
      trucks: question.trucks,
      assessedKg: grid.assessedKg,
    };
  }, [asked.kind, run.answered, index, places]);

  const runId = runLookedAt(index, query);
  const rack = index.site.runs.find(({ id }) => id === runId);
  const elevation = useMemo(
    () => (rack === undefined ? null : drawElevation(rack, firsts.get(rack.id)!)),
    [rack, firsts],
  );

  const counts = useMemo(
    () =>
      answer === null || elevation === null
        ? null
        : countVerdicts(answer.summary, elevation.firstPlace, elevation.firstPlace + elevation.placeCount),
    [answer, elevation],
  );

  const change = useCallback(
    (part: Partial<RacksQuery>) => setQuery((before) => ({ ...before, ...part })),
    [setQuery],
  );
  const goTo = useCallback(
    (location: string) => {
      const place = index.places.get(location);
      if (place === undefined) return;
      setQuery((before) => ({
        ...before,
        run: place.run.id,
        row: place.row,
        lift: { ...before.lift, location },
      }));
    },
    [index, setQuery],
  );
  const openAt = (location: string) => {
    goTo(location);
    setOpen(true);
  };
  useEffect(() => {
    if (open) panel.current?.focus();
  }, [open]);
  const close = () => {
    setOpen(false);
    drawing.current?.querySelector<HTMLElement>('[role="application"]')?.focus();
  };

  if (elevation === null) {
    return (
      <EmptyState title="This site has no racks">
        <p>Read in a site file that has runs, bays and levels.</p>
      </EmptyState>
    );
  }
  const { location } = query.lift;
  const place = location === null ? undefined : index.places.get(location);
  const cursor = place === undefined || place.run.id !== elevation.runId ? null : places.indexOf(place);
  return (
    <>
      <details
        className={`sheet ${styles.question} no-print`}
        open={asking}
        onToggle={({ currentTarget }) => setAsking(currentTarget.open)}
      >
        <summary>
          <span className="unseen">Asked: </span>
          {questionWords(index, query)}
        </summary>
        <QuestionForm index={index} query={query} onChange={change} />
      </details>
      <div className={styles.main}>
        <div className={styles.head}>
          <RunPicker
            index={index}
            runId={elevation.runId}
            onRun={(id) => change({ run: id, lift: { ...query.lift, location: null } })}
            onLocation={goTo}
          />
          <fieldset className={`${styles.views} no-print`}>
            <legend className="unseen">Look at</legend>
            {(['drawing', 'table'] as const).map((view) => (
              <button
                key={view}
                type="button"
                aria-pressed={query.view === view}
                onClick={() => change({ view })}
              >
                {view === 'drawing' ? 'Drawing' : 'Table'}
              </button>
            ))}
          </fieldset>
        </div>
        <p className={styles.printed}>
          {questionWords(index, query)}. {timeWords(query, now)}.
        </p>
        {asked.kind === 'refused' ? (
          <AskedRefusals title="This cannot be asked of the racks" refused={asked.refused} />
        ) : null}
        <StaleChecksStrip
          index={index}
          time={query.lift.time}
          now={now}
          onTime={(time) => change({ lift: { ...query.lift, time } })}
        />
        <div className={styles.state}>
          <WorkStrip run={run}>
            <span className="soft">{timeWords(query, now)}</span>
            {query.lift.time.kind === 'now' ? (
              <button type="button" onClick={() => setNow(new Date().toISOString())}>
                Again, as of now
              </button>
            ) : null}
          </WorkStrip>
          <VerdictCounts counts={counts} storedAsked={query.lift.load.kind === 'stored'} />
        </div>
        {query.view === 'drawing' ? (
          <div ref={drawing} className={styles.drawing}>
            <RunDrawing
              elevation={elevation}
              places={places}
              index={index}
              answer={answer}
              row={query.row}
              figure={query.figure}
              onFigure={(figure) => change({ figure })}
              cursor={cursor !== null && bandOf(elevation, cursor) !== null ? cursor : null}
              onMove={(cell) => goTo(places[cell]!.id)}
              onOpen={(cell) => openAt(places[cell]!.id)}
              onRow={(row) => change({ row })}
            />
          </div>
        ) : (
          <LocationsTable
            answer={answer}
            first={elevation.firstPlace}
            end={elevation.firstPlace + elevation.placeCount}
            runId={elevation.runId}
            onOpen={openAt}
          />
        )}
      </div>
      {open && place !== undefined ? (
        <PlacePanel
          ref={panel}
          index={index}
          query={query}
          location={place.id}
          now={now}
          answer={answer}
          onClose={close}
        />
      ) : null}
    </>
  );
}

/** The question, the same object while it is the same question: moving the cursor asks nothing. */
function useAsked(index: SiteIndex, query: RacksQuery, now: string) {
  const { load, operation, time, stock, from, operator } = query.lift;
  const { trucks } = query;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the parts that make the question, not where it is looked at
  return useMemo(
    () => askRacks(index, query, now),
    [index, load, operation, time, stock, from, operator, trucks, now],
  );
}

function timeWords({ lift }: RacksQuery, now: string): string {
  switch (lift.time.kind) {
    case 'now':
      return `Judged as of ${instantWords(now)}`;
    case 'at':
      return `Judged as of ${instantWords(lift.time.instant)}`;
    case 'not-judged':
      return 'Checks, holds and expiry dates are not judged';
  }
}
