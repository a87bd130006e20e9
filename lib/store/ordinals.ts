import { getTableName, sql } from 'drizzle-orm';
import type { SQLiteColumn, SQLiteTable } from 'drizzle-orm/sqlite-core';
import type { Database } from './open-database.ts';

/** The place after the last of a table's list. */
export function nextOrdinal(db: Database, table: SQLiteTable): number {
  const name = sql.identifier(getTableName(table));
  return db.values<[number]>(sql`SELECT coalesce(max(ordinal) + 1, 0) FROM ${name}`)[0]![0];
}

/** Where an entry may stand that wants this place: there when it is free, else at the end. */
export function freeOrdinal(db: Database, table: SQLiteTable, wanted: number | null): number {
  const name = sql.identifier(getTableName(table));
  if (wanted === null || db.values(sql`SELECT 1 FROM ${name} WHERE ordinal = ${wanted}`).length > 0)
    return nextOrdinal(db, table);
  return wanted;
}

/** The key of the entry that stands behind a place; null at the end of the list. */
export function keyBehind(db: Database, key: SQLiteColumn, ordinal: number): string | null {
  const rows = db.values<[string]>(
    sql`SELECT ${sql.identifier(key.name)} FROM ${sql.identifier(getTableName(key.table))}
      WHERE ordinal > ${ordinal} ORDER BY ordinal LIMIT 1`,
  );
  return rows[0]?.[0] ?? null;
}
