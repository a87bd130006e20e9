import { eq, max } from 'drizzle-orm';
import type { ChangeKind, FactChange } from '../model/change.ts';
import type { Database } from './open-database.ts';
import { readRevision } from './read-site.ts';
import type { Actor } from './rows/policy.ts';
import { changes } from './tables/change-log.ts';
import { siteTable } from './tables/site.ts';

/** What is written down of one change; who made it, and together with what, the writer knows. */
export type NewChange = Pick<FactChange, 'noun' | 'subject' | 'before' | 'after'> & {
  kind?: 'import' | 'restore';
  wholeSite?: true;
  /** Of an entry that comes or goes: its place in its list. */
  ordinal?: number;
  ahead?: string | null;
};

/** The change log as one transaction writes it: what it records belongs together and is undone together. */
export type ChangeWriter = {
  db: Database;
  actor: Actor;
  reverts: number | null;
  record: (change: NewChange) => number;
};

/** `reverts`: the change that whatever is recorded here undoes. Belongs in the transaction that makes the changes. */
export function openChangeWriter(db: Database, actor: Actor, reverts: number | null = null): ChangeWriter {
  let batch: number | null = null;
  return {
    db,
    actor,
    reverts,
    record(change) {
      const id = nextRevision(db);
      batch ??= id;
      db.insert(changes)
        .values({
          ...change,
          ...actor,
          id,
          batch,
          reverts,
          kind: change.kind ?? (reverts === null ? kindOf(change) : 'revert'),
          before: jsonOrNull(change.before),
          after: jsonOrNull(change.after),
        })
        .run();
      db.update(siteTable).set({ revision: id }).where(eq(siteTable.only, 1)).run();
      return id;
    },
  };
}

/** Higher than whatever was given out before, also by a database that this one has taken the place of. */
function nextRevision(db: Database): number {
  const last =
    db
      .select({ id: max(changes.id) })
      .from(changes)
      .all()[0]?.id ?? 0;
  return Math.max(last, readRevision(db)) + 1;
}

function kindOf({ before, after }: NewChange): ChangeKind {
  return after === null ? 'remove' : before === null ? 'add' : 'save';
}

function jsonOrNull(data: unknown): string | null {
  return data === null || data === undefined ? null : JSON.stringify(data);
}
