import type { Comparison, FieldChange, FieldValue } from './draft.ts';
import { type EntryList, valueAt } from './entry-lists.ts';
import { LIST_FACTS, type ListName } from './lists.ts';

/** What taking in an entry would add or change, fact by fact. */
export function compareEntries(
  list: ListName,
  shape: EntryList,
  id: string,
  before: unknown,
  after: unknown,
): Comparison {
  const subject = { what: 'entry', id } as const;
  if (before === null) return { added: [subject], changed: [], unchanged: 0 };
  const childFacts = new Set(shape.children?.facts ?? []);
  const keyFacts = new Set(shape.key.map(({ fact }) => fact));
  const paths = LIST_FACTS[list]
    .map(({ fact }) => fact)
    .filter((fact) => !childFacts.has(fact) && !keyFacts.has(fact));
  if (shape.children !== null) paths.push(shape.children.at);
  const fields = changedFields(
    paths.map((path) => [path, valueAt(before, path) as FieldValue, valueAt(after, path) as FieldValue]),
  );
  return fields.length === 0
    ? { added: [], changed: [], unchanged: 1 }
    : { added: [], changed: [{ ...subject, fields }], unchanged: 0 };
}

/** Those of the facts whose value before is not the one after. */
export function changedFields(facts: readonly (readonly [string, FieldValue, FieldValue])[]): FieldChange[] {
  return facts
    .filter(([, before, after]) => before !== after && JSON.stringify(before) !== JSON.stringify(after))
    .map(([fact, before, after]) => ({ fact, before, after }));
}
