import type { Expected } from '../model/refusal.ts';

/** What a cell or row should have been: what the model expects of the fact, or what only a list can get wrong. */
export type RowExpected =
  | Expected
  | { is: 'number-in-style'; decimal: string; group: string }
  | { is: 'yes-or-no' }
  | { is: 'day-month-order'; order: 'iso' | 'dmy' | 'mdy' }
  | { is: 'no-error-cell' }
  | { is: 'column-in-file' }
  | { is: 'cells-for-columns'; columns: number }
  | { is: 'once-in-file'; otherRow: number }
  | { is: 'same-as-row'; row: number; value: string }
  | { is: 'next-in-order'; next: number }
  | { is: 'place-of-its-own'; firstRow: number | null }
  | { is: 'order-column' }
  | { is: 'bay-for-level' }
  | { is: 'level-for-location' }
  | { is: 'rows-for-depth'; rear: number }
  | { is: 'same-run'; run: string }
  | { is: 'whole-entry'; what: 'run' | 'entry'; id: string; row: number };

/** A row that was not taken in: where, what came and what was expected. */
export type RowRefusal = {
  file: string;
  /** As the spreadsheet numbers it; 0 for the list as a whole. */
  row: number;
  /** The header of the column; null where the fact came from a constant, from no column, or the whole row is at fault. */
  column: string | null;
  fact: string | null;
  came: string;
  expected: RowExpected;
};
