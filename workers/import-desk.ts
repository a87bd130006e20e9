import { type ProxyMarked, type Remote, releaseProxy } from 'comlink';
import { guessMapping, type MappingGuess } from '../lib/import/guess-mapping.ts';
import type { ListName } from '../lib/import/lists.ts';
import type { Mapping } from '../lib/import/mapping.ts';
import { type ImportMode, type ImportPlan, planImport } from '../lib/import/plan-import.ts';
import { readTable } from '../lib/import/read-table.ts';
import type { Cell, FileRefusal, ReadNote, Table, Watch } from '../lib/import/table.ts';
import type { Site } from '../lib/model/site.ts';

/** What a page needs of a file that was read; the rows stay with the desk. */
export type OpenedList = {
  file: string;
  sheet: string | null;
  header: string[];
  /** The first rows, to be shown beside the mapping, with their numbers. */
  firstRows: { row: number; cells: Cell[] }[];
  rowCount: number;
  notes: ReadNote[];
};
export type OpenReply = { ok: true; opened: OpenedList } | { ok: false; refusal: FileRefusal };
export type OpenChoice = { sheet?: string; delimiter?: string; headerRow?: number };
export type ImportProgress = (stage: Parameters<Watch>[0], done: number, total: number) => void;
type Progress = ImportProgress & ProxyMarked;

const SHOWN_ROWS = 20;

/**
 * What the worker's side of the door does: keeps the one list that is being imported, so that its rows need not travel
 * for each change of the mapping. Work is stopped by ending the worker; progress goes out while it runs.
 */
export function createImportDesk() {
  let table: Table | null = null;
  const opened = (): Table => {
    if (table === null) throw new Error('no list is open');
    return table;
  };
  return {
    async open(
      bytes: Uint8Array,
      file: string,
      choice: OpenChoice,
      onProgress: Remote<Progress>,
    ): Promise<OpenReply> {
      table = null;
      const reading = await watched(onProgress, (watch) => readTable(bytes, file, { ...choice, watch }));
      if (!reading.ok) return reading;
      table = reading.table;
      const { sheet, header, rows, rowNumbers, notes } = table;
      const firstRows = rows.slice(0, SHOWN_ROWS).map((cells, at) => ({ row: rowNumbers[at]!, cells }));
      return { ok: true, opened: { file, sheet, header, firstRows, rowCount: rows.length, notes } };
    },

    guess: (list: ListName): MappingGuess => guessMapping(list, opened()),

    plan: (
      site: Site,
      mapping: Mapping,
      mode: ImportMode,
      onProgress: Remote<Progress>,
    ): Promise<ImportPlan> =>
      watched(onProgress, (watch) => planImport(site, mapping.list, opened(), mapping, { mode, watch })),

    /** The open list with these rows only, for the CSV of the refused ones. */
    rowsOf(numbers: readonly number[]): Table {
      const wanted = new Set(numbers);
      const { rows, rowNumbers, ...rest } = opened();
      return {
        ...rest,
        rows: rows.filter((_, at) => wanted.has(rowNumbers[at]!)),
        rowNumbers: rowNumbers.filter((row) => wanted.has(row)),
      };
    },
  };
}

export type ImportDesk = ReturnType<typeof createImportDesk>;

async function watched<T>(onProgress: Remote<Progress>, work: (watch: Watch) => T | Promise<T>): Promise<T> {
  try {
    return await work((...progress) => {
      void onProgress(...progress);
      return undefined;
    });
  } finally {
    onProgress[releaseProxy]();
  }
}
