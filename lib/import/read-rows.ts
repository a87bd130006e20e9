import { factOf } from './lists.ts';
import { columnAt, type Mapping } from './mapping.ts';
import { type CellReading, cellReader, type FactValue } from './read-cell.ts';
import type { RefusalBook } from './refusal-book.ts';
import { cellText, report, type Table, type Watch } from './table.ts';

/**
 * The facts of one row. A fact that no column and no constant gives is absent; a null one is stated as not known.
 * A row that is refused keeps what could be read of it, so that the entry it belongs to can be told.
 */
export type RowFacts = { row: number; facts: Map<string, FactValue> };

const ROWS_BETWEEN_REPORTS = 5000;

/** The rows of a table as facts by its mapping; each cell that cannot be read goes into the book. */
export function readRows(table: Table, mapping: Mapping, book: RefusalBook, watch?: Watch): RowFacts[] {
  const columns = mapping.columns.map((use) => {
    const fact = factOf(mapping.list, use.fact);
    return { at: columnAt(table, use), fact: use.fact, read: cellReader(fact, use, mapping) };
  });
  const constants: [string, CellReading][] = Object.entries(mapping.constants).map(([fact, text]) => [
    fact,
    cellReader(factOf(mapping.list, fact), {}, mapping)(text),
  ]);
  const width = table.header.length;
  const rows = table.rows.map((cells, index): RowFacts => {
    if (index % ROWS_BETWEEN_REPORTS === 0) report(watch, 'rows', index, table.rows.length);
    const row = table.rowNumbers[index]!;
    if (cells.length > width && cells.slice(width).some((cell) => cellText(cell).trim() !== '')) {
      const came = cells.slice(width).map(cellText).join(' ').trim();
      book.refuse(row, null, { is: 'cells-for-columns', columns: width }, came);
    }
    const facts = new Map<string, FactValue>();
    for (const { at, fact, read } of columns) {
      const cell = read(cells[at]);
      if (cell.ok) facts.set(fact, cell.value);
      else book.refuse(row, fact, cell.expected);
    }
    for (const [fact, constant] of constants) {
      if (constant.ok) facts.set(fact, constant.value);
      else book.refuse(row, fact, constant.expected);
    }
    return { row, facts };
  });
  report(watch, 'rows', table.rows.length, table.rows.length);
  return rows;
}
