import { applyToIndex } from '../model/apply-to-index.ts';
import type { Site } from '../model/site.ts';
import { indexSite, type SiteIndex } from '../model/site-index.ts';
import { readChangesAfter } from './change-log.ts';
import type { Database } from './open-database.ts';
import { readRevision, readSiteIn } from './read-site.ts';
import { readTransaction } from './transaction.ts';

export type SiteSnapshot = { site: Site; index: SiteIndex; revision: number };

/** Beyond this many changes reading the site anew is no slower. */
const MOST_CHANGES_APPLIED = 200;

/**
 * The site as it stands, given how it stood: the same when nothing was changed; with the changes since put in where they
 * are few; else read whole. A snapshot that was handed out is never changed.
 */
export function renewSnapshot(db: Database, held: SiteSnapshot | null): SiteSnapshot | null {
  if (held !== null && held.revision === readRevision(db)) return held;
  return readTransaction(db, () => {
    const revision = readRevision(db);
    const since = held === null ? null : readChangesAfter(db, held.revision, MOST_CHANGES_APPLIED);
    const isWhole = since === null || since.some(({ wholeSite }) => wholeSite);
    if (held !== null && since !== null && !isWhole && since.at(-1)?.id === revision) {
      const index = applyToIndex(held.index, since);
      return { site: index.site, index, revision };
    }
    const site = readSiteIn(db);
    return site && { site, revision, index: indexSite(site) };
  });
}
