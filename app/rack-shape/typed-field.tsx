'use client';

import { useId, useState } from 'react';
import { useUnits } from '@/app/_parts/units-context.tsx';
import { readTyped, shownTyped, type TypedKind, typedFault } from '@/app/rack-shape/read-typed.ts';
import type { Typed } from '@/lib/rack-shape/description.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';

export function unitOf(of: TypedKind, units: DisplayUnits): string {
  if (of === 'count') return '';
  return of === 'mass' ? (units === 'metric' ? 'kg' : 'lb') : units === 'metric' ? 'mm' : 'in';
}

/**
 * A mass, length or count as it is typed. What was typed stays in the field while it means the value; when the value
 * changes from elsewhere (an undo, other units) the field shows that. `fault`: what the whole form finds wrong with it.
 */
export function TypedField({
  label,
  of,
  value,
  onChange,
  fault,
  note,
  labelHidden = false,
}: {
  label: string;
  of: TypedKind;
  value: Typed;
  onChange: (value: Typed) => void;
  fault?: string | null;
  note?: string;
  labelHidden?: boolean;
}) {
  const units = useUnits();
  const field = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const holds = typed !== null && readTyped(typed, of, units) === value;
  const text = holds ? typed : shownTyped(value, of, units);
  const wrong = (holds ? typedFault(typed, of, units) : null) ?? fault ?? null;
  const unit = unitOf(of, units);
  return (
    <div className="field">
      <label htmlFor={field} className={labelHidden ? 'unseen' : ''}>
        {label} {unit === '' ? null : <span className="soft">{unit}</span>}
      </label>
      <input
        id={field}
        inputMode={of === 'count' ? 'numeric' : 'decimal'}
        autoComplete="off"
        value={text}
        aria-invalid={wrong !== null}
        aria-describedby={
          wrong !== null ? `${field}-fault` : note === undefined ? undefined : `${field}-note`
        }
        onChange={(event) => {
          setTyped(event.target.value);
          onChange(readTyped(event.target.value, of, units));
        }}
      />
      {wrong !== null ? (
        <span id={`${field}-fault`} className="fault">
          {wrong}
        </span>
      ) : note === undefined ? null : (
        <span id={`${field}-note`} className="soft dense">
          {note}
        </span>
      )}
    </div>
  );
}
