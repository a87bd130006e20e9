import { isDeepStrictEqual } from 'node:util';
import { eq } from 'drizzle-orm';
import type { SitePolicy } from '../model/policy.ts';
import { readSite as acceptSite } from '../model/site-file.ts';
import { recordChange } from './change-log.ts';
import type { Database } from './open-database.ts';
import { readRevision } from './read-site.ts';
import { type Actor, insertPolicy } from './rows/policy.ts';
import { changeSite, partToChange, type Saved } from './save-entry.ts';
import { policyValues, siteTable } from './tables/site.ts';

/**
 * Makes this the site's own policy. Only the values that differ are written, each with its row in the change log, so
 * that every value keeps who set it; a value that is left out goes back to its default.
 */
export function savePolicy(db: Database, policy: SitePolicy, actor: Actor): Saved {
  return changeSite(db, () => {
    const part = partToChange(db, []);
    const reading = acceptSite({ ...part, site: { ...part.site, policy } });
    if (!reading.ok) return reading;
    const old: Record<string, unknown> = part.site.policy;
    const own: Record<string, unknown> = reading.site.site.policy;
    for (const key of new Set([...Object.keys(old), ...Object.keys(own)])) {
      const [before, after] = [old[key] ?? null, own[key] ?? null];
      if (isDeepStrictEqual(before, after)) continue;
      db.delete(policyValues).where(eq(policyValues.key, key)).run();
      if (after !== null) insertPolicy(db, { [key]: after }, actor);
      const kind = after === null ? 'remove' : before === null ? 'add' : 'save';
      recordChange(db, actor, { kind, noun: 'policy', subject: key, before, after });
    }
    return { ok: true, revision: readRevision(db) };
  });
}

export function saveSiteName(db: Database, name: string, actor: Actor): Saved {
  return changeSite(db, () => {
    const part = partToChange(db, []);
    const reading = acceptSite({ ...part, site: { ...part.site, name } });
    if (!reading.ok) return reading;
    if (part.site.name === name) return { ok: true, revision: readRevision(db) };
    db.update(siteTable).set({ name }).run();
    const change = {
      kind: 'save',
      noun: 'site',
      subject: 'name',
      before: part.site.name,
      after: name,
    } as const;
    return { ok: true, revision: recordChange(db, actor, change) };
  });
}
