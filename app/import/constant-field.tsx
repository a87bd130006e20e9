'use client';

import type { Fact } from '@/lib/import/lists.ts';

/** The one value that every row has: chosen where there is a choice, else typed as in a cell, lengths in mm, masses in kg. */
export function ConstantField({
  id,
  fact,
  text,
  onText,
}: {
  id: string;
  fact: Fact;
  text: string;
  onText: (text: string) => void;
}) {
  const choices = fact.kind === 'yes-no' ? ['yes', 'no'] : fact.choices;
  const unit =
    fact.kind === 'length' || fact.kind === 'surveyed'
      ? ' (mm)'
      : fact.kind === 'mass'
        ? ' (kg)'
        : fact.fixedUnit === undefined
          ? ''
          : ` (${fact.fixedUnit})`;
  return (
    <div className="field">
      <label htmlFor={id}>
        <span className="unseen">{fact.label}: </span>in every row{unit}
      </label>
      {choices === undefined ? (
        <input id={id} value={text} autoComplete="off" onChange={({ target }) => onText(target.value)} />
      ) : (
        <select id={id} value={text} onChange={({ target }) => onText(target.value)}>
          <option value="">not known</option>
          {choices.map((choice) => (
            <option key={choice}>{choice}</option>
          ))}
        </select>
      )}
    </div>
  );
}
