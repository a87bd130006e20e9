import type { ReactNode } from 'react';
import { refusalAtField, refusedParameter } from '@/app/_parts/asked-refusals.tsx';
import type { RawQuery } from '@/app/_parts/lift-query.ts';
import type { Refusal } from '@/lib/model/refusal.ts';

/** What stands in the form: the text given for each parameter, and the fault at each that could not be read. */
export type FormState = {
  raw: RawQuery;
  given: (key: string) => string;
  fault: (key: string) => string | null;
  /** Is anything given, or at fault, among these? */
  any: (keys: readonly string[]) => boolean;
};

export function formState(raw: RawQuery, refused: readonly Refusal[]): FormState {
  const faults = new Map(refused.map((refusal) => [refusedParameter(refusal), refusalAtField(refusal)]));
  const given = (key: string) => [raw[key]].flat()[0]?.trim() ?? '';
  return {
    raw,
    given,
    fault: (key) => faults.get(key) ?? null,
    any: (keys) => keys.some((key) => given(key) !== '' || faults.has(key)),
  };
}

/** What ties an input to its fault, for those who hear the page. */
export function faultLink(
  id: string,
  fault: string | null,
): { 'aria-invalid': boolean; 'aria-describedby'?: string } {
  return fault === null
    ? { 'aria-invalid': false }
    : { 'aria-invalid': true, 'aria-describedby': `${id}-fault` };
}

/** A label, its field, and the fault at it. */
export function Field({
  id,
  label,
  unit,
  fault,
  children,
}: {
  id: string;
  label: string;
  unit?: string;
  fault: string | null;
  children: ReactNode;
}) {
  return (
    <div className="field">
      <label htmlFor={id}>
        {label} {unit === undefined ? null : <span className="soft">{unit}</span>}
      </label>
      {children}
      <Fault id={id} words={fault} />
    </div>
  );
}

/** What came and what was expected, at the field itself. */
export function Fault({ id, words }: { id: string; words: string | null }) {
  if (words === null) return null;
  return (
    <span id={`${id}-fault`} className="fault">
      {words}
    </span>
  );
}
