import { gunzipSync, gzipSync } from 'node:zlib';
import { eq, sql } from 'drizzle-orm';
import type { Site } from '../model/site.ts';
import { readSiteText } from '../model/site-file.ts';
import type { Database } from './open-database.ts';
import { keptSites } from './tables/change-log.ts';

/** How many former sites are kept. A site of 200 000 locations takes about 4 MB. */
export const SITES_KEPT = 20;

/** Keeps the site that a change takes away; the oldest ones beyond SITES_KEPT go. */
export function keepSite(db: Database, change: number, site: Site): void {
  db.insert(keptSites)
    .values({ change, file: gzipSync(JSON.stringify(site), { level: 1 }) })
    .run();
  db.run(sql`DELETE FROM ${keptSites} WHERE ${keptSites.change} NOT IN
    (SELECT change FROM kept_sites ORDER BY change DESC LIMIT ${SITES_KEPT})`);
}

/** The site as it stood before this change; null when it is not kept (any more). */
export function readKeptSite(db: Database, change: number): Site | null {
  const row = db.select().from(keptSites).where(eq(keptSites.change, change)).all()[0];
  if (row === undefined) return null;
  const reading = readSiteText(gunzipSync(row.file).toString('utf8'));
  if (!reading.ok) throw new Error(`the site kept at change ${change} cannot be read any more`);
  return reading.site;
}

export function isSiteKept(db: Database, change: number): boolean {
  return (
    db.select({ change: keptSites.change }).from(keptSites).where(eq(keptSites.change, change)).all().length >
    0
  );
}
