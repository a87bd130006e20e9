import type { SQLiteInsertValue, SQLiteTable } from 'drizzle-orm/sqlite-core';
import type { Connection } from '../open-database.ts';

/** Few enough for SQLite's 32 766 variables a statement with the widest table (23 columns), enough to be quick. */
const ROWS_PER_STATEMENT = 400;

/** Inserts many rows with few statements. No rows: nothing happens. */
export function insertAll<T extends SQLiteTable>(
  db: Connection,
  table: T,
  rows: readonly SQLiteInsertValue<T>[],
): void {
  for (let from = 0; from < rows.length; from += ROWS_PER_STATEMENT) {
    db.insert(table)
      .values(rows.slice(from, from + ROWS_PER_STATEMENT))
      .run();
  }
}
