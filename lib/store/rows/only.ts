import { eq, type SQL } from 'drizzle-orm';
import type { SQLiteColumn } from 'drizzle-orm/sqlite-core';

/** The condition of a reader that may be asked for one entry: none when all are asked for. */
export function only(column: SQLiteColumn, id: string | undefined): SQL | undefined {
  return id === undefined ? undefined : eq(column, id);
}
