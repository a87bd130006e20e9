import { sql } from 'drizzle-orm';
import type { ChangeNoun, Conflict } from '../model/change.ts';
import type { Refusal } from '../model/refusal.ts';
import type { Site } from '../model/site.ts';
import { changesSince, readChanges } from './change-log.ts';
import { type ChangeWriter, openChangeWriter } from './change-writer.ts';
import type { Database } from './open-database.ts';
import { readRevision } from './read-site.ts';
import type { Actor } from './rows/policy.ts';
import { readPartIn, type SiteList } from './site-part.ts';
import { writeTransaction } from './transaction.ts';

/**
 * What became of a change: done, or why it was not. `refusals`: each fault with the path in the site file that it would
 * have. `conflict`: somebody else was faster, there is no fault.
 */
export type Saved =
  | { ok: true; revision: number }
  | { ok: false; refusals: Refusal[]; conflict?: undefined }
  | { ok: false; refusals: []; conflict: Conflict };

/** The revision at which the editor read the fact; null for one that means to overwrite whatever stands there. */
export type BasedOn = number | null;

/**
 * Runs one change as one transaction. It takes the write lock first, so that what is judged is what is changed;
 * references are held at its end, since an entry is replaced by taking it out and putting it in. Whatever `change` has
 * written is undone when its outcome is not ok.
 */
export function changeSite<Outcome extends { ok: boolean }>(
  db: Database,
  actor: Actor,
  change: (log: ChangeWriter) => Outcome,
  reverts: number | null = null,
): Outcome {
  try {
    return writeTransaction(db, () => {
      db.run(sql`PRAGMA defer_foreign_keys = ON`);
      const outcome = change(openChangeWriter(db, actor, reverts));
      if (!outcome.ok) throw new NotMade(outcome);
      return outcome;
    });
  } catch (error) {
    if (error instanceof NotMade) return error.outcome as Outcome;
    throw error;
  }
}

/** Carries an outcome out of a transaction that is to be undone. */
export class NotMade extends Error {
  readonly outcome: unknown;

  constructor(outcome: unknown) {
    super('the change was not made');
    this.outcome = outcome;
  }
}

/** Has anybody changed this fact, or exchanged the whole site, since it was read? `theirs` is the fact as it stands. */
export function conflictOf(
  db: Database,
  basedOn: BasedOn,
  fact: { noun: ChangeNoun; subject: string; theirs: unknown },
): Conflict | null {
  if (basedOn === null) return null;
  const revision = readRevision(db);
  const since = changesSince(db, basedOn, fact.noun, fact.subject);
  // a revision that this database has never had was read from another one
  const last = since.at(-1) ?? (basedOn > revision ? readChanges(db, { limit: 1 })[0] : undefined);
  if (last === undefined) return null;
  const first = since[0];
  const base: Conflict['base'] =
    first === undefined || first.wholeSite ? { known: false } : { known: true, fact: first.before };
  const { who: by, at, kind } = last;
  return { ...fact, since: basedOn, by, at, kind, base, revision };
}

/** The outcome of a change that came too late. */
export function refusedFor(conflict: Conflict): Saved {
  return { ok: false, refusals: [], conflict };
}

/** Reads a part of the site for a change of it. A change needs a site: without one it is a bug. */
export function partToChange(db: Database, lists: readonly SiteList[]): Site {
  const site = readPartIn(db, lists);
  if (site === null) throw new Error('there is no site to change yet: import one first');
  return site;
}
