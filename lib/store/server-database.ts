import 'server-only';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { connection } from 'next/server';
import type { Site } from '../model/site.ts';
import { indexSite, type SiteIndex } from '../model/site-index.ts';
import { type Database, openDatabase } from './open-database.ts';
import { readRevision, readSiteIn } from './read-site.ts';

export type SiteSnapshot = { site: Site; index: SiteIndex; revision: number };

// On globalThis, since a development server evaluates this file again after each change to it.
const held = globalThis as typeof globalThis & {
  tinewiseDatabase?: Database;
  tinewiseSnapshot?: SiteSnapshot | null;
};

/** The server's one connection: `tinewise.db` in the folder TINEWISE_DATA, `data` of the working directory unless set. */
export function serverDatabase(): Database {
  if (held.tinewiseDatabase === undefined) {
    const folder = process.env.TINEWISE_DATA || 'data';
    mkdirSync(/* turbopackIgnore: true */ folder, { recursive: true });
    held.tinewiseDatabase = openDatabase(join(/* turbopackIgnore: true */ folder, 'tinewise.db'));
  }
  return held.tinewiseDatabase;
}

/**
 * The site as it stands, with its ids resolved, or null when there is none yet. Read again only when the revision has
 * risen, by whichever process. Waits for a request, so that no page is ever built ahead with yesterday's site.
 */
export async function siteSnapshot(): Promise<SiteSnapshot | null> {
  await connection();
  const db = serverDatabase();
  const revision = readRevision(db);
  if (held.tinewiseSnapshot?.revision !== revision) held.tinewiseSnapshot = takeSnapshot(db);
  return held.tinewiseSnapshot ?? null;
}

function takeSnapshot(db: Database): SiteSnapshot | null {
  const read = db.transaction(() => ({ site: readSiteIn(db), revision: readRevision(db) }));
  return read.site && { site: read.site, revision: read.revision, index: indexSite(read.site) };
}
