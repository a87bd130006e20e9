import { getTableColumns, getTableName } from 'drizzle-orm';
import type { SQLiteColumn, SQLiteInsertValue, SQLiteTable } from 'drizzle-orm/sqlite-core';
import type { Database } from '../open-database.ts';

/**
 * Inserts many rows with one prepared statement, straight on the driver: building the statement anew for every few rows
 * costs more than SQLite does. Column names and conversions are still those of the drizzle table.
 */
export function insertAll<T extends SQLiteTable>(
  db: Database,
  table: T,
  rows: readonly SQLiteInsertValue<T>[],
): void {
  if (rows.length === 0) return;
  const columns = Object.entries<SQLiteColumn>(getTableColumns(table));
  const names = columns.map(([, column]) => quoted(column.name));
  const marks = columns.map(() => '?');
  const statement = db.$client.prepare(
    `INSERT INTO ${quoted(getTableName(table))} (${names.join(', ')}) VALUES (${marks.join(', ')})`,
  );
  for (const row of rows as readonly Record<string, unknown>[]) {
    statement.run(columns.map(([key, column]) => toDriver(column, row[key])));
  }
}

/** SQLite would cut a text at a NUL and change half a character; lib/model lets neither in, so here it is a bug. */
function toDriver(column: SQLiteColumn, value: unknown): unknown {
  if (typeof value === 'string' && (value.includes('\0') || !value.isWellFormed())) {
    throw new Error(`${column.name} cannot keep the text ${JSON.stringify(value)}`);
  }
  return value === null || value === undefined ? null : column.mapToDriverValue(value);
}

function quoted(name: string): string {
  return `"${name.replaceAll('"', '""')}"`;
}
