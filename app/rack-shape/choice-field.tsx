'use client';

import { useId } from 'react';

/** One of a few, by a select. */
export function ChoiceField<T extends string>({
  label,
  value,
  choices,
  onChange,
  fault,
}: {
  label: string;
  value: T;
  choices: readonly { value: T; words: string }[];
  onChange: (value: T) => void;
  fault?: string | null;
}) {
  const field = useId();
  return (
    <div className="field">
      <label htmlFor={field}>{label}</label>
      <select
        id={field}
        value={value}
        aria-invalid={fault !== undefined && fault !== null}
        aria-describedby={fault ? `${field}-fault` : undefined}
        onChange={(event) => onChange(event.target.value as T)}
      >
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.words}
          </option>
        ))}
      </select>
      {fault ? (
        <span id={`${field}-fault`} className="fault">
          {fault}
        </span>
      ) : null}
    </div>
  );
}

export function WordField({
  label,
  value,
  onChange,
  fault,
  note,
}: {
  label: string;
  value: string;
  onChange: (value: string) => void;
  fault?: string | null;
  note?: string;
}) {
  const field = useId();
  return (
    <div className="field">
      <label htmlFor={field}>{label}</label>
      <input
        id={field}
        autoComplete="off"
        value={value}
        aria-invalid={fault !== undefined && fault !== null}
        aria-describedby={fault ? `${field}-fault` : note === undefined ? undefined : `${field}-note`}
        onChange={(event) => onChange(event.target.value)}
      />
      {fault ? (
        <span id={`${field}-fault`} className="fault">
          {fault}
        </span>
      ) : note === undefined ? null : (
        <span id={`${field}-note`} className="soft dense">
          {note}
        </span>
      )}
    </div>
  );
}

export function TickField({
  label,
  value,
  onChange,
}: {
  label: string;
  value: boolean;
  onChange: (value: boolean) => void;
}) {
  const field = useId();
  return (
    <div className="row">
      <input
        id={field}
        type="checkbox"
        checked={value}
        onChange={(event) => onChange(event.target.checked)}
      />
      <label htmlFor={field}>{label}</label>
    </div>
  );
}
