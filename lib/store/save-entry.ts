import { isDeepStrictEqual } from 'node:util';
import { eq, getTableName, sql } from 'drizzle-orm';
import type { SQLiteTable } from 'drizzle-orm/sqlite-core';
import type { Refusal } from '../model/refusal.ts';
import type { Site } from '../model/site.ts';
import { readSite as acceptSite } from '../model/site-file.ts';
import { type ChangeNoun, recordChange } from './change-log.ts';
import type { Database } from './open-database.ts';
import { readRevision } from './read-site.ts';
import type { Actor } from './rows/policy.ts';
import { readPartIn, type SiteList } from './site-part.ts';
import type { loads, palletTypes } from './tables/loads.ts';
import type { aisles, docks, frameTypes, runs } from './tables/racking.ts';
import type { operators, trucks } from './tables/trucks.ts';

/** What became of a change: done, or why it was not, each fault with the path in the site file that it would have. */
export type Saved = { ok: true; revision: number } | { ok: false; refusals: Refusal[] };

/** A list of the site whose entries have an id, with what must be read to judge a change of one of them. */
export type Shelf<List extends SiteList> = {
  noun: ChangeNoun;
  list: List;
  table:
    | typeof palletTypes
    | typeof frameTypes
    | typeof aisles
    | typeof runs
    | typeof docks
    | typeof trucks
    | typeof operators
    | typeof loads;
  insert: (db: Database, entries: readonly Site[List][number][], ordinal: number) => void;
  /** The lists that a changed or new entry must agree with. */
  agreesWith: readonly SiteList[];
  /** The lists that may refer to an entry, and those that they in turn refer to. */
  neededBy: readonly SiteList[];
  /** Takes out what goes when an entry goes, and tells what that was, for the change log. */
  takesAlong?: (db: Database, id: string) => Partial<Site>;
};

type Entry<List extends SiteList> = Site[List][number] & { id: string };

/** Puts an entry in the place of the one with its id, or at the end of its list. Nothing changes when nothing differs. */
export function saveEntry<List extends SiteList>(
  db: Database,
  shelf: Shelf<List>,
  entry: Entry<List>,
  actor: Actor,
): Saved {
  return changeSite(db, () => {
    const { site, list, at } = findEntry(db, shelf, entry.id, shelf.agreesWith);
    const place = at < 0 ? list.length : at;
    const reading = acceptSite({ ...site, [shelf.list]: list.toSpliced(place, 1, entry) });
    if (!reading.ok) return reading;
    const before = list[at] ?? null;
    const after = (reading.site[shelf.list] as Entry<List>[])[place]!;
    if (isDeepStrictEqual(before, after)) return { ok: true, revision: readRevision(db) };
    const ordinal = takeOut(db, shelf, entry.id) ?? nextOrdinal(db, shelf.table);
    shelf.insert(db, [after], ordinal);
    const revision = recordChange(db, actor, {
      kind: before === null ? 'add' : 'save',
      noun: shelf.noun,
      subject: entry.id,
      before,
      after,
    });
    return { ok: true, revision };
  });
}

/** Takes the entry with this id out of its list; refused while something refers to it, no change when there is none. */
export function removeEntry<List extends SiteList>(
  db: Database,
  shelf: Shelf<List>,
  id: string,
  actor: Actor,
): Saved {
  return changeSite(db, () => {
    const { site, list, at } = findEntry(db, shelf, id, [...shelf.agreesWith, ...shelf.neededBy]);
    if (at < 0) return { ok: true, revision: readRevision(db) };
    const reading = acceptSite({ ...site, [shelf.list]: list.toSpliced(at, 1) });
    if (!reading.ok) return reading;
    const before = { ...list[at]!, ...shelf.takesAlong?.(db, id) };
    takeOut(db, shelf, id);
    const change = { kind: 'remove', noun: shelf.noun, subject: id, before, after: null } as const;
    return { ok: true, revision: recordChange(db, actor, change) };
  });
}

/**
 * Runs one change as one transaction. It takes the write lock first, so that what is judged is what is changed;
 * references are held at its end, since an entry is replaced by taking it out and putting it in.
 */
export function changeSite(db: Database, change: () => Saved): Saved {
  return db.transaction(
    () => {
      db.run(sql`PRAGMA defer_foreign_keys = ON`);
      return change();
    },
    { behavior: 'immediate' },
  );
}

/** Reads a part of the site for a change of it. A change needs a site: without one it is a bug. */
export function partToChange(db: Database, lists: readonly SiteList[]): Site {
  const site = readPartIn(db, lists);
  if (site === null) throw new Error('there is no site to change yet: import one first');
  return site;
}

/** The place after the last of a table's list. */
export function nextOrdinal(db: Database, table: SQLiteTable): number {
  const name = sql.identifier(getTableName(table));
  return db.values<[number]>(sql`SELECT coalesce(max(ordinal) + 1, 0) FROM ${name}`)[0]![0];
}

function findEntry<List extends SiteList>(
  db: Database,
  shelf: Shelf<List>,
  id: string,
  lists: readonly SiteList[],
) {
  const site = partToChange(db, [...new Set([shelf.list, ...lists])]);
  const list = site[shelf.list] as Entry<List>[];
  return { site, list, at: list.findIndex((entry) => entry.id === id) };
}

/** Deletes the row, its parts with it, and tells where in the list it stood; null when it was not there. */
function takeOut(db: Database, { table }: Pick<Shelf<SiteList>, 'table'>, id: string): number | null {
  const gone = db.delete(table).where(eq(table.id, id)).returning({ ordinal: table.ordinal }).all();
  return gone[0]?.ordinal ?? null;
}
