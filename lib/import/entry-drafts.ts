import { nearestTo } from '../model/refusal.ts';
import type { Site } from '../model/site.ts';
import { compareEntries } from './compare-entries.ts';
import type { Draft, PathKey } from './draft.ts';
import { ENTRY_LISTS, type EntryList, referable, valueAt } from './entry-lists.ts';
import { LIST_FACTS, type ListName } from './lists.ts';
import type { FactValue } from './read-cell.ts';
import type { RowFacts } from './read-rows.ts';
import type { RefusalBook } from './refusal-book.ts';
import { type StatedFacts, takeIn } from './stated-facts.ts';

type Raw = Record<string, unknown>;
type Group = { id: string; key: string; rows: RowFacts[] };

/** Beyond this many, a reference that does not resolve is refused without a look for the nearest id. */
const NEAREST_LOOKED_FOR = 100;

/** The entries that the rows of a list would make or change. Rows that cannot be part of any go into the book. */
export function entryDrafts(
  site: Site,
  list: Exclude<ListName, 'locations'>,
  rows: readonly RowFacts[],
  book: RefusalBook,
): Draft[] {
  const shape = ENTRY_LISTS[list];
  refuseDanglingReferences(site, shape, rows, book);
  const groups = groupRows(list, shape, rows, book);
  const existing = new Map<string, number>();
  for (const [at, entry] of (site[shape.collection] as readonly unknown[]).entries()) {
    const key = JSON.stringify(shape.key.map(({ path }) => valueAt(entry, path)));
    if (!existing.has(key)) existing.set(key, at);
  }
  return groups.flatMap((group) => {
    const at = existing.get(group.key) ?? null;
    const entry = at === null ? null : (site[shape.collection][at] as Raw);
    const draft = draftOf(list, shape, group, at, entry, book);
    if (!group.rows.some(({ row }) => book.has(row))) return [draft];
    book.refuseRest('entry', group.id, draft.rows);
    return [];
  });
}

/** Rows by the entry that they name. Without children an entry has one row, and a second one is refused. */
function groupRows(list: ListName, shape: EntryList, rows: readonly RowFacts[], book: RefusalBook): Group[] {
  const facts = LIST_FACTS[list].map(({ fact }) => fact);
  const groups = new Map<string, Group>();
  let above: Group | null = null;
  for (const row of rows) {
    const parts = shape.key.map(({ fact }) => row.get(fact) ?? null);
    const blank = parts.indexOf(null);
    if (blank >= 0) {
      if (!book.has(row.row)) book.refuse(row.row, shape.key[blank]!.fact, { is: 'present' });
      // A row without a name may belong to the entry above it, which is then not known whole.
      if (shape.children !== null) above?.rows.push(row);
      continue;
    }
    const key = JSON.stringify(parts);
    const known = groups.get(key);
    if (known !== undefined && shape.children === null) {
      const first = known.rows[0]!;
      book.refuse(row.row, shape.key[0]!.fact, { is: 'once-in-file', otherRow: first.row });
      // Which of two rows that differ is right cannot be told: neither is taken.
      if (
        !book.has(first.row) &&
        facts.some((fact) => JSON.stringify(first.get(fact)) !== JSON.stringify(row.get(fact)))
      ) {
        book.refuse(first.row, shape.key[0]!.fact, { is: 'once-in-file', otherRow: row.row });
      }
      continue;
    }
    above = known ?? { id: parts.join(' '), key, rows: [] };
    above.rows.push(row);
    groups.set(key, above);
  }
  return [...groups.values()];
}

function refuseDanglingReferences(
  site: Site,
  shape: EntryList,
  rows: readonly RowFacts[],
  book: RefusalBook,
): void {
  for (const { fact, to } of shape.references) {
    const ids = referable(site, to);
    const nearest = new Map<string, string | null>();
    for (const row of rows) {
      const id = row.get(fact) ?? null;
      if (id === null || ids.has(String(id))) continue;
      const name = String(id);
      if (!nearest.has(name) && nearest.size < NEAREST_LOOKED_FOR) nearest.set(name, nearestTo(name, ids));
      book.refuse(row.row, fact, { is: 'id-in', list: to, nearest: nearest.get(name) ?? null });
    }
  }
}

