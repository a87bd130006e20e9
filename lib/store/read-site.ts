import type { Site } from '../model/site.ts';
import type { Database } from './open-database.ts';
import { readPartIn, SITE_LISTS } from './site-part.ts';
import { siteTable } from './tables/site.ts';
import { readTransaction } from './transaction.ts';

/** The whole site, every list in the order in which it was written, or null when the database holds none yet. */
export function readSite(db: Database): Site | null {
  return readTransaction(db, () => readSiteIn(db)); // one transaction, so that no other writer is seen half-way
}

/** The same inside a transaction that is already open. */
export function readSiteIn(db: Database): Site | null {
  return readPartIn(db, SITE_LISTS);
}

/** How often the site has been changed: 0 before the first import, higher after each change. */
export function readRevision(db: Database): number {
  return db.select({ revision: siteTable.revision }).from(siteTable).get()?.revision ?? 0;
}

/** Is there no site yet? */
export function isEmpty(db: Database): boolean {
  return readRevision(db) === 0;
}
