import { cutHeader } from '@/lib/import/guess-column.ts';
import { guessNumberStyle } from '@/lib/import/guess-numbers.ts';
import { factOf } from '@/lib/import/lists.ts';
import { type ColumnUse, columnAt, headerSignature, type Mapping } from '@/lib/import/mapping.ts';
import { unitFits } from '@/lib/import/read-number.ts';
import { guessTimeStyle } from '@/lib/import/read-time.ts';
import { type Cell, cellText } from '@/lib/import/table.ts';

/** Where a fact of the list comes from. */
export type Source =
  | { from: 'nothing' }
  | { from: 'column'; use: ColumnUse }
  | { from: 'constant'; text: string };

/** The open file as far as a person sees it: enough to read a column that they choose. */
export type SeenColumns = { header: readonly string[]; firstRows: readonly { cells: readonly Cell[] }[] };

export function sourceOf(mapping: Mapping, fact: string): Source {
  const use = mapping.columns.find((column) => column.fact === fact);
  if (use !== undefined) return { from: 'column', use };
  const text = mapping.constants[fact];
  return text === undefined ? { from: 'nothing' } : { from: 'constant', text };
}

/** The fact comes from nowhere: it stays as it is where an entry stands already. */
export function giveNothing(mapping: Mapping, fact: string): Mapping {
  const { [fact]: _, ...constants } = mapping.constants;
  return { ...mapping, constants, columns: mapping.columns.filter((column) => column.fact !== fact) };
}

/** The fact is the same for every row. */
export function giveConstant(mapping: Mapping, fact: string, text: string): Mapping {
  const without = giveNothing(mapping, fact);
  return { ...without, constants: { ...without.constants, [fact]: text } };
}

/** The fact comes from the column at a place; its unit by the header, its way of writing by the first rows. */
export function giveColumn(mapping: Mapping, fact: string, at: number, seen: SeenColumns): Mapping {
  const header = seen.header[at]!;
  const nth = seen.header.slice(0, at).filter((name) => name === header).length;
  const texts = seen.firstRows
    .map(({ cells }) => cells[at])
    .filter((cell) => typeof cell === 'string' && cell.trim() !== '')
    .map(cellText);
  const { kind } = factOf(mapping.list, fact);
  const use: ColumnUse = { header, nth, fact };
  if (kind === 'length' || kind === 'surveyed' || kind === 'mass') {
    const stated = cutHeader(header).unit;
    const asked = kind === 'mass' ? 'mass' : 'length';
    use.unit = stated !== null && unitFits(stated, asked) ? stated : kind === 'mass' ? 'kg' : 'mm';
  }
  if (use.unit !== undefined || kind === 'number')
    use.numbers = guessNumberStyle(texts, leanOf(mapping)).style;
  if (kind === 'time') use.times = guessTimeStyle(texts).style;
  const without = giveNothing(mapping, fact);
  return { ...without, columns: [...without.columns, use] };
}

/** The column of a fact read otherwise: another unit, decimal sign, order of day and month, or words. */
export function changeUse(mapping: Mapping, fact: string, change: Partial<ColumnUse>): Mapping {
  const columns = mapping.columns.map((use) => (use.fact === fact ? { ...use, ...change } : use));
  return { ...mapping, columns };
}

/** A mapping kept under a header, bound to the same header in another spelling of case, blanks and underscores. */
export function boundTo(mapping: Mapping, header: readonly string[]): Mapping {
  const table = { header: [...header] };
  const columns = mapping.columns.map((use) => {
    if (columnAt(table, use) >= 0) return use;
    const at = header.findIndex((name) => headerSignature([name]) === headerSignature([use.header]));
    return at < 0 ? use : { ...use, header: header[at]!, nth: 0 };
  });
  return { ...mapping, columns };
}

/** Columns of the file from which no fact comes. */
export function unusedColumns(mapping: Mapping, header: readonly string[]): string[] {
  const used = new Set(mapping.columns.map((use) => columnAt({ header: [...header] }, use)));
  return header.filter((name, at) => name !== '' && !used.has(at));
}

/** The decimal mark of the columns that are read already. */
function leanOf(mapping: Mapping): '.' | ',' {
  return mapping.columns.some(({ numbers }) => numbers?.decimal === ',') ? ',' : '.';
}
