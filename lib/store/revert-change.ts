import { isDeepStrictEqual } from 'node:util';
import type { CannotRevert, Change, Conflict } from '../model/change.ts';
import type { Site } from '../model/site.ts';
import { readBatch, readChange, readChanges, readOrdinal } from './change-log.ts';
import { changeSite, conflictOf, NotMade, partToChange, refusedFor, type Saved } from './change-site.ts';
import type { ChangeWriter } from './change-writer.ts';
import { readFact, shelfOf } from './current-fact.ts';
import { exchangeSite } from './import-site.ts';
import { isSiteKept, readKeptSite } from './kept-sites.ts';
import type { Database } from './open-database.ts';
import { dropPlatePhoto, type PhotoFact, putKeptPhoto } from './plate-photos.ts';
import { readRevision } from './read-site.ts';
import type { Actor } from './rows/policy.ts';
import { dropEntry, putEntry } from './save-entry.ts';
import { putPolicy, putSiteName } from './save-policy.ts';
import { dropStock, putStock } from './save-stock.ts';

import { writeTransaction } from './transaction.ts';

export type Reverted = (Saved & { cannot?: undefined }) | { ok: false; refusals: []; cannot: CannotRevert };

/**
 * Undoes a change, and whatever was made together with it, as one new change of kind `revert`: each fact becomes what
 * it was before. Only while each still is what the change made of it; else the answer is the conflict. What can no
 * longer stand (a pallet of a load that is gone) is refused as any save would be. Nothing is changed then.
 *
 * The import of a whole site is undone while nothing was changed after it and the former site is kept (SITES_KEPT).
 */
export function revertChange(db: Database, id: number, actor: Actor): Reverted {
  const change = readChange(db, id);
  if (change === null) return { ok: false, refusals: [], cannot: 'no-such-change' };
  if (change.kind === 'restore') return { ok: false, refusals: [], cannot: 'was-restored' };
  return changeSite<Reverted>(db, actor, (log) => revertBatch(log, change), change.batch);
}

/** What would come of revertChange: the same answer, and nothing is kept. A whole site is not exchanged for it. */
export function tryRevert(db: Database, id: number, actor: Actor): Reverted {
  const change = readChange(db, id);
  if (change?.wholeSite && isSiteKept(db, id) && readRevision(db) === id)
    return { ok: true, revision: id + 1 };
  try {
    return writeTransaction(db, () => {
      throw new NotMade(revertChange(db, id, actor));
    });
  } catch (error) {
    if (error instanceof NotMade) return error.outcome as Reverted;
    throw error;
  }
}

function revertBatch(log: ChangeWriter, change: Change): Reverted {
  // Whole lists that came in together go together: the last of their changes is the one to stand behind.
  if (change.wholeSite) return revertWholeSite(log, readBatch(log.db, change.batch).at(-1) ?? change);
  let outcome: Reverted = { ok: true, revision: readRevision(log.db) };
  for (const made of readBatch(log.db, change.batch).toReversed()) {
    outcome = revertOne(log, made);
    if (!outcome.ok) return outcome;
  }
  return outcome;
}

function revertOne(log: ChangeWriter, change: Change): Reverted {
  const { db } = log;
  const { noun, subject, before } = change;
  if (noun === 'check') return { ok: false, refusals: [], cannot: 'check-is-kept' };
  const theirs = readFact(db, noun, subject);
  if (!isDeepStrictEqual(theirs, withoutAlong(change.after))) return refusedFor(lateFor(db, change, theirs));
  const ordinal = readOrdinal(db, change.id);
  switch (noun) {
    case 'site':
      return putSiteName(log, before as string, null);
    case 'policy': {
      const { [subject]: _, ...own } = partToChange(db, []).site.policy as Record<string, unknown>;
      return putPolicy(log, before === null ? own : { ...own, [subject]: before }, null);
    }
    case 'plate-photo': {
      if (before === null) return dropPlatePhoto(log, subject, null);
      const put = putKeptPhoto(log, subject, (before as PhotoFact).hash);
      return put ?? { ok: false, refusals: [], cannot: 'photo-not-kept' };
    }
    case 'stock':
      return before === null
        ? dropStock(log, subject, null)
        : putStock(log, { location: subject, load: before as string }, null, ordinal);
    default:
      return before === null
        ? dropEntry(log, shelfOf(noun), subject, null)
        : putEntry(log, shelfOf(noun), withoutAlong(before) as never, null, {
            ordinal,
            along: alongOf(before),
          });
  }
}

/** A truck's checks go and come with it, under a key of its own in the log. */
function withoutAlong(fact: unknown): unknown {
  if (typeof fact !== 'object' || fact === null || !('checks' in fact)) return fact;
  const { checks: _, ...entry } = fact;
  return entry;
}

function alongOf(fact: unknown): Partial<Site> {
  return typeof fact === 'object' && fact !== null && 'checks' in fact
    ? { checks: fact.checks as Site['checks'] }
    : {};
}

function revertWholeSite(log: ChangeWriter, change: Change): Reverted {
  const { db } = log;
  if (readRevision(db) !== change.id) return refusedFor(lateFor(db, change, null));
  const former = readKeptSite(db, change.id);
  if (former === null) return { ok: false, refusals: [], cannot: 'former-site-not-kept' };
  return { ok: true, revision: exchangeSite(log, former) };
}

/** Somebody has changed the fact after the change that is to be undone. */
function lateFor(db: Database, change: Change, theirs: unknown): Conflict {
  const { noun, subject } = change;
  const late = conflictOf(db, change.id, { noun, subject, theirs });
  const base = { known: !change.wholeSite, fact: change.after } as Conflict['base'];
  if (late !== null) return { ...late, base };
  const last = readChanges(db, { limit: 1 })[0] ?? change;
  return {
    noun,
    subject,
    theirs,
    since: change.id,
    by: last.who,
    at: last.at,
    kind: last.kind,
    base,
    revision: readRevision(db),
  };
}
