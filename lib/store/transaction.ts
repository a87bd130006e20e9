import type { Unavailable } from '../model/change.ts';
import type { Database } from './open-database.ts';

/** The database could not be written or read, through no fault of what was asked. Nothing of it was kept. */
export class StoreUnavailable extends Error {
  readonly reason: Unavailable;

  constructor(reason: Unavailable, cause: unknown) {
    super(`the database is not available: ${reason}`, { cause });
    this.name = 'StoreUnavailable';
    this.reason = reason;
  }
}

/**
 * Runs `work` as one transaction that takes the write lock first: all of it or nothing. Within another one it is part
 * of that. Throws StoreUnavailable when the disk is full or the lock cannot be had; whatever else `work` throws passes.
 */
export function writeTransaction<T>(db: Database, work: () => T): T {
  return transaction(db, 'BEGIN IMMEDIATE', work);
}

/** Runs `work` on one state of the database, whatever others write meanwhile. */
export function readTransaction<T>(db: Database, work: () => T): T {
  return transaction(db, 'BEGIN', work);
}

/*
 * Not drizzle's transaction: SQLite may roll back by itself (a full disk), and the driver's ROLLBACK then fails with an
 * error that hides the reason.
 */
function transaction<T>(db: Database, begin: string, work: () => T): T {
  const client = db.$client;
  if (client.inTransaction) return work();
  try {
    client.exec(begin);
    const result = work();
    client.exec('COMMIT');
    return result;
  } catch (error) {
    if (client.inTransaction) client.exec('ROLLBACK');
    const reason = unavailability(error);
    throw reason === null ? error : new StoreUnavailable(reason, error);
  }
}

const REASONS: readonly [prefix: string, reason: Unavailable][] = [
  ['SQLITE_FULL', 'disk-full'],
  ['SQLITE_BUSY', 'locked'],
  ['SQLITE_LOCKED', 'locked'],
  ['SQLITE_READONLY', 'read-only'],
  ['SQLITE_CORRUPT', 'damaged'],
  ['SQLITE_NOTADB', 'damaged'],
  ['SQLITE_IOERR', 'disk-fault'],
  ['SQLITE_CANTOPEN', 'disk-fault'],
];

/** The reason in an error of the driver, or in one that drizzle has wrapped it in; null for an error of another kind. */
export function unavailability(error: unknown): Unavailable | null {
  for (let inner = error; inner instanceof Error; inner = inner.cause) {
    if (inner instanceof StoreUnavailable) return inner.reason;
    const code = 'code' in inner ? String(inner.code) : '';
    const found = REASONS.find(([prefix]) => code.startsWith(prefix));
    if (found) return found[1];
  }
  return null;
}
