'use client';

import { type ReactNode, useId } from 'react';
import { useUnits } from '@/app/_parts/units-context.tsx';
import {
  type Measure,
  type MeasureKind,
  measureText,
  measureUnit,
  typedMeasure,
} from '@/lib/entry/measure.ts';

/** The sentence that stands at a field, or null; asked by the name of the field. */
export type FaultOf = (field: string) => string | null;

type Common = { field: string; label: string; fault: FaultOf; note?: ReactNode };

/** A text. `suggestions`: what the site has already. */
export function TextEntry({
  field,
  label,
  fault,
  note,
  value,
  onChange,
  suggestions,
  readOnly = false,
}: Common & {
  value: string;
  onChange: (value: string) => void;
  suggestions?: readonly string[];
  readOnly?: boolean;
}) {
  const id = useId();
  const wrong = fault(field);
  return (
    <Frame id={id} label={label} wrong={wrong} note={note}>
      <input
        id={id}
        data-field={field}
        autoComplete="off"
        value={value}
        readOnly={readOnly}
        list={suggestions === undefined ? undefined : `${id}-list`}
        onChange={(event) => onChange(event.target.value)}
        {...described(id, wrong, note)}
      />
      {suggestions === undefined ? null : (
        <datalist id={`${id}-list`}>
          {suggestions.map((text) => (
            <option key={text} value={text} />
          ))}
        </datalist>
      )}
    </Frame>
  );
}

/** A mass, length, speed or number; what is not touched is stored as it was. */
export function MeasureEntry({
  field,
  label,
  fault,
  note,
  of,
  unit,
  value,
  onChange,
}: Common & {
  of: MeasureKind;
  /** Said of a plain number. */
  unit?: string;
  value: Measure;
  onChange: (value: Measure) => void;
}) {
  const units = useUnits();
  const id = useId();
  const wrong = fault(field);
  return (
    <Frame id={id} label={label} unit={unit ?? measureUnit(of, units)} wrong={wrong} note={note}>
      <input
        id={id}
        data-field={field}
        inputMode="decimal"
        autoComplete="off"
        value={measureText(value, of, units)}
        onChange={(event) => onChange(typedMeasure(value, event.target.value, of, units))}
        {...described(id, wrong, note)}
      />
    </Frame>
  );
}

/** One of a few; nothing is chosen until a person does. */
export function ChoiceEntry<T extends string>({
  field,
  label,
  fault,
  note,
  value,
  choices,
  none,
  onChange,
}: Common & {
  value: T | '';
  choices: readonly (readonly [value: T, words: string])[];
  /** What choosing nothing means, where it may be stored; else a choice is asked for. */
  none?: string;
  onChange: (value: T | '') => void;
}) {
  const id = useId();
  const wrong = fault(field);
  return (
    <Frame id={id} label={label} wrong={wrong} note={note}>
      <select
        id={id}
        data-field={field}
        value={value}
        onChange={(event) => onChange(event.target.value as T | '')}
        {...described(id, wrong, note)}
      >
        {none !== undefined || value === '' ? <option value="">{none ?? 'Choose'}</option> : null}
        {choices.map(([choice, words]) => (
          <option key={choice} value={choice}>
            {words}
          </option>
        ))}
      </select>
    </Frame>
  );
}

function Frame({
  id,
  label,
  unit = '',
  wrong,
  note,
  children,
}: {
  id: string;
  label: string;
  unit?: string;
  wrong: string | null;
  note: ReactNode;
  children: ReactNode;
}) {
  return (
    <div className="field">
      <label htmlFor={id}>
        {label} {unit === '' ? null : <span className="soft">{unit}</span>}
      </label>
      {children}
      {wrong === null ? null : (
        <span id={`${id}-fault`} className="fault">
          {wrong}
        </span>
      )}
      {wrong !== null || note === undefined ? null : (
        <span id={`${id}-note`} className="soft dense">
          {note}
        </span>
      )}
    </div>
  );
}

function described(id: string, wrong: string | null, note: ReactNode) {
  return {
    'aria-invalid': wrong !== null,
    'aria-describedby': wrong !== null ? `${id}-fault` : note === undefined ? undefined : `${id}-note`,
  };
}
