import type { Run } from '../model/racking.ts';
import type { Site } from '../model/site.ts';
import { assembleRun, type ReadingNotes } from './assemble-run.ts';
import { compareRuns } from './compare-runs.ts';
import type { Draft } from './draft.ts';
import { rackRows, standingLocations } from './rack-rows.ts';
import type { RowFacts } from './read-rows.ts';
import type { RefusalBook } from './refusal-book.ts';

/** The runs that the rows of the locations list would make or change. A run comes in whole or not at all. */
export function rackDrafts(
  site: Site,
  rows: readonly RowFacts[],
  book: RefusalBook,
): { drafts: Draft[]; notes: ReadingNotes } {
  const standing = standingLocations(site);
  const notes: ReadingNotes = { baysByName: [], locationsByName: 0 };
  const at = new Map(site.runs.map((run, index) => [run.id, index]));
  const drafts = [...rackRows(site, rows, standing, book).values()].flatMap((run): Draft[] => {
    const index = at.get(run.id) ?? null;
    const before = index === null ? null : site.runs[index]!;
    const { raw, locate } = assembleRun(run, before, book, notes);
    if (run.rows.some((row) => book.has(row))) {
      book.refuseRest('run', run.id, run.rows);
      return [];
    }
    const compare: Draft['compare'] = (after) => compareRuns(before, after as Run);
    return [{ what: 'run', id: run.id, at: index, raw, rows: run.rows, locate, compare }];
  });
  return { drafts, notes };
}
