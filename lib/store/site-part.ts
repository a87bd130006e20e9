import { blankSite, type Site } from '../model/site.ts';
import type { Database } from './open-database.ts';
import { readLoads, readPalletTypes, readStock } from './rows/loads.ts';
import { readPolicy } from './rows/policy.ts';
import { readAisles, readDocks, readFrameTypes, readRuns } from './rows/racking.ts';
import { readChecks, readOperators, readTrucks } from './rows/trucks.ts';
import { siteTable } from './tables/site.ts';

/** How each list of a site is read. */
const READ = {
  palletTypes: readPalletTypes,
  frameTypes: readFrameTypes,
  aisles: readAisles,
  runs: readRuns,
  docks: readDocks,
  trucks: readTrucks,
  operators: readOperators,
  loads: readLoads,
  stock: readStock,
  checks: readChecks,
} satisfies { [List in SiteList]: (db: Database) => Site[List] };

export type SiteList = Exclude<keyof Site, 'format' | 'version' | 'site'>;
export const SITE_LISTS = Object.keys(READ) as SiteList[];

/** The site with only these lists filled, each in the order in which it was written; null when there is no site yet. */
export function readPartIn(db: Database, lists: readonly SiteList[]): Site | null {
  const row = db.select().from(siteTable).get();
  if (row === undefined) return null;
  const site: Site = blankSite(row.name, readPolicy(db));
  for (const list of lists) Object.assign(site, { [list]: READ[list](db) });
  return site;
}
