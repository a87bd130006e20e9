'use client';

import { type ReactNode, useDeferredValue, useId, useMemo, useState } from 'react';
import { downloadText } from '@/app/_parts/download-text.ts';
import { mostAt, type RacksAnswer, ruleAt, spareAt, truckAt, verdictAt } from '@/app/_parts/racks-answer.ts';
import { useUnits } from '@/app/_parts/units-context.tsx';
import { VerdictBadge, VerdictMark } from '@/app/_parts/verdict-badge.tsx';
import { type Listing, type LocationColumn, listLocations } from '@/app/racks/location-rows.ts';
import { locationsCsv } from '@/app/racks/table-csv.ts';
import { useWindowedRows } from '@/app/racks/use-windowed-rows.ts';
import { VERDICTS, type Verdict } from '@/lib/check/step.ts';
import { type DisplayUnits, formatLength, formatMass, groupDigits } from '@/lib/units/format-quantity.ts';
import { ruleTitle } from '@/lib/words/rule.ts';
import { verdictWord } from '@/lib/words/verdict.ts';
import styles from './locations-table.module.css';

type Kept = Verdict | 'none';
const EVERY: readonly Kept[] = [...VERDICTS, 'none'];

const COLUMNS: readonly { id: LocationColumn | 'rule'; label: string; number?: true }[] = [
  { id: 'location', label: 'Location' },
  { id: 'verdict', label: 'Verdict' },
  { id: 'rule', label: 'Decided by' },
  { id: 'level', label: 'Beam top', number: true },
  { id: 'load', label: 'Stands there' },
  { id: 'truck', label: 'Best truck' },
  { id: 'most', label: 'Most', number: true },
  { id: 'spare', label: 'To spare', number: true },
];

