import Papa from 'papaparse';
import { decodeText } from './decode-text.ts';
import {
  FileRefused,
  READ_LIMITS,
  type ReadNote,
  type ReadOptions,
  report,
  type Table,
  tableOf,
} from './table.ts';

/** Blank lines that may stand between the rows of a list that is as long as the limit allows. */
const BLANK_LINES = 1000;

/** The delimiters that are guessed among. */
export const DELIMITERS = [',', ';', '\t'] as const;

/**
 * Reads a delimited text file. Row numbers count records, as a spreadsheet does that opened the file: a line break
 * inside quotes starts no row, a blank line takes one. A first line "sep=;" names the delimiter and takes no row.
 */
export function readCsv(bytes: Uint8Array, file: string, options: ReadOptions = {}): Table {
  const limits = options.limits ?? READ_LIMITS;
  const { text: whole, encoding, guessed } = decodeText(bytes);
  const stated = /^sep=(.)\r?\n/i.exec(whole);
  const text = stated ? whole.slice(stated[0].length) : whole;
  const delimiter = options.delimiter ?? stated?.[1] ?? guessDelimiter(text);
  report(options.watch, 'reading', 0, text.length);
  const parsed = Papa.parse<string[]>(text, { delimiter, header: false, preview: limits.rows + BLANK_LINES });
  report(options.watch, 'reading', text.length, text.length);
  if (parsed.meta.truncated) throw new FileRefused({ why: 'too-many-rows', limit: limits.rows });
  // A quote that is opened and not closed swallows the rows behind it: what is then missing cannot be told.
  const torn = parsed.errors.find((error) => error.type === 'Quotes');
  if (torn !== undefined) throw new FileRefused({ why: 'quotes', row: (torn.row ?? 0) + 1 });
  const numbers = parsed.data.map((_, at) => at + 1);
  const notes: ReadNote[] = [{ note: 'delimiter', delimiter }];
  if (guessed) notes.push({ note: 'encoding-guessed', encoding });
  return { file, sheet: null, ...tableOf(parsed.data, numbers, options), notes };
}

/**
 * Which of comma, semicolon and tab cuts the text into a table? The one under which the most of the first records have
 * the same number of fields, two at least (titles above the header have fewer); among equals the one that gives the most
 * fields. A text of one column: comma.
 */
export function guessDelimiter(text: string): string {
  let best: { delimiter: string; agreeing: number; fields: number } | null = null;
  for (const delimiter of DELIMITERS) {
    const records = Papa.parse<string[]>(text, { delimiter, preview: 30, skipEmptyLines: 'greedy' }).data;
    const withFields = new Map<number, number>();
    for (const { length } of records)
      if (length > 1) withFields.set(length, (withFields.get(length) ?? 0) + 1);
    for (const [fields, agreeing] of withFields) {
      const better =
        best === null || agreeing > best.agreeing || (agreeing === best.agreeing && fields > best.fields);
      if (better) best = { delimiter, agreeing, fields };
    }
  }
  return best?.delimiter ?? ',';
}
