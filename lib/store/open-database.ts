import Client from 'better-sqlite3';
import { sql } from 'drizzle-orm';
import { type BetterSQLite3Database, drizzle } from 'drizzle-orm/better-sqlite3';
import { migrateDatabase } from './migrate-database.ts';

/**
 * One connection. Its calls are synchronous, so whatever is called while `db.transaction(...)` runs is part of that
 * transaction: the functions of lib/store hand the database on, not a transaction object.
 */
export type Database = BetterSQLite3Database & { $client: Client.Database };

/** How long a connection waits for another one's write before it gives up. */
export const BUSY_TIMEOUT_MS = 10_000;

/**
 * Opens a database, file or ':memory:', the same way for server, scripts and tests: waits for other writers, keeps a
 * write-ahead log, syncs each commit to the disk (docs/decisions/0001), brings the tables up to date, holds references.
 *
 * `migrations` is the folder with the committed migrations, `drizzle` of the working directory unless told.
 * Throws DatabaseRefused for a file that a newer version of the program has written, or that is not one of ours.
 */
export function openDatabase(path: string, migrations = 'drizzle'): Database {
  const client = new Client(path, { timeout: BUSY_TIMEOUT_MS });
  try {
    const db = drizzle({ client });
    client.exec(`PRAGMA busy_timeout = ${BUSY_TIMEOUT_MS}`);
    client.exec('PRAGMA foreign_keys = OFF'); // a migration may rebuild a table that others refer to
    migrateDatabase(db, path, migrations);
    client.exec('PRAGMA journal_mode = WAL');
    client.exec('PRAGMA synchronous = FULL');
    client.exec('PRAGMA foreign_keys = ON');
    return db;
  } catch (error) {
    client.close();
    throw error;
  }
}

export function closeDatabase(db: Database): void {
  db.$client.close();
}

/** Writes a whole, consistent copy of the database to a new file while others go on using it. */
export function backUpDatabase(db: Database, path: string): void {
  db.run(sql`VACUUM INTO ${path}`);
}
