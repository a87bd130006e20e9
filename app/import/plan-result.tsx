'use client';

import { ChangedFacts } from '@/app/import/changed-facts.tsx';
import type { ShownPlan } from '@/app/import/dry-run.ts';
import { LIST_WORDS } from '@/app/import/list-words.ts';
import { RefusedRows } from '@/app/import/refused-rows.tsx';
import { groupDigits } from '@/lib/units/format-quantity.ts';
import styles from './import.module.css';

const ADDED_NAMED = 60;

/** The dry run of one file: how many are added, changed, unchanged and refused; which, and from what to what. */
export function PlanResult({ shown: { file, plan } }: { shown: ShownPlan }) {
  const rows = new Set(plan.refused.map(({ row }) => row)).size;
  const counts: [label: string, count: number][] = [
    ['Added', plan.added.length],
    ['Changed', plan.changed.length],
    ['Unchanged', plan.unchanged],
    ['Rows refused', rows],
  ];
  return (
    <section className="stack" aria-label={`${LIST_WORDS[plan.list]} from ${file.name}`}>
      <h3>
        {LIST_WORDS[plan.list]} from {file.name}
      </h3>
      <dl className={styles.counts}>
        {counts.map(([label, count]) => (
          <div key={label}>
            <dt className="soft dense">{label}</dt>
            <dd>{groupDigits(count)}</dd>
          </div>
        ))}
      </dl>
      {plan.list === 'locations' && plan.added.length + plan.changed.length > 0 ? (
        <p className="soft dense">Runs, frames, bays, levels and locations are counted each for itself.</p>
      ) : null}
      {plan.notes.baysByName.length === 0 ? null : (
        <p className={styles.doubt}>
          No number gives the order of the bays in {plan.notes.baysByName.length === 1 ? 'run ' : 'runs '}
          {plan.notes.baysByName.slice(0, 20).join(', ')}: they were put in the order of their names. Check it
          on the racks screen.
        </p>
      )}
      {plan.notes.locationsByName === 0 ? null : (
        <p className={styles.doubt}>
          {groupDigits(plan.notes.locationsByName)} locations have no position: they were put in the order of
          their names.
        </p>
      )}
      {plan.added.length === 0 ? null : (
        <details>
          <summary>{groupDigits(plan.added.length)} added</summary>
          <p>
            {plan.added
              .slice(0, ADDED_NAMED)
              .map(({ what, id }) => (what === 'entry' ? id : `${what} ${id}`))
              .join(', ')}
            {plan.added.length > ADDED_NAMED
              ? ` and ${groupDigits(plan.added.length - ADDED_NAMED)} more`
              : ''}
            .
          </p>
        </details>
      )}
      {plan.changed.length === 0 ? null : <ChangedFacts list={plan.list} changed={plan.changed} />}
      {plan.refused.length === 0 ? null : <RefusedRows file={file} refused={plan.refused} rows={rows} />}
    </section>
  );
}
