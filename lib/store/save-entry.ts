import { isDeepStrictEqual } from 'node:util';
import { eq } from 'drizzle-orm';
import type { ChangeNoun, NOUN_LISTS } from '../model/change.ts';
import { blankSite, type Site } from '../model/site.ts';
import { readSite as acceptSite, type SiteReading } from '../model/site-file.ts';
import { type BasedOn, conflictOf, partToChange, refusedFor, type Saved } from './change-site.ts';
import type { ChangeWriter } from './change-writer.ts';
import type { Database } from './open-database.ts';
import { freeOrdinal, keyBehind } from './ordinals.ts';
import { readRevision } from './read-site.ts';
import type { SiteList } from './site-part.ts';
import type { loads, palletTypes } from './tables/loads.ts';
import type { aisles, docks, frameTypes, runs } from './tables/racking.ts';
import type { operators, trucks } from './tables/trucks.ts';

export type ShelfNoun = keyof typeof NOUN_LISTS & ChangeNoun;
export type ShelfList = (typeof NOUN_LISTS)[ShelfNoun];
export type Entry<List extends ShelfList> = Site[List][number];

/** A list of the site whose entries have an id, with what must be read to judge a change of one of them. */
export type Shelf<List extends ShelfList> = {
  noun: ShelfNoun;
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
  read: (db: Database, id: string) => Entry<List>[];
  insert: (db: Database, entries: readonly Entry<List>[], ordinal: number) => void;
  /** What an entry refers to: enough to judge it by itself. */
  beside?: (db: Database, entry: Entry<List>) => Partial<Site>;
  /** Does an entry that is sound by itself disagree with what else stands in the database? */
  clashes?: (db: Database, entry: Entry<List>) => boolean;
  /** Does anything refer to this entry? */
  isNeeded?: (db: Database, id: string) => boolean;
  /** The lists that must be read to say where a change or a removal disagrees with them. */
  agreesWith: readonly SiteList[];
  neededBy: readonly SiteList[];
  /** What goes when an entry goes, for the change log; and how it comes back. */
  takesAlong?: (db: Database, id: string) => Partial<Site>;
  bringsBack?: (db: Database, along: Partial<Site>) => void;
};

/** How an entry is put back: where it stood, and what had gone with it. */
export type PutBack = { ordinal: number | null; along: Partial<Site> };

/**
 * Puts an entry in the place of the one with its id, or at the end of its list. Nothing changes when nothing differs.
 * Part of a transaction of changeSite.
 */
export function putEntry<List extends ShelfList>(
  log: ChangeWriter,
  shelf: Shelf<List>,
  entry: Entry<List>,
  basedOn: BasedOn,
  back?: PutBack,
): Saved {
  const { db } = log;
  const before = readOne(db, shelf, entry.id);
  const judged = judgeEntry(db, shelf, entry);
  if (!judged.ok) return judged;
  const after = judged.entry;
  if (isDeepStrictEqual(before, after)) return { ok: true, revision: readRevision(db) };
  const conflict = conflictOf(db, basedOn, { noun: shelf.noun, subject: entry.id, theirs: before });
  if (conflict !== null) return refusedFor(conflict);
  const stood = takeOut(db, shelf, entry.id);
  const ordinal = stood ?? freeOrdinal(db, shelf.table, back?.ordinal ?? null);
  shelf.insert(db, [after], ordinal);
  if (back !== undefined) shelf.bringsBack?.(db, back.along);
  const change = { noun: shelf.noun, subject: entry.id, before, after: { ...after, ...back?.along } };
  const came = stood === null ? { ordinal, ahead: keyBehind(db, shelf.table.id, ordinal) } : {};
  return { ok: true, revision: log.record({ ...change, ...came }) };
}

/** Takes the entry with this id out of its list; refused while something refers to it, no change when there is none. */
export function dropEntry<List extends ShelfList>(
  log: ChangeWriter,
  shelf: Shelf<List>,
  id: string,
  basedOn: BasedOn,
): Saved {
  const { db } = log;
  const entry = readOne(db, shelf, id);
  if (entry === null) return { ok: true, revision: readRevision(db) };
  const conflict = conflictOf(db, basedOn, { noun: shelf.noun, subject: id, theirs: entry });
  if (conflict !== null) return refusedFor(conflict);
  if (shelf.isNeeded?.(db, id)) {
    const reading = judgeWhole(db, shelf, [...shelf.agreesWith, ...shelf.neededBy], (list) =>
      list.filter((other) => other.id !== id),
    );
    if (!reading.ok) return reading;
  }
  const before = { ...entry, ...shelf.takesAlong?.(db, id) };
  const ordinal = takeOut(db, shelf, id)!;
  return { ok: true, revision: log.record({ noun: shelf.noun, subject: id, before, after: null, ordinal }) };
}

/** The entry with this id, or null. */
export function readOne<List extends ShelfList>(
  db: Database,
  shelf: Pick<Shelf<List>, 'read'>,
  id: string,
): Entry<List> | null {
  return typeof id === 'string' ? (shelf.read(db, id)[0] ?? null) : null;
}

/**
 * Is the entry one that a site file could hold here? Judged by itself with what it refers to, so that the time does not
 * grow with the site; only a refusal reads whole lists, to name the place and the nearest id.
 */
function judgeEntry<List extends ShelfList>(
  db: Database,
  shelf: Shelf<List>,
  entry: Entry<List>,
): Extract<SiteReading, { ok: false }> | { ok: true; entry: Entry<List> } {
  const alone = acceptSite({
    ...blankSite(partToChange(db, []).site.name),
    ...shelf.beside?.(db, entry),
    [shelf.list]: [entry],
  });
  if (alone.ok) {
    const accepted = (alone.site[shelf.list] as Entry<List>[])[0]!;
    if (!shelf.clashes?.(db, accepted)) return { ok: true, entry: accepted };
  }
  let place = 0;
  const whole = judgeWhole(db, shelf, shelf.agreesWith, (list) => {
    const at = list.findIndex((other) => other.id === entry.id);
    place = at < 0 ? list.length : at;
    return list.toSpliced(place, 1, entry);
  });
  return whole.ok ? { ok: true, entry: (whole.site[shelf.list] as Entry<List>[])[place]! } : whole;
}

function judgeWhole<List extends ShelfList>(
  db: Database,
  shelf: Shelf<List>,
  lists: readonly SiteList[],
  change: (list: Entry<List>[]) => Entry<List>[],
): SiteReading {
  const site = partToChange(db, [...new Set([shelf.list, ...lists])]);
  return acceptSite({ ...site, [shelf.list]: change(site[shelf.list] as Entry<List>[]) });
}

/** Deletes the row, its parts with it, and tells where in the list it stood; null when it was not there. */
function takeOut(db: Database, { table }: Pick<Shelf<ShelfList>, 'table'>, id: string): number | null {
  const gone = db.delete(table).where(eq(table.id, id)).returning({ ordinal: table.ordinal }).all();
  return gone[0]?.ordinal ?? null;
}
