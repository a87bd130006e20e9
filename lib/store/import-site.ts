import { count, sql } from 'drizzle-orm';
import type { Site } from '../model/site.ts';
import { type ChangeWriter, openChangeWriter } from './change-writer.ts';
import { keepSite } from './kept-sites.ts';
import type { Database } from './open-database.ts';
import { readSiteIn } from './read-site.ts';
import { insertLoads, insertPalletTypes, insertStock } from './rows/loads.ts';
import { type Actor, insertPolicy } from './rows/policy.ts';
import { insertAisles, insertDocks, insertFrameTypes, insertRuns } from './rows/racking.ts';
import { insertChecks, insertOperators, insertTrucks } from './rows/trucks.ts';
import { forgetDemo } from './settings.ts';
import { SITE_LISTS, type SiteList } from './site-part.ts';
import { loads, palletTypes, stock } from './tables/loads.ts';
import { aisles, docks, frameTypes, runs } from './tables/racking.ts';
import { policyValues, siteTable } from './tables/site.ts';
import { checks, operators, trucks } from './tables/trucks.ts';
import { writeTransaction } from './transaction.ts';

/** Emptied in this order: those that refer come before those that are referred to; parts go with their wholes. */
const TABLES = {
  stock,
  checks,
  loads,
  palletTypes,
  runs,
  aisles,
  frameTypes,
  docks,
  trucks,
  operators,
} as const satisfies Record<SiteList, unknown>;

/**
 * Puts a site that lib/model has accepted in the place of whatever the database holds: all of it or nothing. The change
 * log stays and gains a row; the former site is kept, so that the import can be undone. Returns the new revision.
 */
export function importSite(db: Database, site: Site, actor: Actor): number {
  return writeTransaction(db, () => exchangeSite(openChangeWriter(db, actor), site));
}

/** The same as part of a transaction. */
export function exchangeSite(log: ChangeWriter, site: Site): number {
  const { db, actor } = log;
  const before = contentsNow(db);
  const former = readSiteIn(db);
  for (const table of [...Object.values(TABLES), policyValues]) db.delete(table).run();
  db.insert(siteTable)
    .values({ only: 1, name: site.site.name, revision: 0 })
    .onConflictDoUpdate({ target: siteTable.only, set: { name: sql`excluded.name` } })
    .run();
  insertSite(db, site, actor);
  forgetDemo(db);
  const subject = site.site.name;
  const change = { noun: 'site', subject, before, after: contentsOf(site), wholeSite: true } as const;
  const revision = log.record({ ...change, ...(log.reverts === null ? { kind: 'import' } : {}) });
  if (former !== null) keepSite(db, revision, former);
  return revision;
}

function insertSite(db: Database, site: Site, actor: Actor): void {
  insertPolicy(db, site.site.policy, actor);
  insertPalletTypes(db, site.palletTypes);
  insertFrameTypes(db, site.frameTypes);
  insertAisles(db, site.aisles);
  insertRuns(db, site.runs);
  insertDocks(db, site.docks);
  insertTrucks(db, site.trucks);
  insertOperators(db, site.operators);
  insertLoads(db, site.loads);
  insertStock(db, site.stock);
  insertChecks(db, site.checks);
}

/** What an import brought, in numbers: the log would otherwise keep every site twice. */
function contentsOf(site: Site): Record<string, string | number> {
  return { name: site.site.name, ...Object.fromEntries(SITE_LISTS.map((list) => [list, site[list].length])) };
}

/** What an import takes away, in numbers; null when there is nothing yet. */
export function contentsNow(db: Database): Record<string, string | number> | null {
  const name = db.select({ name: siteTable.name }).from(siteTable).all()[0]?.name;
  if (name === undefined) return null;
  const counts = SITE_LISTS.map((list) => [list, db.select({ n: count() }).from(TABLES[list]).all()[0]!.n]);
  return { name, ...Object.fromEntries(counts) };
}
