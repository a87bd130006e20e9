import { and, asc, desc, eq, gt, gte, inArray, lt, type SQL, sql } from 'drizzle-orm';
import type { Change, ChangeKind, ChangeNoun } from '../model/change.ts';
import type { Database } from './open-database.ts';
import { changes } from './tables/change-log.ts';

export type { Change, ChangeKind, ChangeNoun };

/** Which changes; whatever is left out does not narrow them. */
export type ChangeFilter = {
  who?: string;
  noun?: ChangeNoun;
  subject?: string;
  kind?: ChangeKind;
  /** At or after this time, ISO 8601 UTC. */
  from?: string;
  /** Before this time. */
  to?: string;
  /** Stands in the subject, in who made it, or in what was there before or after. */
  text?: string;
};

export type ListedChange = Change & {
  /** The change that undid this one; null when it stands. */
  revertedBy: number | null;
};

/** The newest changes first, at most `limit`, older than the change `before` where it is given. */
export function readChanges(
  db: Database,
  page: { limit: number; before?: number; filter?: ChangeFilter },
): ListedChange[] {
  const older = page.before === undefined ? undefined : lt(changes.id, page.before);
  const rows = db
    .select()
    .from(changes)
    .where(and(older, ...conditions(page.filter ?? {})))
    .orderBy(desc(changes.id))
    .limit(page.limit)
    .all();
  return withReverts(db, rows.map(changeOf));
}

/** One change, or null when there is none of this id. */
export function readChange(db: Database, id: number): ListedChange | null {
  const rows = db.select().from(changes).where(eq(changes.id, id)).all();
  return withReverts(db, rows.map(changeOf))[0] ?? null;
}

/** The changes that were made together, oldest first. */
export function readBatch(db: Database, batch: number): Change[] {
  const rows = db.select().from(changes).where(eq(changes.batch, batch)).orderBy(asc(changes.id)).all();
  return rows.map(changeOf);
}

/** Where in its list the entry stood that came or went with a change; null when none did. */
export function readOrdinal(db: Database, id: number): number | null {
  return (
    db.select({ ordinal: changes.ordinal }).from(changes).where(eq(changes.id, id)).all()[0]?.ordinal ?? null
  );
}

/** What has been changed after a revision, oldest first; null when it is more than `most`. */
export function readChangesAfter(db: Database, revision: number, most: number): Change[] | null {
  const rows = db
    .select()
    .from(changes)
    .where(gt(changes.id, revision))
    .orderBy(asc(changes.id))
    .limit(most + 1)
    .all();
  return rows.length > most ? null : rows.map(changeOf);
}

/** The newest change of one's own that can still be undone: neither an undoing itself nor undone already. */
export function lastChangeOf(db: Database, who: string): ListedChange | null {
  const standing = sql`${changes.who} = ${who} AND ${changes.kind} NOT IN ('revert', 'restore')
    AND NOT EXISTS (SELECT 1 FROM changes AS undoing WHERE undoing.reverts = ${changes.batch})`;
  const row = db.select().from(changes).where(standing).orderBy(desc(changes.id)).limit(1).all()[0];
  return row === undefined ? null : { ...changeOf(row), revertedBy: null };
}

/** Everybody who has changed something, in the order of the alphabet. */
export function readAuthors(db: Database): string[] {
  return db
    .selectDistinct({ who: changes.who })
    .from(changes)
    .orderBy(asc(changes.who))
    .all()
    .map(({ who }) => who);
}

function conditions(filter: ChangeFilter): (SQL | undefined)[] {
  const { who, noun, subject, kind, from, to, text } = filter;
  return [
    who === undefined ? undefined : eq(changes.who, who),
    noun === undefined ? undefined : eq(changes.noun, noun),
    subject === undefined ? undefined : eq(changes.subject, subject),
    kind === undefined ? undefined : eq(changes.kind, kind),
    from === undefined ? undefined : gte(changes.at, from),
    to === undefined ? undefined : lt(changes.at, to),
    text === undefined ? undefined : holds(text),
  ];
}

/** instr, not LIKE: what is looked for may hold % or _. */
function holds(text: string): SQL {
  const found = [changes.subject, changes.who, changes.before, changes.after].map(
    (column) => sql`instr(lower(${column}), ${text.toLowerCase()}) > 0`,
  );
  return sql`(${sql.join(found, sql` OR `)})`;
}

/** A revert names the first change of those that it undoes together. */
function withReverts(db: Database, list: readonly Change[]): ListedChange[] {
  if (list.length === 0) return [];
  const batches = [...new Set(list.map((change) => change.batch))];
  const undoing = db
    .select({ id: changes.id, reverts: changes.reverts })
    .from(changes)
    .where(inArray(changes.reverts, batches))
    .orderBy(asc(changes.id))
    .all();
  const by = new Map(undoing.map(({ id, reverts }) => [reverts, id]));
  return list.map((change) => ({ ...change, revertedBy: by.get(change.batch) ?? null }));
}

/** Who changed this fact last, or exchanged the whole site, after a revision; oldest first. */
export function changesSince(db: Database, revision: number, noun: ChangeNoun, subject: string): Change[] {
  const touching = sql`${changes.id} > ${revision} AND
    (${changes.wholeSite} OR (${changes.noun} = ${noun} AND ${changes.subject} = ${subject}))`;
  return db.select().from(changes).where(touching).orderBy(changes.id).all().map(changeOf);
}

export function changeOf(row: typeof changes.$inferSelect): Change {
  const { ordinal: _, ...rest } = row;
  return {
    ...rest,
    batch: row.batch ?? row.id,
    before: dataOrNull(row.before),
    after: dataOrNull(row.after),
  };
}

function dataOrNull(json: string | null): unknown {
  return json === null ? null : JSON.parse(json);
}
