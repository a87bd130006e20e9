import { guardCell, unguardCell } from './cell-guard.ts';
import { csvText } from './export-lists.ts';
import { columnAt, type Mapping } from './mapping.ts';
import { DELIMITERS } from './read-csv.ts';
import type { RowRefusal } from './row-refusal.ts';
import { type Cell, cellText, type Table } from './table.ts';

/** The two columns that a list of refused rows has behind those of the file. The import passes over them. */
export const REFUSED_HEADERS = ['Refused row', 'Refused because'] as const;

/**
 * The refused rows as CSV text, as they came, each with its row number and why: to be mended and imported again with the
 * same mapping. `sentence` says a refusal in words.
 */
export function refusedRowsCsv(
  table: Table,
  mapping: Mapping,
  refused: readonly RowRefusal[],
  sentence: (refusal: RowRefusal) => string,
): string {
  const reasons = new Map<number, string[]>();
  for (const refusal of refused) {
    const known = reasons.get(refusal.row);
    if (known) known.push(sentence(refusal));
    else reasons.set(refusal.row, [sentence(refusal)]);
  }
  const commaAt = new Set(
    mapping.columns.filter((use) => use.numbers?.decimal === ',').map((use) => columnAt(table, use)),
  );
  const rows = table.rows.flatMap((cells, index) => {
    const row = table.rowNumbers[index]!;
    const why = reasons.get(row);
    if (why === undefined) return [];
    const came = table.header.map((_, at) => cellAsCame(cells[at], commaAt.has(at)));
    return [[...came, String(row), guardCell(why.join(' '))]];
  });
  // Parted as the file was, so that the person's spreadsheet opens it as it opened the file.
  const parted = table.notes.find((note) => note.note === 'delimiter')?.delimiter ?? ',';
  const delimiter = DELIMITERS.find((known) => known === parted) ?? ',';
  const header = [...table.header.map((name) => guardCell(name)), ...REFUSED_HEADERS];
  return csvText([header, ...rows], delimiter);
}

/** A number of a spreadsheet is written as the column's other numbers are, so that it is read back as it was. */
function cellAsCame(cell: Cell | undefined, decimalComma: boolean): string {
  if (typeof cell === 'number' && decimalComma) return String(cell).replace('.', ',');
  return guardCell(unguardCell(cellText(cell)));
}
