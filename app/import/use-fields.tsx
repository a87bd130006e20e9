'use client';

import { useState } from 'react';
import type { Fact } from '@/lib/import/lists.ts';
import { type ColumnUse, type NumberStyle, type TimeStyle, UNITS, type Unit } from '@/lib/import/mapping.ts';
import { PLAIN_NUMBERS, unitFits } from '@/lib/import/read-number.ts';
import styles from './import.module.css';

/** How numbers may be written, each by an example. */
const NUMBER_STYLES: readonly { style: NumberStyle; example: string }[] = [
  { style: { decimal: '.', group: '' }, example: '1234.5' },
  { style: { decimal: ',', group: '' }, example: '1234,5' },
  { style: { decimal: '.', group: ',' }, example: '1,234.5' },
  { style: { decimal: ',', group: '.' }, example: '1.234,5' },
  { style: { decimal: '.', group: ' ' }, example: '1 234.5' },
  { style: { decimal: ',', group: ' ' }, example: '1 234,5' },
  { style: { decimal: '.', group: "'" }, example: "1'234.5" },
  { style: { decimal: ',', group: "'" }, example: "1'234,5" },
];
const TIMES: readonly { style: TimeStyle; example: string }[] = [
  { style: 'iso', example: '2026-03-02' },
  { style: 'dmy', example: '2.3.2026 (day first)' },
  { style: 'mdy', example: '3/2/2026 (month first)' },
];

/** How the cells of a column are read: its unit, its decimal sign, its order of day and month, words of its own. */
export function UseFields({
  id,
  fact,
  use,
  onUse,
}: {
  id: string;
  fact: Fact;
  use: ColumnUse;
  onUse: (change: Partial<ColumnUse>) => void;
}) {
  const quantity = fact.kind === 'mass' ? 'mass' : 'length';
  const hasUnit = fact.kind === 'length' || fact.kind === 'surveyed' || fact.kind === 'mass';
  const numbers = use.numbers ?? PLAIN_NUMBERS;
  return (
    <>
      {hasUnit ? (
        <div className="field">
          <label htmlFor={`${id}-unit`}>
            <span className="unseen">{fact.label}: </span>in
          </label>
          <select
            id={`${id}-unit`}
            value={use.unit ?? (quantity === 'mass' ? 'kg' : 'mm')}
            onChange={({ target }) => onUse({ unit: target.value as Unit })}
          >
            {UNITS.filter((unit) => unitFits(unit, quantity)).map((unit) => (
              <option key={unit}>{unit}</option>
            ))}
          </select>
        </div>
      ) : null}
      {hasUnit || fact.kind === 'number' ? (
        <div className="field">
          <label htmlFor={`${id}-numbers`}>
            <span className="unseen">{fact.label}: </span>written as
          </label>
          <select
            id={`${id}-numbers`}
            value={NUMBER_STYLES.findIndex(
              ({ style }) => style.decimal === numbers.decimal && style.group === numbers.group,
            )}
            onChange={({ target }) => onUse({ numbers: NUMBER_STYLES[Number(target.value)]!.style })}
          >
            {NUMBER_STYLES.map(({ example }, at) => (
              <option key={example} value={at}>
                {example}
              </option>
            ))}
          </select>
        </div>
      ) : null}
      {fact.kind === 'time' ? (
        <div className="field">
          <label htmlFor={`${id}-times`}>
            <span className="unseen">{fact.label}: </span>written as
          </label>
          <select
            id={`${id}-times`}
            value={use.times ?? 'iso'}
            onChange={({ target }) => onUse({ times: target.value as TimeStyle })}
          >
            {TIMES.map(({ style, example }) => (
              <option key={style} value={style}>
                {example}
              </option>
            ))}
          </select>
        </div>
      ) : null}
      {fact.choices !== undefined || fact.kind === 'yes-no' ? (
        <WordFields id={id} fact={fact} use={use} onUse={onUse} />
      ) : null}
    </>
  );
}

/** For each choice, the words that the file has for it where they are its own. */
function WordFields({
  id,
  fact,
  use,
  onUse,
}: {
  id: string;
  fact: Fact;
  use: ColumnUse;
  onUse: (change: Partial<ColumnUse>) => void;
}) {
  const choices = fact.choices ?? ['yes', 'no'];
  const [typed, setTyped] = useState<Record<string, string>>(() =>
    Object.fromEntries(choices.map((choice) => [choice, wordsFor(use.words, choice).join(', ')])),
  );
  const type = (choice: string, text: string) => {
    const next = { ...typed, [choice]: text };
    setTyped(next);
    const words: Record<string, string> = {};
    for (const [meant, list] of Object.entries(next)) {
      for (const word of list.split(',').map((entry) => entry.trim())) if (word !== '') words[word] = meant;
    }
    onUse({ words: Object.keys(words).length === 0 ? undefined : words });
  };
  return (
    <details className={styles.words}>
      <summary>
        <span className="unseen">{fact.label}: </span>words of the file
      </summary>
      {choices.map((choice) => (
        <div key={choice} className="field">
          <label htmlFor={`${id}-word-${choice}`}>{choice} is written as</label>
          <input
            id={`${id}-word-${choice}`}
            value={typed[choice] ?? ''}
            autoComplete="off"
            onChange={({ target }) => type(choice, target.value)}
          />
        </div>
      ))}
    </details>
  );
}

function wordsFor(words: ColumnUse['words'], choice: string): string[] {
  return Object.entries(words ?? {})
    .filter(([, meant]) => meant === choice)
    .map(([word]) => word);
}
