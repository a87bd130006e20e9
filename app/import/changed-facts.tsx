'use client';

import { useMemo } from 'react';
import { factLabel, valueWords } from '@/app/import/list-words.ts';
import { useWindowedRows } from '@/app/racks/use-windowed-rows.ts';
import type { Change, FieldChange } from '@/lib/import/draft.ts';
import type { ListName } from '@/lib/import/lists.ts';
import { groupDigits } from '@/lib/units/format-quantity.ts';
import styles from './import.module.css';

/** Every changed fact with what it was and would be; only the rows near the view exist. */
export function ChangedFacts({ list, changed }: { list: ListName; changed: readonly Change[] }) {
  const rows = useMemo(
    () => changed.flatMap((change) => change.fields.map((field) => ({ change, field }))),
    [changed],
  );
  const { box, onScroll, first, end, rowPx } = useWindowedRows(rows.length);
  return (
    <div className="stack">
      <h4 className={styles.small}>
        {groupDigits(rows.length)} {rows.length === 1 ? 'fact' : 'facts'} changed
      </h4>
      <section
        ref={box}
        className={styles.changes}
        style={{ maxHeight: `min(60dvh, ${(rows.length + 1) * rowPx + 12}px)` }}
        onScroll={onScroll}
        aria-label="Changed facts"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must take the focus to be scrolled by keys
        tabIndex={0}
      >
        <table aria-rowcount={rows.length + 1}>
          <caption className="unseen">Changed facts; only the rows near the view exist</caption>
          <thead>
            <tr aria-rowindex={1}>
              <th scope="col">Which</th>
              <th scope="col">Fact</th>
              <th scope="col">Before</th>
              <th scope="col">After</th>
            </tr>
          </thead>
          <tbody>
            <Spacer heightPx={first * rowPx} />
            {rows.slice(first, end).map(({ change, field }, at) => (
              <ChangedRow
                key={`${change.what} ${change.id} ${field.fact}`}
                list={list}
                change={change}
                field={field}
                rowIndex={first + at + 2}
                heightPx={rowPx}
              />
            ))}
            <Spacer heightPx={(rows.length - end) * rowPx} />
          </tbody>
        </table>
      </section>
    </div>
  );
}

/** Stands for the rows that are not made. */
function Spacer({ heightPx }: { heightPx: number }) {
  return heightPx <= 0 ? null : <tr className={styles.spacer} style={{ height: heightPx }} />;
}

function ChangedRow({
  list,
  change,
  field,
  rowIndex,
  heightPx,
}: {
  list: ListName;
  change: Change;
  field: FieldChange;
  rowIndex: number;
  heightPx: number;
}) {
  const which = change.what === 'entry' ? change.id : `${change.what} ${change.id}`;
  const before = valueWords(list, field.fact, field.before);
  const after = valueWords(list, field.fact, field.after);
  return (
    <tr aria-rowindex={rowIndex} className={styles.change} style={{ height: heightPx }}>
      <th scope="row" data-cell="which" title={which}>
        {which}
      </th>
      <td data-cell="fact">{factLabel(list, field.fact)}</td>
      <td data-cell="before" title={before}>
        {before}
      </td>
      <td data-cell="after" title={after}>
        <span aria-hidden="true">→ </span>
        <strong>{after}</strong>
      </td>
    </tr>
  );
}
