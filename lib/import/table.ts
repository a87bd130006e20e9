import { unguardCell } from './cell-guard.ts';

/** An error that a spreadsheet shows in a cell ("#REF!"): never a fact, never silently nothing. */
export type CellError = { error: string };

/** One cell as it was read. Dates of a spreadsheet come as ISO text. */
export type Cell = string | number | boolean | null | CellError;

/** How the bytes of a text file were understood. */
export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

/** What a person should know about how the file was read, though nothing was refused. */
export type ReadNote =
  | { note: 'encoding-guessed'; encoding: Encoding }
  | { note: 'delimiter'; delimiter: string }
  | { note: 'other-sheets'; read: string; left: string[] }
  | { note: 'hidden-sheet'; sheet: string }
  | { note: 'formulas'; count: number; firstRow: number }
  | { note: 'dates-as-utc' };

/** A list as it stood in the file: its header, its rows, and the row numbers that a spreadsheet shows beside them. */
export type Table = {
  file: string;
  sheet: string | null;
  header: string[];
  headerRow: number;
  rows: Cell[][];
  rowNumbers: number[];
  notes: ReadNote[];
};

/** Why a file was not read at all. */
export type FileRefusal =
  | { why: 'empty' }
  | { why: 'too-large'; bytes: number; limit: number }
  | { why: 'unzipped-too-large'; bytes: number; limit: number }
  | { why: 'too-many-rows'; limit: number }
  | { why: 'too-many-columns'; columns: number; limit: number }
  | { why: 'too-many-cells'; limit: number }
  | { why: 'no-such-row'; row: number }
  | { why: 'old-or-locked-spreadsheet' }
  | { why: 'not-a-spreadsheet' }
  | { why: 'damaged'; detail: string }
  | { why: 'no-such-sheet'; sheet: string; sheets: string[] }
  | { why: 'no-header' }
  | { why: 'binary' }
  | { why: 'quotes'; row: number };

export type TableReading = { ok: true; table: Table } | { ok: false; refusal: FileRefusal };

/** Refuses the whole file from deep inside a reader; readTable turns it into a refusal. */
export class FileRefused extends Error {
  constructor(readonly refusal: FileRefusal) {
    super(refusal.why);
  }
}

/** Larger than any list of one site, small enough for a phone's memory. */
export type ReadLimits = {
  fileBytes: number;
  unzippedBytes: number;
  rows: number;
  columns: number;
  cells: number;
};

export const READ_LIMITS: ReadLimits = {
  fileBytes: 64 * 1024 * 1024,
  unzippedBytes: 400 * 1024 * 1024,
  rows: 500_000,
  columns: 256,
  cells: 20_000_000,
};

export type ReadOptions = {
  limits?: ReadLimits;
  /** CSV: the delimiter, where the guess was wrong. */
  delimiter?: string;
  /** Spreadsheet: the sheet to read; the first visible one where not given. */
  sheet?: string;
  /** The row of the header, as the spreadsheet numbers it, where titles stand above; the first that is not blank if not given. */
  headerRow?: number;
  watch?: Watch;
};

/** Told how far the work is; answers 'stop' to end it. Called every few thousand rows. */
export type Watch = (
  stage: 'reading' | 'rows' | 'agreeing',
  done: number,
  total: number,
) => 'stop' | undefined;

/** Thrown when a watch said 'stop': nothing was changed. */
export class ImportStopped extends Error {
  constructor() {
    super('the import was stopped');
  }
}

/** Reports progress and throws ImportStopped when told to stop. */
export function report(watch: Watch | undefined, ...progress: Parameters<Watch>): void {
  if (watch?.(...progress) === 'stop') throw new ImportStopped();
}

/**
 * The header and the rows under it, from records that a reader cut. The header is the record of the given row, else the
 * first that is not blank; what stands above it and blank records below it are left out. Numbers stay those that a
 * spreadsheet shows.
 */
export function tableOf(
  records: readonly (readonly Cell[])[],
  numbers: readonly number[],
  { limits = READ_LIMITS, headerRow }: ReadOptions,
): Pick<Table, 'header' | 'headerRow' | 'rows' | 'rowNumbers'> {
  const first = records.findIndex((record) => !isBlankRecord(record));
  if (first < 0) throw new FileRefused({ why: 'empty' });
  const at = headerRow === undefined ? first : numbers.indexOf(headerRow);
  if (at < 0) throw new FileRefused({ why: 'no-such-row', row: headerRow! });
  const header = records[at]!.map((cell) => unguardCell(cellText(cell)).trim());
  while (header.length > 0 && header.at(-1) === '') header.pop();
  if (header.length === 0) throw new FileRefused({ why: 'no-header' });
  if (header.length > limits.columns) {
    throw new FileRefused({ why: 'too-many-columns', columns: header.length, limit: limits.columns });
  }
  const rows: Cell[][] = [];
  const rowNumbers: number[] = [];
  for (let i = at + 1; i < records.length; i++) {
    if (isBlankRecord(records[i]!)) continue;
    rows.push(records[i] as Cell[]);
    rowNumbers.push(numbers[i]!);
  }
  if (rows.length > limits.rows) throw new FileRefused({ why: 'too-many-rows', limit: limits.rows });
  return { header, headerRow: numbers[at]!, rows, rowNumbers };
}

function isBlankRecord(record: readonly Cell[]): boolean {
  return record.every((cell) => cell === null || (typeof cell === 'string' && cell.trim() === ''));
}

/** A cell as the text that a person sees. */
export function cellText(cell: Cell | undefined): string {
  if (cell === null || cell === undefined) return '';
  if (typeof cell === 'object') return cell.error;
  return String(cell);
}
