'use client';

import { TimeFields } from '@/app/_parts/time-fields.tsx';
import type { FindingsQuery } from '@/app/findings/findings-query.ts';
import { FINDING_KINDS, type FindingKind } from '@/lib/audit/finding.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import { groupDigits } from '@/lib/units/format-quantity.ts';
import { findingTitle } from '@/lib/words/finding-kind.ts';
import styles from './findings.module.css';

/** What narrows the list: words, kind, aisle or run, truck; in which order; as of when. */
export function FindingsFilter({
  index,
  kinds,
  query,
  onChange,
}: {
  index: SiteIndex;
  kinds: Partial<Record<FindingKind, number>>;
  query: FindingsQuery;
  onChange: (part: Partial<FindingsQuery>) => void;
}) {
  const { aisles, runs, trucks } = index.site;
  const where = query.where === null ? '' : `${query.where.of} ${query.where.id}`;
  const isNarrowed =
    query.severity !== null ||
    query.kind !== null ||
    query.where !== null ||
    query.truck !== null ||
    query.find !== '';
  return (
    <search className={`sheet ${styles.filter} no-print`}>
      <div className="field">
        <label htmlFor="find">Words</label>
        <input
          id="find"
          type="search"
          value={query.find}
          onChange={({ target }) => onChange({ find: target.value })}
        />
      </div>
      <div className="field">
        <label htmlFor="kind">Kind</label>
        <select
          id="kind"
          value={query.kind ?? ''}
          onChange={({ target }) =>
            onChange({ kind: FINDING_KINDS.find((kind) => kind === target.value) ?? null })
          }
        >
          <option value="">all kinds</option>
          {FINDING_KINDS.filter((kind) => kinds[kind] !== undefined || kind === query.kind).map((kind) => (
            <option key={kind} value={kind}>
              {findingTitle(kind)} ({groupDigits(kinds[kind] ?? 0)})
            </option>
          ))}
        </select>
      </div>
      <div className="field">
        <label htmlFor="where">Where</label>
        <select
          id="where"
          value={where}
          onChange={({ target }) => {
            const [of, ...id] = target.value.split(' ');
            onChange({ where: of === 'aisle' || of === 'run' ? { of, id: id.join(' ') } : null });
          }}
        >
          <option value="">all of the site</option>
          {aisles.map((aisle) => (
            <optgroup key={aisle.id} label={`Aisle ${aisle.id}`}>
              <option value={`aisle ${aisle.id}`}>aisle {aisle.id}</option>
              {runs
                .filter(({ aisleId }) => aisleId === aisle.id)
                .map(({ id }) => (
                  <option key={id} value={`run ${id}`}>
                    run {id}
                  </option>
                ))}
            </optgroup>
          ))}
        </select>
      </div>
      <div className="field">
        <label htmlFor="truck">Truck</label>
        <select
          id="truck"
          value={query.truck ?? ''}
          onChange={({ target }) => onChange({ truck: target.value || null })}
        >
          <option value="">any or none</option>
          {trucks.map(({ id, name }) => (
            <option key={id} value={id}>
              {id} {name}
            </option>
          ))}
        </select>
      </div>
      <div className="field">
        <label htmlFor="order">Within a kind</label>
        <select
          id="order"
          value={query.order}
          onChange={({ target }) => onChange({ order: target.value === 'excess' ? 'excess' : 'severity' })}
        >
          <option value="severity">the gravest first</option>
          <option value="excess">the largest excess first</option>
        </select>
      </div>
      <TimeFields time={query.time} onTime={(time) => onChange({ time })} />
      {isNarrowed ? (
        <button
          type="button"
          onClick={() => onChange({ severity: null, kind: null, where: null, truck: null, find: '' })}
        >
          Show all
        </button>
      ) : null}
    </search>
  );
}
