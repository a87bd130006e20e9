import { sql } from 'drizzle-orm';
import { readMigrationFiles } from 'drizzle-orm/migrator';
import type { Database } from './open-database.ts';

/** A database file that this version must not touch. Nothing has been changed in it. */
export class DatabaseRefused extends Error {
  readonly reason: 'newer-version' | 'not-ours';
  readonly path: string;

  constructor(reason: 'newer-version' | 'not-ours', path: string) {
    super(
      reason === 'newer-version'
        ? `The database ${path} was written by a newer version of Tinewise. Start that version, or give another data folder.`
        : `The file ${path} is not a Tinewise database. Give another data folder, or move the file away.`,
    );
    this.name = 'DatabaseRefused';
    this.reason = reason;
    this.path = path;
  }
}

/**
 * Brings the tables up to date. All missing migrations go in as one transaction that takes the write lock before it
 * looks, so that two processes that open a new file at once do not both make the tables.
 *
 * Keeps drizzle's own record (`__drizzle_migrations`: hash and time of each migration applied).
 */
export function migrateDatabase(db: Database, path: string, folder: string): void {
  const known = readMigrationFiles({ migrationsFolder: folder });
  if (missing(db, path, known).length === 0) return;
  db.transaction(
    (tx) => {
      const toDo = missing(db, path, known);
      tx.run(sql`CREATE TABLE IF NOT EXISTS __drizzle_migrations
        (id INTEGER PRIMARY KEY AUTOINCREMENT, hash TEXT NOT NULL, created_at NUMERIC)`);
      for (const migration of toDo) {
        for (const statement of migration.sql) tx.run(sql.raw(statement));
        tx.run(sql`INSERT INTO __drizzle_migrations (hash, created_at)
          VALUES (${migration.hash}, ${migration.folderMillis})`);
      }
      const dangling = tx.values(sql`PRAGMA foreign_key_check`);
      if (dangling.length > 0) throw new Error(`the migration leaves ${dangling.length} dangling references`);
    },
    { behavior: 'immediate' },
  );
}

type Migration = ReturnType<typeof readMigrationFiles>[number];

function missing(db: Database, path: string, known: readonly Migration[]): Migration[] {
  const tables = db.values<[string]>(sql`SELECT name FROM sqlite_schema WHERE type = 'table'`).flat();
  if (!tables.includes('__drizzle_migrations')) {
    if (tables.length > 0) throw new DatabaseRefused('not-ours', path);
    return [...known];
  }
  const applied = new Set(db.values<[string]>(sql`SELECT hash FROM __drizzle_migrations`).flat());
  const toDo = known.filter((migration) => !applied.has(migration.hash));
  if (toDo.length + applied.size > known.length) throw new DatabaseRefused('newer-version', path);
  return toDo;
}
