import { desc, eq, lt, sql } from 'drizzle-orm';
import type { Database } from './open-database.ts';
import type { Actor } from './rows/policy.ts';
import { type CHANGE_KINDS, type CHANGE_NOUNS, changes } from './tables/change-log.ts';
import { siteTable } from './tables/site.ts';

export type ChangeKind = (typeof CHANGE_KINDS)[number];
export type ChangeNoun = (typeof CHANGE_NOUNS)[number];

export type Change = {
  id: number;
  at: string;
  who: string;
  kind: ChangeKind;
  noun: ChangeNoun;
  subject: string;
  /** What stood there, as data; null where nothing did. */
  before: unknown;
  /** What stands there now, as data; null where nothing does. */
  after: unknown;
};

/** Writes down one change and raises the revision. Belongs in the transaction that makes the change. */
export function recordChange(db: Database, actor: Actor, change: Omit<Change, 'id' | 'at' | 'who'>): number {
  const { kind, noun, subject, before, after } = change;
  db.insert(changes)
    .values({ ...actor, kind, noun, subject, before: jsonOrNull(before), after: jsonOrNull(after) })
    .run();
  db.update(siteTable)
    .set({ revision: sql`${siteTable.revision} + 1` })
    .run();
  return db.select({ revision: siteTable.revision }).from(siteTable).where(eq(siteTable.only, 1)).get()!
    .revision;
}

/** The newest changes first, at most `limit`, older than the change `before` where it is given. */
export function readChanges(db: Database, page: { limit: number; before?: number }): Change[] {
  const older = page.before === undefined ? undefined : lt(changes.id, page.before);
  const rows = db.select().from(changes).where(older).orderBy(desc(changes.id)).limit(page.limit).all();
  return rows.map((row) => ({ ...row, before: dataOrNull(row.before), after: dataOrNull(row.after) }));
}

function jsonOrNull(data: unknown): string | null {
  return data === null || data === undefined ? null : JSON.stringify(data);
}

function dataOrNull(json: string | null): unknown {
  return json === null ? null : JSON.parse(json);
}
