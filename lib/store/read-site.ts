import { SITE_FORMAT, SITE_VERSION, type Site } from '../model/site.ts';
import type { Connection, Database } from './open-database.ts';
import { readLoads, readPalletTypes, readStock } from './rows/loads.ts';
import { readPolicy } from './rows/policy.ts';
import { readAisles, readDocks, readFrameTypes, readRuns } from './rows/racking.ts';
import { readChecks, readOperators, readTrucks } from './rows/trucks.ts';
import { siteTable } from './tables/site.ts';

/** The whole site, every list in the order in which it was written, or null when the database holds none yet. */
export function readSite(db: Database): Site | null {
  return db.transaction(readSiteIn); // one transaction, so that no other writer is seen half-way
}

/** The same inside a transaction that is already open. */
export function readSiteIn(db: Connection): Site | null {
  const row = db.select().from(siteTable).get();
  if (row === undefined) return null;
  return {
    format: SITE_FORMAT,
    version: SITE_VERSION,
    site: { name: row.name, policy: readPolicy(db) },
    palletTypes: readPalletTypes(db),
    frameTypes: readFrameTypes(db),
    aisles: readAisles(db),
    runs: readRuns(db),
    docks: readDocks(db),
    trucks: readTrucks(db),
    operators: readOperators(db),
    loads: readLoads(db),
    stock: readStock(db),
    checks: readChecks(db),
  };
}

/** How often the site has been changed: 0 before the first import, higher after each change. */
export function readRevision(db: Connection): number {
  return db.select({ revision: siteTable.revision }).from(siteTable).get()?.revision ?? 0;
}

/** Is there no site yet? */
export function isEmpty(db: Connection): boolean {
  return readRevision(db) === 0;
}
