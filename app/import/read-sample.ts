import type { SeenColumns } from '@/app/import/edit-mapping.ts';
import { valueWords } from '@/app/import/list-words.ts';
import { factOf } from '@/lib/import/lists.ts';
import { type ColumnUse, columnAt, type Mapping } from '@/lib/import/mapping.ts';
import { cellReader } from '@/lib/import/read-cell.ts';
import { type Cell, cellText } from '@/lib/import/table.ts';
import { rowReason } from '@/lib/words/import-refusal.ts';

/** A cell as it came and as it is read, or why it is not. */
export type Sample = { came: string; ok: true; read: string } | { came: string; ok: false; fault: string };

/** The first few different cells of a column, each read as the mapping says. */
export function readSamples(mapping: Mapping, use: ColumnUse, seen: SeenColumns, most = 3): Sample[] {
  const at = columnAt({ header: [...seen.header] }, use);
  if (at < 0) return [{ came: '', ok: false, fault: 'the file has no such column.' }];
  const read = cellReader(factOf(mapping.list, use.fact), use, mapping);
  const cells = new Map<string, Cell | undefined>();
  for (const row of seen.firstRows) cells.set(cellText(row.cells[at]).trim(), row.cells[at]);
  const samples = [...cells.values()].map((cell) => sampleOf(mapping, use.fact, cell, read(cell)));
  // A fault comes first: it is what wants mending.
  return [...samples.filter(({ ok }) => !ok), ...samples.filter(({ ok }) => ok)].slice(0, most);
}

/** The same for a value that every row has; null while nothing is typed. */
export function readConstant(mapping: Mapping, fact: string, text: string): Sample | null {
  if (text.trim() === '') return null;
  return sampleOf(mapping, fact, text, cellReader(factOf(mapping.list, fact), {}, mapping)(text));
}

function sampleOf(
  mapping: Mapping,
  fact: string,
  cell: Cell | undefined,
  reading: ReturnType<ReturnType<typeof cellReader>>,
): Sample {
  const came = cellText(cell);
  if (reading.ok) return { came, ok: true, read: valueWords(mapping.list, fact, reading.value) };
  const { expected } = reading;
  const refusal = { file: '', row: 0, column: null, fact, came: `"${came}"`, expected };
  return { came, ok: false, fault: rowReason(refusal) };
}
