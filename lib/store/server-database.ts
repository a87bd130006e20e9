import 'server-only';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { connection } from 'next/server';
import { dataFolder } from './data-folder.ts';
import { type Database, openDatabase } from './open-database.ts';
import { renewSnapshot, type SiteSnapshot } from './site-snapshot.ts';

export type { SiteSnapshot } from './site-snapshot.ts';

// On globalThis, since a development server evaluates this file again after each change to it.
const held = globalThis as typeof globalThis & {
  tinewiseDatabase?: Database;
  tinewiseSnapshot?: SiteSnapshot | null;
};

/** The server's one connection: `tinewise.db` in the folder TINEWISE_DATA, `data` of the working directory unless set. */
export function serverDatabase(): Database {
  if (held.tinewiseDatabase === undefined) {
    const folder = dataFolder();
    mkdirSync(/* turbopackIgnore: true */ folder, { recursive: true });
    held.tinewiseDatabase = openDatabase(join(/* turbopackIgnore: true */ folder, 'tinewise.db'));
  }
  return held.tinewiseDatabase;
}

/**
 * The site as it stands, with its ids resolved, or null when there is none yet. Changed only when the revision has
 * risen, by whichever process. Waits for a request, so that no page is ever built ahead with yesterday's site.
 */
export async function siteSnapshot(): Promise<SiteSnapshot | null> {
  await connection();
  held.tinewiseSnapshot = renewSnapshot(serverDatabase(), held.tinewiseSnapshot ?? null);
  return held.tinewiseSnapshot;
}
