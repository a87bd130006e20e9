import type { Refusal } from '../model/refusal.ts';
import type { MeasureKind } from './measure.ts';

/** What is wrong with one field of a form. */
export type FieldFault =
  | { is: 'unread'; of: MeasureKind; text: string }
  /** Capacities are stated beside it, but not for which height or load centre. */
  | { is: 'heading-needed' }
  | { is: 'refused'; refusal: Refusal };

/** The faults of a form by the name of the field; those that belong to no field under an empty name. */
export type FieldFaults = ReadonlyMap<string, FieldFault>;

/** What a form comes to: the fact, or why it is none yet. */
export type Judged<Fact> = { fact: Fact | null; faults: FieldFaults };

/** Is this fault nothing but a fact that was not given yet? It is told when saving is tried, not while typing. */
export function isMissing(fault: FieldFault): boolean {
  if (fault.is !== 'refused' || fault.refusal.came !== 'nothing') return false;
  const { is } = fault.refusal.expected;
  return is === 'present' || is === 'one-of';
}
