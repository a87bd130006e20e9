import { describe, expect, it } from 'vitest';
import type { RowExpected } from '../../lib/import/row-refusal.ts';
import type { FileRefusal, ReadNote } from '../../lib/import/table.ts';
import {
  fileRefusalSentence,
  importRefusalSentence,
  readNoteSentence,
} from '../../lib/words/import-refusal.ts';

const said = (expected: RowExpected, column: string | null = 'Level', fact: string | null = 'level') =>
  importRefusalSentence({ file: 'racks.csv', row: 12, column, fact, came: '"x"', expected });

describe('why a row was refused', () => {
  it.each<[RowExpected, string]>([
    [{ is: 'present' }, '"x" came, a value (this fact may not be left out) was expected.'],
    [
      { is: 'number-in-style', decimal: ',', group: ' ' },
      '"x" came, a number with a decimal comma and a blank between thousands was expected.',
    ],
    [{ is: 'yes-or-no' }, '"x" came, yes or no was expected.'],
    [
      { is: 'day-month-order', order: 'dmy' },
      '"x" came, a date such as 2.3.2026 (day, month, year) was expected.',
    ],
    [{ is: 'no-error-cell' }, 'the spreadsheet shows the error "x" here, a value was expected.'],
    [{ is: 'column-in-file' }, 'the file has no such column.'],
    [{ is: 'once-in-file', otherRow: 3 }, '"x" stands in row 3 as well, one row for each was expected.'],
    [{ is: 'same-as-row', row: 3, value: '1500' }, '"x" came, but row 3 says 1500 of the same thing.'],
    [
      { is: 'next-in-order', next: 3 },
      '"x" came, 3 was expected: the numbers go 1, 2, 3 from the left without a gap.',
    ],
    [{ is: 'place-of-its-own', firstRow: 3 }, '"x" is the place that row 3 has already.'],
    [{ is: 'place-of-its-own', firstRow: null }, '"x" is the place of another that stands there already.'],
    [
      { is: 'order-column' },
      'its place in the order cannot be told from its name: a number counted from the left was expected.',
    ],
    [{ is: 'bay-for-level' }, 'a bay was expected, since the row names a level or a location.'],
    [{ is: 'level-for-location' }, 'a level was expected, since the row names a location.'],
    [
      { is: 'rows-for-depth', rear: 1 },
      'the level stands two deep, and 1 of its rear locations is not in the file: where they stand when it is one deep cannot be told.',
    ],
    [{ is: 'same-run', run: 'A' }, '"x" stands in run A, and a location does not move to another run.'],
    [
      { is: 'whole-entry', what: 'run', id: 'A', row: 7 },
      'nothing is wrong in this row, but run A comes in whole or not at all, and row 7 of it was refused.',
    ],
    [
      { is: 'whole-entry', what: 'entry', id: 'drums', row: 7 },
      'nothing is wrong in this row, but drums comes in whole or not at all, and row 7 of it was refused.',
    ],
  ])('%o', (expected, sentence) => {
    expect(said(expected)).toBe(`racks.csv, row 12, column Level: ${sentence}`);
  });

  it('a cell too many is said of the row, a fact without a column of the fact', () => {
    expect(said({ is: 'cells-for-columns', columns: 4 }, null, null)).toMatch(
      /^racks\.csv, row 12: more cells than the 4 columns/,
    );
    expect(said({ is: 'present' }, null, 'aisle')).toMatch(/^racks\.csv, row 12, no column for aisle: /);
  });
});

describe('why a file was refused', () => {
  it.each<[FileRefusal, RegExp]>([
    [{ why: 'empty' }, /has nothing in it/],
    [{ why: 'too-large', bytes: 70 * 1024 * 1024, limit: 64 * 1024 * 1024 }, /is 70 MB; at most 64 MB/],
    [
      { why: 'unzipped-too-large', bytes: 500 * 1024 * 1024, limit: 400 * 1024 * 1024 },
      /unzips to 500 MB or more; at most 400 MB/,
    ],
    [{ why: 'too-many-rows', limit: 10 }, /more than 10 rows/],
    [{ why: 'too-many-columns', columns: 300, limit: 256 }, /300 columns or more; at most 256/],
    [{ why: 'too-many-cells', limit: 9 }, /more than 9 cells/],
    [{ why: 'no-such-row', row: 7 }, /nothing in row 7/],
    [{ why: 'old-or-locked-spreadsheet' }, /locked with a password/],
    [{ why: 'not-a-spreadsheet' }, /no spreadsheet/],
    [{ why: 'damaged', detail: 'bad' }, /damaged \(bad\)/],
    [{ why: 'no-such-sheet', sheet: 'A', sheets: ['B', 'C'] }, /no sheet A; it has B, C/],
    [{ why: 'no-header' }, /names no column/],
    [{ why: 'binary' }, /neither a text nor a spreadsheet/],
    [{ why: 'quotes', row: 9 }, /row 9: a quotation mark/],
  ])('%o', (refusal, sentence) => {
    expect(fileRefusalSentence('a.csv', refusal)).toMatch(sentence);
    expect(fileRefusalSentence('a.csv', refusal)).toContain('a.csv');
  });
});

describe('what to know of how a file was read', () => {
  it.each<[ReadNote, RegExp]>([
    [{ note: 'encoding-guessed', encoding: 'windows-1252' }, /read as windows-1252/],
    [{ note: 'delimiter', delimiter: ';' }, /parted by semicolons/],
    [{ note: 'other-sheets', read: 'A', left: ['B'] }, /Sheet A was read; not read: B/],
    [{ note: 'hidden-sheet', sheet: 'A' }, /Sheet A is hidden/],
    [{ note: 'formulas', count: 1, firstRow: 4 }, /1 cell holds a formula, the first in row 4/],
    [{ note: 'formulas', count: 2, firstRow: 4 }, /2 cells hold formulas/],
    [{ note: 'dates-as-utc' }, /read as UTC/],
  ])('%o', (note, sentence) => {
    expect(readNoteSentence(note)).toMatch(sentence);
  });
});
