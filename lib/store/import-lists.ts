import { isDeepStrictEqual } from 'node:util';
import type { Site } from '../model/site.ts';
import { changeSite, type Saved } from './change-site.ts';
import type { ChangeWriter } from './change-writer.ts';
import { shelfOf } from './current-fact.ts';
import { keepMapping, type UsedMapping } from './import-mappings.ts';
import { keepSite } from './kept-sites.ts';
import type { Database } from './open-database.ts';
import { readRevision } from './read-site.ts';
import type { Actor } from './rows/policy.ts';
import { putEntry, type ShelfNoun } from './save-entry.ts';
import { putStock } from './save-stock.ts';
import type { SiteList } from './site-part.ts';
import { renewSnapshot, type SiteSnapshot } from './site-snapshot.ts';
import { type ChangedList, writeChanged } from './write-changed.ts';

/** What an import would make of the site, and how its files were read. Entries are added and changed, never taken out. */
export type PlannedLists = {
  ok: true;
  after: Site;
  /** The lists that may differ, each with the files that speak of it. */
  lists: ReadonlyMap<SiteList, readonly string[]>;
  mappings: readonly UsedMapping[];
};

/** Up to this many entries each has a row of its own in the change log; beyond, a row says it for the whole list. */
export const ENTRIES_LOGGED_ONE_BY_ONE = 200;

/** Those that refer come behind those that they refer to. */
const ORDER = {
  palletTypes: 'pallet-type',
  frameTypes: 'frame-type',
  aisles: 'aisle',
  docks: 'dock',
  runs: 'run',
  trucks: 'truck',
  operators: 'operator',
  loads: 'load',
  stock: 'stock',
  checks: 'check',
} as const satisfies Record<SiteList, unknown>;

/**
 * Takes lists in, in one transaction. `plan` is asked what they make of the site as it stands now, whoever has changed
 * it since the browser looked; what it refuses comes back and nothing is stored, nor the mappings kept. `held`: a
 * snapshot that saves reading the site again where nothing was changed.
 *
 * A few entries are put as a save would put them, each with its own row in the change log and undone while each stands.
 * Many are written as lists, a row each; they are undone like a whole site, while nothing was changed after them. So
 * are checks, which single rows could not take back. Throws where there is no site yet.
 */
export function importLists<Refused extends { ok: false }>(
  db: Database,
  actor: Actor,
  held: SiteSnapshot | null,
  plan: (now: Site) => PlannedLists | Refused,
): Saved | Refused {
  return changeSite<Saved | Refused>(db, actor, (log) => {
    const now = renewSnapshot(db, held)?.site;
    if (now === undefined) throw new Error('there is no site to read lists into yet');
    const planned = plan(now);
    if (!planned.ok) return planned;
    for (const mapping of planned.mappings) keepMapping(db, mapping, actor);
    const changed = changedLists(now, planned);
    const entries = changed.reduce((sum, { changes }) => sum + changes.length, 0);
    if (entries === 0) return { ok: true, revision: readRevision(db) };
    const isMany = entries > ENTRIES_LOGGED_ONE_BY_ONE || changed.some(({ list }) => list === 'checks');
    return isMany ? takeInLists(log, now, planned, changed) : takeInEntries(log, changed);
  });
}

function changedLists(now: Site, { after, lists }: PlannedLists): ChangedList[] {
  const order = Object.keys(ORDER) as SiteList[];
  return order
    .filter((list) => lists.has(list))
    .map((list): ChangedList => {
      const before: readonly unknown[] = now[list];
      const entries = after[list] as ChangedList['entries'];
      const changes = [...entries.keys()].filter((at) => !isDeepStrictEqual(before[at], entries[at]));
      return { list, entries, changes, stood: before.length };
    })
    .filter(({ changes }) => changes.length > 0);
}

function takeInEntries(log: ChangeWriter, changed: readonly ChangedList[]): Saved {
  const importing: ChangeWriter = { ...log, record: (change) => log.record({ ...change, kind: 'import' }) };
  let saved: Saved = { ok: true, revision: readRevision(log.db) };
  for (const { list, entries, changes } of changed) {
    for (const at of changes) {
      const entry = entries[at] as never;
      saved =
        list === 'stock'
          ? putStock(importing, entry, null)
          : putEntry(importing, shelfOf(ORDER[list] as ShelfNoun), entry, null);
      if (!saved.ok) return saved;
    }
  }
  return saved;
}

function takeInLists(
  log: ChangeWriter,
  now: Site,
  planned: PlannedLists,
  changed: readonly ChangedList[],
): Saved {
  let revision = readRevision(log.db);
  for (const whole of changed) {
    const { list, entries, changes, stood } = whole;
    writeChanged(log.db, whole);
    const added = entries.length - stood;
    revision = log.record({
      kind: 'import',
      wholeSite: true,
      noun: ORDER[list],
      subject: (planned.lists.get(list) ?? []).join(', '),
      before: { [list]: stood },
      after: { [list]: entries.length, added, changed: changes.length - added },
    });
  }
  keepSite(log.db, revision, now); // at the last of them, which is what they are undone by
  return { ok: true, revision };
}
