import type { Site } from '../model/site.ts';
import { readSite } from '../model/site-file.ts';
import type { FactValue } from './read-cell.ts';
import type { RefusalBook } from './refusal-book.ts';

/** What a row or several rows say about. `entry` is an entry of the list; the others are parts of racks. */
export type Subject = { what: 'entry' | 'run' | 'frame' | 'bay' | 'level' | 'location'; id: string };

/** One fact before and after; children of an entry (plate ratings, items, ...) as their whole list. */
export type FieldChange = { fact: string; before: FieldValue; after: FieldValue };
export type FieldValue = FactValue | readonly Readonly<Record<string, unknown>>[];
export type Change = Subject & { fields: FieldChange[] };

export type Comparison = { added: Subject[]; changed: Change[]; unchanged: number };

export type Collection =
  | 'palletTypes'
  | 'frameTypes'
  | 'aisles'
  | 'docks'
  | 'runs'
  | 'trucks'
  | 'operators'
  | 'loads'
  | 'stock'
  | 'checks';

export type PathKey = string | number;

/** One entry of a collection as the rows of a file would have it: taken in whole, or not at all. */
export type Draft = {
  what: 'run' | 'entry';
  id: string;
  /** Where it stands in the collection now; null for a new one. */
  at: number | null;
  /** The whole entry, not yet judged by the model. */
  raw: unknown;
  /** The rows that speak of it. */
  rows: readonly number[];
  /** Which row and fact a path inside the entry came from. */
  locate(path: readonly PathKey[]): { row: number; fact: string | null };
  compare(after: unknown): Comparison;
};

/**
 * Puts drafts into a site so that the whole is valid: the site is read again with them, what the model refuses is
 * traced to its rows and its draft left out, until nothing is refused.
 */
export function settle(
  site: Site,
  collection: Collection,
  drafts: readonly Draft[],
  book: RefusalBook,
): { site: Site; kept: { draft: Draft; after: unknown }[] } {
  let left = drafts;
  for (;;) {
    const list: unknown[] = [...site[collection]];
    const draftAt = new Map<number, Draft>();
    for (const draft of left) {
      const at = draft.at ?? list.length;
      list[at] = draft.raw;
      draftAt.set(at, draft);
    }
    const reading = readSite({ ...site, [collection]: list });
    if (reading.ok) {
      const after: readonly unknown[] = reading.site[collection];
      return { site: reading.site, kept: [...draftAt].map(([at, draft]) => ({ draft, after: after[at] })) };
    }
    const wrong = new Set<Draft>();
    for (const { path, came, expected } of reading.refusals) {
      const [top, at, ...rest] = pathKeys(path);
      const draft = top === collection && typeof at === 'number' ? draftAt.get(at) : undefined;
      if (draft === undefined) throw new Error(`the site itself is not valid: ${path}`);
      const { row, fact } = draft.locate(rest);
      wrong.add(draft);
      book.refuse(row, fact, expected, came === 'nothing' ? undefined : came);
    }
    for (const draft of wrong) book.refuseRest(draft.what, draft.id, draft.rows);
    left = left.filter((draft) => !wrong.has(draft));
  }
}

function pathKeys(path: string): PathKey[] {
  return [...path.matchAll(/\.([A-Za-z_]\w*)|\[(\d+)\]|\[("(?:[^"\\]|\\.)*")\]/g)].map((match) =>
    match[1] !== undefined
      ? match[1]
      : match[2] !== undefined
        ? Number(match[2])
        : String(JSON.parse(match[3]!)),
  );
}