/** The same answers as the drawing for people who would rather read: filtered, sorted, and to take away as CSV. */
export function LocationsTable({
  answer,
  first,
  end,
  runId,
  onOpen,
}: {
  answer: RacksAnswer | null;
  first: number;
  end: number;
  runId: string;
  onOpen: (location: string) => void;
}) {
  const units = useUnits();
  const ids = useId();
  const [scope, setScope] = useState<'run' | 'site'>('run');
  const [keep, setKeep] = useState<ReadonlySet<Kept>>(new Set(EVERY));
  const [find, setFind] = useState('');
  const [sort, setSort] = useState<Listing['sort']>(null);
  const sought = useDeferredValue(find);
  const rows = useMemo(() => {
    if (answer === null) return [];
    const span = scope === 'run' ? { first, end } : { first: 0, end: answer.places.length };
    return listLocations(answer, { ...span, keep, find: sought, sort });
  }, [answer, scope, first, end, keep, sought, sort]);
  const windowed = useWindowedRows(rows.length);

  const toggle = (kind: Kept) => {
    const next = new Set(keep);
    if (!next.delete(kind)) next.add(kind);
    setKeep(next);
  };
  const sortBy = (column: LocationColumn) => {
    if (sort?.column !== column) setSort({ column, direction: 'up' });
    else setSort(sort.direction === 'up' ? { column, direction: 'down' } : null);
  };

  return (
    <div className={styles.whole}>
      <div className={`${styles.tools} no-print`}>
        <div className="field">
          <label htmlFor={`${ids}-scope`}>Locations of</label>
          <select
            id={`${ids}-scope`}
            value={scope}
            onChange={({ target }) => setScope(target.value === 'site' ? 'site' : 'run')}
          >
            <option value="run">run {runId}</option>
            <option value="site">the whole site</option>
          </select>
        </div>
        <div className="field">
          <label htmlFor={`${ids}-find`}>With the words</label>
          <input
            id={`${ids}-find`}
            type="search"
            value={find}
            onChange={({ target }) => setFind(target.value)}
          />
        </div>
        <fieldset className={styles.keep}>
          <legend>Verdicts</legend>
          {EVERY.map((kind) => (
            <label key={kind}>
              <input type="checkbox" checked={keep.has(kind)} onChange={() => toggle(kind)} />
              {kind === 'none' ? 'Nothing asked' : <VerdictMark verdict={kind} />}
              {kind === 'none' ? null : verdictWord(kind)}
            </label>
          ))}
        </fieldset>
        <button
          type="button"
          disabled={answer === null || rows.length === 0}
          onClick={() =>
            answer !== null &&
            downloadText('locations.csv', 'text/csv;charset=utf-8', locationsCsv(answer, rows))
          }
        >
          Download CSV
        </button>
        <span className="soft dense" role="status">
          {answer === null ? 'Not judged yet' : `${groupDigits(rows.length)} locations`}
        </span>
      </div>
      <section
        ref={windowed.box}
        className={styles.body}
        onScroll={windowed.onScroll}
        aria-label="Locations"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must take the focus to be scrolled by keys
        tabIndex={0}
      >
        <table className={styles.table} aria-rowcount={rows.length + 1}>
          <caption className="unseen">
            Locations and their verdicts; only the rows near the view exist
          </caption>
          <thead>
            <tr aria-rowindex={1}>
              {COLUMNS.map(({ id, label, number }) => (
                <th
                  key={id}
                  scope="col"
                  className={number ? styles.number : undefined}
                  aria-sort={
                    sort?.column !== id ? 'none' : sort.direction === 'up' ? 'ascending' : 'descending'
                  }
                >
                  {id === 'rule' ? (
                    label
                  ) : (
                    <button type="button" onClick={() => sortBy(id)}>
                      {label}
                      <span aria-hidden="true">
                        {sort?.column !== id ? '' : sort.direction === 'up' ? ' ▲' : ' ▼'}
                      </span>
                    </button>
                  )}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            <Spacer heightPx={windowed.first * windowed.rowPx} />
            {answer === null
              ? null
              : rows
                  .slice(windowed.first, windowed.end)
                  .map((place, at) => (
                    <LocationRow
                      key={place}
                      answer={answer}
                      place={place}
                      rowIndex={windowed.first + at + 2}
                      heightPx={windowed.rowPx}
                      units={units}
                      onOpen={onOpen}
                    />
                  ))}
            <Spacer heightPx={(rows.length - windowed.end) * windowed.rowPx} />
          </tbody>
        </table>
      </section>
      {answer !== null && rows.length === 0 ? (
        <p className={styles.none}>No location matches. Use fewer words, or keep more verdicts.</p>
      ) : null}
    </div>
  );
}

/** Stands for the rows that are not made. */
function Spacer({ heightPx }: { heightPx: number }) {
  return heightPx <= 0 ? null : <tr className={styles.spacer} style={{ height: heightPx }} />;
}

function LocationRow({
  answer,
  place: at,
  rowIndex,
  heightPx,
  units,
  onOpen,
}: {
  answer: RacksAnswer;
  place: number;
  rowIndex: number;
  heightPx: number;
  units: DisplayUnits;
  onOpen: (location: string) => void;
}) {
  const place = answer.places[at]!;
  const verdict = verdictAt(answer, at);
  const most = mostAt(answer, at);
  const spare = verdict === null ? null : spareAt(answer, at);
  const rule = ruleAt(answer, at);
  const standing = answer.index.stockAt.get(place.id);
  const cells: { id: string; number?: true; show: ReactNode }[] = [
    {
      id: 'location',
      show: (
        <button type="button" className={styles.open} onClick={() => onOpen(place.id)}>
          {place.id}
        </button>
      ),
    },
    {
      id: 'verdict',
      show: verdict === null ? <span className="soft">–</span> : <VerdictBadge verdict={verdict} />,
    },
    { id: 'rule', show: rule === null ? '' : ruleTitle(rule) },
    {
      id: 'level',
      number: true,
      show: place.level.beamTopMm === 0 ? 'floor' : formatLength(place.level.beamTopMm, units, 'up'),
    },
    { id: 'load', show: standing === undefined ? '' : `${standing.id} ${standing.name}` },
    { id: 'truck', show: truckAt(answer, at) ?? '' },
    { id: 'most', number: true, show: most === null ? '' : formatMass(most, units, 'down') },
    {
      id: 'spare',
      number: true,
      show:
        spare === null
          ? ''
          : spare < 0
            ? `−${formatMass(-spare, units, 'up')}`
            : formatMass(spare, units, 'down'),
    },
  ];
  return (
    <tr aria-rowindex={rowIndex} className={styles.row} style={{ height: heightPx }}>
      {cells.map(({ id, number, show }) =>
        id === 'location' ? (
          <th key={id} scope="row" data-cell={id}>
            {show}
          </th>
        ) : (
          <td key={id} data-cell={id} className={number ? styles.number : undefined}>
            {show}
          </td>
        ),
      )}
    </tr>
  );
}
