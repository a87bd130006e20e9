import 'server-only';
import { createHash } from 'node:crypto';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import { readChangesAfter } from '@/lib/store/change-log.ts';
import type { Database } from '@/lib/store/open-database.ts';
import type { SiteSnapshot } from '@/lib/store/server-database.ts';

export type SiteText = { revision: number; tag: string; zipped: Uint8Array<ArrayBuffer> };

/** A browser puts this many changes into the site that it holds; beyond, it gets the site anew. */
export const MOST_CHANGES_SENT = 500;

const zip = promisify(gzip);
let held: { revision: number; text: Promise<SiteText> } | null = null;

/**
 * The site as a zipped JSON text. Written once and kept until MOST_CHANGES_SENT changes or another site have come after
 * it: writing 200 000 locations takes longer than anybody should wait for somebody else's change.
 */
export function siteText(db: Database, snapshot: SiteSnapshot): Promise<SiteText> {
  if (held !== null && !isTooOld(db, held.revision, snapshot.revision)) return held.text;
  const text = writeText(snapshot);
  held = { revision: snapshot.revision, text };
  text.catch(() => {
    held = null;
  });
  return text;
}

function isTooOld(db: Database, revision: number, now: number): boolean {
  if (revision === now) return false;
  const since = readChangesAfter(db, revision, MOST_CHANGES_SENT);
  return since === null || since.at(-1)?.id !== now || since.some(({ wholeSite }) => wholeSite);
}

async function writeText({ revision, site }: SiteSnapshot): Promise<SiteText> {
  const text = JSON.stringify({ revision, site });
  const zipped = new Uint8Array(await zip(text, { level: 4 }));
  // the revision alone would take two databases for one, when the folder behind the server is exchanged
  const hash = createHash('sha256').update(zipped).digest('base64url').slice(0, 16);
  return { revision, zipped, tag: `"${revision}-${hash}"` };
}
