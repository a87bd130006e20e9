import { cameAs } from '../model/refusal.ts';
import { columnAt, type Mapping } from './mapping.ts';
import type { RowExpected, RowRefusal } from './row-refusal.ts';
import { type Cell, cellText, type Table } from './table.ts';

/** Collects the refusals of one list, each with file, row, column and what stood in the cell. */
export type RefusalBook = {
  /** `came` is for a refusal that no cell stands behind. */
  refuse(row: number, fact: string | null, expected: RowExpected, came?: unknown): void;
  has(row: number): boolean;
  /** Refuses the rows that are not refused yet because one of them was: an entry comes in whole or not at all. */
  refuseRest(what: 'run' | 'entry', id: string, rows: readonly number[]): void;
  all: readonly RowRefusal[];
};

export function refusalBook(table: Table, mapping: Mapping): RefusalBook {
  const columns = new Map(
    mapping.columns.map((use) => [use.fact, { header: use.header, at: columnAt(table, use) }]),
  );
  const indexOfRow = new Map(table.rowNumbers.map((row, index) => [row, index]));
  const all: RowRefusal[] = [];
  const rows = new Set<number>();
  const cameOf = (row: number, fact: string | null, came: unknown): unknown => {
    const column = fact === null ? undefined : columns.get(fact);
    const cell: Cell | undefined = column && table.rows[indexOfRow.get(row) ?? -1]?.[column.at];
    const text = cellText(cell);
    if (text !== '') return text;
    const constant = fact === null ? undefined : mapping.constants[fact];
    return column === undefined ? (constant ?? came) : (came ?? undefined);
  };
  const book: RefusalBook = {
    all,
    has: (row) => rows.has(row),
    refuse(row, fact, expected, came) {
      const column = fact === null ? null : (columns.get(fact)?.header ?? null);
      all.push({ file: table.file, row, column, fact, came: cameAs(cameOf(row, fact, came)), expected });
      rows.add(row);
    },
    refuseRest(what, id, ofEntry) {
      const first = ofEntry.find((row) => rows.has(row));
      if (first === undefined) return;
      for (const row of ofEntry) {
        if (!rows.has(row)) book.refuse(row, null, { is: 'whole-entry', what, id, row: first }, id);
      }
    },
  };
  return book;
}
