import { factOf } from './lists.ts';
import { columnAt, type Mapping } from './mapping.ts';
import { type CellReading, cellReader, type FactValue } from './read-cell.ts';
import type { RefusalBook } from './refusal-book.ts';
import { type Cell, cellText, report, type Table, type Watch } from './table.ts';

/**
 * The facts of one row. A fact that no column and no constant gives is undefined; a null one is stated as not known.
 * A row that is refused keeps what could be read of it, so that the entry it belongs to can be told.
 * The names stand once for the whole table, not in each row: a list may have hundreds of thousands.
 */
export class RowFacts {
  constructor(
    readonly row: number,
    private readonly places: ReadonlyMap<string, number>,
    private readonly values: readonly (FactValue | undefined)[],
  ) {}

  get(fact: string): FactValue | undefined {
    const at = this.places.get(fact);
    return at === undefined ? undefined : this.values[at];
  }
}

const ROWS_BETWEEN_REPORTS = 5000;

/** The rows of a table as facts by its mapping; each cell that cannot be read goes into the book. */
export function readRows(table: Table, mapping: Mapping, book: RefusalBook, watch?: Watch): RowFacts[] {
  const columns = mapping.columns.map((use) => {
    const read = cellReader(factOf(mapping.list, use.fact), use, mapping);
    return { at: columnAt(table, use), fact: use.fact, read: rememberingLast(read) };
  });
  const constants = Object.entries(mapping.constants).map(([fact, text]) => ({
    fact,
    reading: cellReader(factOf(mapping.list, fact), {}, mapping)(text),
  }));
  const places = new Map([...columns, ...constants].map(({ fact }, at) => [fact, at]));
  const width = table.header.length;
  const rows = table.rows.map((cells, index) => {
    if (index % ROWS_BETWEEN_REPORTS === 0) report(watch, 'rows', index, table.rows.length);
    const row = table.rowNumbers[index]!;
    if (cells.length > width && cells.slice(width).some((cell) => cellText(cell).trim() !== '')) {
      const came = cells.slice(width).map(cellText).join(' ').trim();
      book.refuse(row, null, { is: 'cells-for-columns', columns: width }, came);
    }
    const values: (FactValue | undefined)[] = [];
    const take = (fact: string, reading: CellReading) => {
      values.push(reading.ok ? reading.value : undefined);
      if (!reading.ok) book.refuse(row, fact, reading.expected);
    };
    for (const { at, fact, read } of columns) take(fact, read(cells[at]));
    for (const { fact, reading } of constants) take(fact, reading);
    return new RowFacts(row, places, values);
  });
  report(watch, 'rows', table.rows.length, table.rows.length);
  return rows;
}

/** Most columns of a list say the same in one row as in the row above. */
function rememberingLast(
  read: (cell: Cell | undefined) => CellReading,
): (cell: Cell | undefined) => CellReading {
  let last: Cell | undefined;
  let reading = read(undefined);
  return (cell) => {
    if (cell !== last) {
      last = cell;
      reading = read(cell);
    }
    return reading;
  };
}
