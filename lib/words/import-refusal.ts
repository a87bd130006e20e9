import type { RowExpected, RowRefusal } from '../import/row-refusal.ts';
import type { FileRefusal, ReadNote } from '../import/table.ts';
import type { Expected } from '../model/refusal.ts';
import { expectedWords } from './refusal.ts';

/** "stock.csv, row 12, column Location: "A-99" came, an id in locations (did you mean "A-9"?) was expected." */
export function importRefusalSentence(refusal: RowRefusal): string {
  const where = [`${refusal.file}, row ${refusal.row}`];
  if (refusal.column !== null) where.push(`column ${refusal.column}`);
  else if (refusal.fact !== null) where.push(`no column for ${refusal.fact}`);
  return `${where.join(', ')}: ${rowReason(refusal)}`;
}

/** The reason alone, for a list that shows row and column in places of their own. */
export function rowReason({ came, expected }: RowRefusal): string {
  switch (expected.is) {
    case 'column-in-file':
      return 'the file has no such column.';
    case 'no-error-cell':
      return `the spreadsheet shows the error ${came} here, a value was expected.`;
    case 'cells-for-columns':
      return `more cells than the ${expected.columns} columns of the header (${came} came behind the last one): the row is shifted, or a text with the delimiter in it lacks its quotes.`;
    case 'once-in-file':
      return `${came} stands in row ${expected.otherRow} as well, one row for each was expected.`;
    case 'same-as-row':
      return `${came} came, but row ${expected.row} says ${expected.value} of the same thing.`;
    case 'next-in-order':
      return `${came} came, ${expected.next} was expected: the numbers go 1, 2, 3 from the left without a gap.`;
    case 'place-of-its-own':
      return expected.firstRow === null
        ? `${came} is the place of another that stands there already.`
        : `${came} is the place that row ${expected.firstRow} has already.`;
    case 'order-column':
      return 'its place in the order cannot be told from its name: a number counted from the left was expected.';
    case 'bay-for-level':
      return 'a bay was expected, since the row names a level or a location.';
    case 'level-for-location':
      return 'a level was expected, since the row names a location.';
    case 'rows-for-depth':
      return `the level stands two deep, and ${expected.rear} of its rear locations ${expected.rear === 1 ? 'is' : 'are'} not in the file: where they stand when it is one deep cannot be told.`;
    case 'same-run':
      return `${came} stands in run ${expected.run}, and a location does not move to another run.`;
    case 'whole-entry':
      return `nothing is wrong in this row, but ${expected.what === 'run' ? `run ${expected.id}` : expected.id} comes in whole or not at all, and row ${expected.row} of it was refused.`;
    default:
      return `${came} came, ${rowExpectedWords(expected)} was expected.`;
  }
}

type InPlaceOf = Exclude<
  RowExpected['is'],
  | 'column-in-file'
  | 'no-error-cell'
  | 'cells-for-columns'
  | 'once-in-file'
  | 'same-as-row'
  | 'next-in-order'
  | 'place-of-its-own'
  | 'order-column'
  | 'bay-for-level'
  | 'level-for-location'
  | 'rows-for-depth'
  | 'same-run'
  | 'whole-entry'
>;

function rowExpectedWords(expected: Extract<RowExpected, { is: InPlaceOf }>): string {
  switch (expected.is) {
    case 'number-in-style':
      return `a number with ${expected.decimal === ',' ? 'a decimal comma' : 'a decimal point'}${groupWords(expected.group)}`;
    case 'yes-or-no':
      return 'yes or no';
    case 'day-month-order':
      return `a date ${DATE_WORDS[expected.order]}`;
    default:
      return expectedWords(expected satisfies Expected);
  }
}

const DATE_WORDS = {
  iso: 'such as 2026-03-02 or 2026-03-02T06:30:00Z',
  dmy: 'such as 2.3.2026 (day, month, year)',
  mdy: 'such as 3/2/2026 (month, day, year)',
} as const;

function groupWords(group: string): string {
  if (group === '') return ' and no mark between thousands';
  return ` and ${group === ' ' ? 'a blank' : group} between thousands`;
}

/** Why a file was not read at all, and what to do. */
export function fileRefusalSentence(file: string, refusal: FileRefusal): string {
  switch (refusal.why) {
    case 'empty':
      return `${file} has nothing in it.`;
    case 'too-large':
      return `${file} is ${megabytes(refusal.bytes)}; at most ${megabytes(refusal.limit)} are read. Split the list.`;
    case 'unzipped-too-large':
      return `${file} unzips to ${megabytes(refusal.bytes)} or more; at most ${megabytes(refusal.limit)} are read. Save the one sheet as CSV.`;
    case 'too-many-rows':
      return `${file} has more than ${refusal.limit} rows. Split the list.`;
    case 'too-many-columns':
      return `${file} has ${refusal.columns} columns or more; at most ${refusal.limit} are read. Leave out columns that hold no fact.`;
    case 'too-many-cells':
      return `${file} has more than ${refusal.limit} cells. Split the list.`;
    case 'no-such-row':
      return `${file} has nothing in row ${refusal.row}, where the header was said to be.`;
    case 'old-or-locked-spreadsheet':
      return `${file} is a spreadsheet of the old kind, or locked with a password. Save it unlocked as XLSX or CSV.`;
    case 'not-a-spreadsheet':
      return `${file} is a zip file but no spreadsheet with a sheet of cells.`;
    case 'damaged':
      return `${file} is damaged (${refusal.detail}). Save it again and retry.`;
    case 'no-such-sheet':
      return `${file} has no sheet ${refusal.sheet}; it has ${refusal.sheets.join(', ')}.`;
    case 'no-header':
      return `The first row of ${file} that is not blank names no column.`;
    case 'binary':
      return `${file} is neither a text nor a spreadsheet (text in UTF-16 needs a byte order mark).`;
    case 'quotes':
      return `${file}, row ${refusal.row}: a quotation mark is opened and not closed rightly. The rows behind it cannot be told apart, so nothing was read.`;
    default:
      return refusal satisfies never;
  }
}

/** What to know about how a file was read. */
export function readNoteSentence(note: ReadNote): string {
  switch (note.note) {
    case 'encoding-guessed':
      return `The text is not valid UTF-8 and was read as ${note.encoding}. Check names with accents.`;
    case 'delimiter':
      return `Columns are parted by ${DELIMITER_WORDS[note.delimiter] ?? note.delimiter}.`;
    case 'other-sheets':
      return `Sheet ${note.read} was read; not read: ${note.left.join(', ')}.`;
    case 'hidden-sheet':
      return `Sheet ${note.sheet} is hidden in the file.`;
    case 'formulas':
      return `${note.count} ${note.count === 1 ? 'cell holds a formula' : 'cells hold formulas'}, the first in row ${note.firstRow}: the values that were saved with them were read.`;
    case 'dates-as-utc':
      return 'A spreadsheet keeps no time zone: its times were read as UTC.';
    default:
      return note satisfies never;
  }
}

const DELIMITER_WORDS: Record<string, string> = { ',': 'commas', ';': 'semicolons', '\t': 'tabs' };

function megabytes(bytes: number): string {
  return `${Math.ceil(bytes / (1024 * 1024))} MB`;
}