function draftOf(
  list: Exclude<ListName, 'locations'>,
  shape: EntryList,
  group: Group,
  at: number | null,
  entry: Raw | null,
  book: RefusalBook,
): Draft {
  const childFacts = new Set(shape.children?.facts ?? []);
  const keyFacts = new Map(shape.key.map(({ fact, path }) => [fact, path]));
  const raw = { ...(entry ?? shape.blank) } as Raw;
  const stated: StatedFacts = new Map();
  const entryFacts = LIST_FACTS[list].map(({ fact }) => fact).filter((fact) => !childFacts.has(fact));
  for (const row of group.rows) takeIn(stated, row, entryFacts, book);
  for (const [fact, { value }] of stated) setAt(raw, keyFacts.get(fact) ?? fact, value);
  closeGroups(raw, shape.groups);
  const childRows: number[] = [];
  if (
    shape.children !== null &&
    group.rows.some((row) => [...childFacts].some((fact) => row.get(fact) !== undefined))
  ) {
    const children = childrenOf(group, childFacts, childRows);
    setAt(
      raw,
      shape.children.at,
      children.length === 0 && shape.children.whenEmpty === 'null' ? null : children,
    );
  }
  const locate = (path: readonly PathKey[]): { row: number; fact: string | null } => {
    const number = path.findIndex((key) => typeof key === 'number');
    const inChild = number >= 0 && path.slice(0, number).join('.') === shape.children?.at;
    if (inChild) {
      const fact = String(path[number + 1] ?? '');
      return {
        row: childRows[Number(path[number])] ?? group.rows[0]!.row,
        fact: childFacts.has(fact) ? fact : null,
      };
    }
    const dotted = path.filter((key) => typeof key === 'string').join('.');
    const fact = shape.key.find((part) => part.path === dotted)?.fact ?? dotted;
    const known = entryFacts.includes(fact);
    return { row: stated.get(fact)?.row ?? group.rows[0]!.row, fact: known ? fact : null };
  };
  return {
    what: 'entry',
    id: group.id,
    at,
    raw,
    rows: group.rows.map(({ row }) => row),
    locate,
    compare: (after) => compareEntries(list, shape, group.id, entry, after),
  };
}

/** The children that the rows give, in their order. One row without any child fact says: there are none. */
function childrenOf(group: Group, facts: ReadonlySet<string>, childRows: number[]): Raw[] {
  const children = group.rows.map((row) => {
    const child: Raw = {};
    for (const fact of facts) setAt(child, fact, row.get(fact) ?? null);
    return { child, row: row.row };
  });
  if (children.length === 1 && Object.keys(children[0]!.child).length === 0) return [];
  for (const { row } of children) childRows.push(row);
  return children.map(({ child }) => child);
}

/** Sets a fact; one that is not known is left out, which the model reads as null or refuses as missing. */
function setAt(raw: Raw, path: string, value: FactValue | Raw[]): void {
  const keys = path.split('.');
  const last = keys.pop()!;
  let object = raw;
  for (const key of keys) {
    // Copied on the way down: the entry that stands in the site stays as it is.
    const copy: Raw = { ...(object[key] as Raw | null) };
    object[key] = copy;
    object = copy;
  }
  if (value === null) delete object[last];
  else object[last] = value;
}

/** A group none of whose facts is known is null as a whole; one that is known in part lacks the rest, and is refused. */
function closeGroups(raw: Raw, groups: readonly string[]): void {
  for (const name of groups) {
    const group = (raw[name] ?? null) as Raw | null;
    if (group === null) continue;
    const known = Object.entries(group).filter(([, value]) => value !== null);
    raw[name] = known.length === 0 ? null : Object.fromEntries(known);
  }
}
