import { copyFileSync, existsSync, renameSync, rmSync } from 'node:fs';
import { sql } from 'drizzle-orm';
import { syncFile, writeBackup } from './backup.ts';
import { openChangeWriter } from './change-writer.ts';
import { contentsNow } from './import-site.ts';
import { DatabaseRefused } from './migrate-database.ts';
import { closeDatabase, type Database, openDatabase } from './open-database.ts';
import { isEmpty } from './read-site.ts';
import type { Actor } from './rows/policy.ts';
import { sessions } from './tables/people.ts';
import { unavailability, writeTransaction } from './transaction.ts';

/** Why a file was not restored. Nothing was changed. */
export type RestoreRefused =
  | 'no-such-file'
  | 'not-ours'
  | 'newer-version'
  | 'damaged'
  | 'dangling-references'
  | 'present-database-damaged';

export type Restored =
  | { ok: true; revision: number; replaced: string | null }
  | { ok: false; why: RestoreRefused };

/**
 * Puts what a backup holds in the place of what the database at `path` holds, all of it or nothing. The server may run:
 * the exchange is one transaction, and whoever holds an older state of the site sees a higher revision.
 *
 * The backup is copied, the copy judged and, where it is older, brought up to date; the backup itself is never touched.
 * What the database held is written to a file beside it first. A database that is damaged cannot take a transaction: it
 * is set aside as it is and a whole file put in its place, but only when `serverIsStopped`: a server that holds it open
 * would go on with what was set aside.
 */
export function restoreBackup(
  backup: string,
  path: string,
  how: { actor: Actor; serverIsStopped: boolean; migrations?: string },
): Restored {
  if (!existsSync(backup)) return { ok: false, why: 'no-such-file' };
  const copy = `${path}.${process.pid}.incoming`;
  removeDatabase(copy);
  try {
    copyFileSync(backup, copy);
    // a database that was in use, given as it lies: its last commits are in the log beside it
    if (existsSync(`${backup}-wal`)) copyFileSync(`${backup}-wal`, `${copy}-wal`);
    const fault = judgeCopy(copy, how.migrations);
    if (fault !== null) return { ok: false, why: fault };
    const present = existsSync(path) ? openWhole(path, how.migrations) : openDatabase(path, how.migrations);
    if (present === null) return replaceDamaged(copy, path, how);
    try {
      return exchangeContents(present, copy, path, how.actor);
    } finally {
      closeDatabase(present);
    }
  } finally {
    removeDatabase(copy);
  }
}

/** Opens the copy, which brings it up to date, and looks whether it is whole. */
function judgeCopy(copy: string, migrations?: string): RestoreRefused | null {
  let db: Database;
  try {
    db = openDatabase(copy, migrations);
  } catch (error) {
    if (error instanceof DatabaseRefused) return error.reason;
    if (unavailability(error) === 'damaged') return 'damaged';
    throw error;
  }
  try {
    if (!isWhole(db)) return 'damaged';
    if (db.values(sql`PRAGMA foreign_key_check`).length > 0) return 'dangling-references';
    db.run(sql`PRAGMA wal_checkpoint(TRUNCATE)`);
    return null;
  } finally {
    closeDatabase(db);
  }
}

/** The database, or null when it is damaged. Throws for one that is not ours or newer. */
function openWhole(path: string, migrations?: string): Database | null {
  let db: Database | null = null;
  try {
    db = openDatabase(path, migrations);
    if (isWhole(db)) return db;
  } catch (error) {
    if (unavailability(error) !== 'damaged') throw error;
  }
  if (db !== null) closeDatabase(db);
  return null;
}

function isWhole(db: Database): boolean {
  try {
    return db.values<[string]>(sql`PRAGMA integrity_check`)[0]?.[0] === 'ok';
  } catch (error) {
    if (unavailability(error) === 'damaged') return false;
    throw error;
  }
}

function exchangeContents(db: Database, copy: string, path: string, actor: Actor): Restored {
  const hadSite = !isEmpty(db);
  const replaced = hadSite ? `${path}.replaced-${stampOf(actor.at)}` : null;
  if (replaced !== null) writeBackup(db, replaced, { overwrite: false });
  db.run(sql`ATTACH ${copy} AS incoming`);
  try {
    const revision = writeTransaction(db, () => {
      db.run(sql`PRAGMA defer_foreign_keys = ON`);
      const before = contentsNow(db);
      const last = lastRevision(db);
      const tables = tablesOf(db);
      // all are emptied first: a parent that goes takes its parts with it
      for (const table of tables) db.run(sql`DELETE FROM main.${sql.identifier(table)}`);
      for (const table of tables) copyTable(db, table);
      db.delete(sessions).run(); // one that was ended after the backup must not come back: everybody signs in again
      // no revision is given out twice, so that nobody takes an older state for this one
      db.run(sql`UPDATE site SET revision = max(revision, ${last})`);
      const after = contentsNow(db);
      const subject = String(after?.name ?? 'no site');
      const log = openChangeWriter(db, actor);
      return log.record({ kind: 'restore', noun: 'site', subject, before, after, wholeSite: true });
    });
    return { ok: true, revision, replaced };
  } finally {
    db.run(sql`DETACH incoming`);
  }
}

function replaceDamaged(
  copy: string,
  path: string,
  { actor, serverIsStopped, migrations }: Parameters<typeof restoreBackup>[2],
): Restored {
  if (!serverIsStopped) return { ok: false, why: 'present-database-damaged' };
  const replaced = `${path}.replaced-${stampOf(actor.at)}`;
  for (const ending of ['', '-wal', '-shm']) {
    if (existsSync(path + ending)) renameSync(path + ending, replaced + ending);
  }
  syncFile(copy);
  renameSync(copy, path);
  const db = openDatabase(path, migrations);
  try {
    const contents = contentsNow(db);
    const change = { kind: 'restore', noun: 'site', before: null, after: contents, wholeSite: true } as const;
    const subject = String(contents?.name ?? 'no site');
    const revision = writeTransaction(db, () => openChangeWriter(db, actor).record({ ...change, subject }));
    return { ok: true, revision, replaced };
  } finally {
    closeDatabase(db);
  }
}

function tablesOf(db: Database): string[] {
  return db
    .values<[string]>(
      sql`SELECT name FROM main.sqlite_schema WHERE type = 'table'
        AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\' AND name <> '__drizzle_migrations'`,
    )
    .flat();
}

/** Both are of the same version, so that the columns are the same; named, since their order may not be. */
function copyTable(db: Database, table: string): void {
  const name = sql.identifier(table);
  const columns = db
    .values<[string]>(sql`SELECT name FROM pragma_table_info(${table}) ORDER BY cid`)
    .map(([column]) => sql.identifier(column));
  const list = sql.join(columns, sql`, `);
  db.run(sql`INSERT INTO main.${name} (${list}) SELECT ${list} FROM incoming.${name}`);
}

function lastRevision(db: Database): number {
  const rows = db.values<[number]>(
    sql`SELECT max(coalesce((SELECT max(id) FROM changes), 0), coalesce((SELECT revision FROM site), 0))`,
  );
  return rows[0]![0];
}

function removeDatabase(path: string): void {
  for (const ending of ['', '-wal', '-shm']) rmSync(path + ending, { force: true });
}

/** 2026-03-02T06:30:00.000Z as part of a file's name on any system. */
function stampOf(at: string): string {
  return at.replace(/\.\d+/, '').replaceAll(':', '');
}
