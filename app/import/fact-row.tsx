'use client';

import { ConstantField } from '@/app/import/constant-field.tsx';
import { changeUse, giveColumn, giveConstant, giveNothing, sourceOf } from '@/app/import/edit-mapping.ts';
import { readConstant, readSamples, type Sample } from '@/app/import/read-sample.ts';
import { UseFields } from '@/app/import/use-fields.tsx';
import type { MappingGuess } from '@/lib/import/guess-mapping.ts';
import type { Fact } from '@/lib/import/lists.ts';
import { columnAt, type Mapping } from '@/lib/import/mapping.ts';
import type { OpenedList } from '@/workers/import-desk.ts';
import styles from './import.module.css';

const NOTHING = 'nothing';
const CONSTANT = 'constant';

/** One fact: where it comes from, how the column is read, and what comes of its first cells. */
export function FactRow({
  fact,
  mapping,
  opened,
  fileKey,
  isNeeded,
  guess,
  onMapping,
}: {
  fact: Fact;
  mapping: Mapping;
  opened: OpenedList;
  fileKey: number;
  isNeeded: boolean;
  /** What was guessed, while the guess is what is used. */
  guess: MappingGuess | null;
  onMapping: (mapping: Mapping) => void;
}) {
  const id = `fact-${fileKey}-${fact.fact}`;
  const source = sourceOf(mapping, fact.fact);
  const at = source.from === 'column' ? columnAt({ header: opened.header }, source.use) : -1;
  const samples =
    source.from === 'column'
      ? readSamples(mapping, source.use, opened)
      : source.from === 'constant'
        ? [readConstant(mapping, fact.fact, source.text)].filter((sample) => sample !== null)
        : [];
  const choose = (value: string) => {
    if (value === NOTHING) onMapping(giveNothing(mapping, fact.fact));
    else if (value === CONSTANT) onMapping(giveConstant(mapping, fact.fact, ''));
    else onMapping(giveColumn(mapping, fact.fact, Number(value), opened));
  };
  return (
    <li className={styles.fact}>
      <div className="field">
        <label htmlFor={id}>
          {fact.label} {isNeeded ? <span className={styles.missing}>not given</span> : null}
        </label>
        <select
          id={id}
          value={source.from === 'column' ? (at < 0 ? '' : String(at)) : source.from}
          onChange={({ target }) => choose(target.value)}
        >
          {at < 0 && source.from === 'column' ? (
            <option value="">{source.use.header} (not in the file)</option>
          ) : null}
          <option value={NOTHING}>not in the file</option>
          <option value={CONSTANT}>the same for every row</option>
          {opened.header.map((header, column) =>
            header === '' ? null : (
              // biome-ignore lint/suspicious/noArrayIndexKey: columns have no other name that is their own
              <option key={column} value={column}>
                {header}
              </option>
            ),
          )}
        </select>
      </div>
      <div className={styles.how}>
        {source.from === 'constant' ? (
          <ConstantField
            id={`${id}-constant`}
            fact={fact}
            text={source.text}
            onText={(text) => onMapping(giveConstant(mapping, fact.fact, text))}
          />
        ) : null}
        {source.from === 'column' ? (
          <UseFields
            id={id}
            fact={fact}
            use={source.use}
            onUse={(change) => onMapping(changeUse(mapping, fact.fact, change))}
          />
        ) : null}
      </div>
      <div className={styles.samples}>
        <Samples samples={samples} />
        {source.from === 'column' ? <Doubt guess={guess} fact={fact.fact} at={at} opened={opened} /> : null}
      </div>
    </li>
  );
}

function Samples({ samples }: { samples: readonly Sample[] }) {
  if (samples.length === 0) return null;
  return (
    <ul aria-label="Read as" aria-live="polite">
      {samples.map((sample) => (
        <li key={sample.came}>
          <span className="soft">{sample.came === '' ? 'blank' : sample.came}</span>{' '}
          <span aria-hidden="true">→</span> <span className="unseen">is read as</span>
          {sample.ok ? <strong>{sample.read}</strong> : <span className="fault">{sample.fault}</span>}
        </li>
      ))}
    </ul>
  );
}

/** What is not sure about a guess. */
function Doubt({
  guess,
  fact,
  at,
  opened,
}: {
  guess: MappingGuess | null;
  fact: string;
  at: number;
  opened: OpenedList;
}) {
  const column = guess?.columns[at];
  if (column === undefined || column.fact !== fact || opened.header[at] !== column.header) return null;
  const doubts = [
    ...(column.confidence < 0.85 ? ['the header names it in part only'] : []),
    ...(column.unit === 'assumed' ? ['the header states no unit'] : []),
    ...(column.ambiguous ? ['it could be read in two ways'] : []),
  ];
  return doubts.length === 0 ? null : <p className={styles.doubt}>Check: {doubts.join('; ')}.</p>;
}
