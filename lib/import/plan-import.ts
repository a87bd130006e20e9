import type { Site } from '../model/site.ts';
import type { ReadingNotes } from './assemble-run.ts';
import { type Change, type Collection, type Subject, settle } from './draft.ts';
import { entryDrafts } from './entry-drafts.ts';
import { ENTRY_LISTS } from './entry-lists.ts';
import type { ListName } from './lists.ts';
import { columnAt, type Mapping } from './mapping.ts';
import { rackDrafts } from './rack-drafts.ts';
import { readRows } from './read-rows.ts';
import { refusalBook } from './refusal-book.ts';
import type { RowRefusal } from './row-refusal.ts';
import { report, type Table, type Watch } from './table.ts';

export type ImportMode = 'all-or-nothing' | 'good-rows-only';

/** What an import would do. Nothing has been done: `site` is the site as it would be, valid as a whole. */
export type ImportPlan = {
  list: ListName;
  mode: ImportMode;
  /** Whether `site` has the rows in it: not, where all or nothing was asked and a row was refused. */
  applies: boolean;
  added: Subject[];
  changed: Change[];
  /** How many subjects the rows speak of without changing them. */
  unchanged: number;
  refused: RowRefusal[];
  /** Runs whose bays, and the count of locations that, were put in order by their names. */
  notes: ReadingNotes;
  site: Site;
};

export type PlanOptions = { mode?: ImportMode; watch?: Watch };

/**
 * The dry run: what would the rows of a table, read by this mapping, add to and change in a site? The site given is not
 * touched and must be valid (else throws). Nothing is ever deleted; a fact that no column gives stays as it is; a
 * blank cell states that the fact is not known. Entries made of several rows (a run, a plate, a load's items) come in
 * whole or not at all, because a part of one could allow what the whole does not.
 */
export function planImport(
  site: Site,
  list: ListName,
  table: Table,
  mapping: Mapping,
  { mode = 'all-or-nothing', watch }: PlanOptions = {},
): ImportPlan {
  if (mapping.list !== list) throw new Error(`a mapping for ${mapping.list} cannot read ${list}`);
  const book = refusalBook(table, mapping);
  for (const use of mapping.columns) {
    if (columnAt(table, use) < 0) book.refuse(table.headerRow, use.fact, { is: 'column-in-file' });
  }
  const none: ReadingNotes = { baysByName: [], locationsByName: 0 };
  if (book.all.length > 0) {
    const refused = [...book.all];
    return { list, mode, applies: false, added: [], changed: [], unchanged: 0, refused, notes: none, site };
  }
  const rows = readRows(table, mapping, book, watch);
  report(watch, 'agreeing', 0, 1);
  const { drafts, notes } =
    list === 'locations'
      ? rackDrafts(site, rows, book)
      : { drafts: entryDrafts(site, list, rows, book), notes: none };
  const collection: Collection = list === 'locations' ? 'runs' : ENTRY_LISTS[list].collection;
  const settled = settle(site, collection, drafts, book);
  const added: Subject[] = [];
  const changed: Change[] = [];
  let unchanged = 0;
  for (const { draft, after } of settled.kept) {
    const comparison = draft.compare(after);
    for (const subject of comparison.added) added.push(subject);
    for (const change of comparison.changed) changed.push(change);
    unchanged += comparison.unchanged;
  }
  report(watch, 'agreeing', 1, 1);
  const refused = [...book.all].sort((a, b) => a.row - b.row);
  const applies = mode === 'good-rows-only' || refused.length === 0;
  return {
    list,
    mode,
    applies,
    added,
    changed,
    unchanged,
    refused,
    notes,
    site: applies ? settled.site : site,
  };
}
