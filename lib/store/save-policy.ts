import { isDeepStrictEqual } from 'node:util';
import { eq } from 'drizzle-orm';
import type { SitePolicy } from '../model/policy.ts';
import { readSite as acceptSite } from '../model/site-file.ts';
import { type BasedOn, changeSite, conflictOf, partToChange, refusedFor, type Saved } from './change-site.ts';
import type { ChangeWriter } from './change-writer.ts';
import type { Database } from './open-database.ts';
import { readRevision } from './read-site.ts';
import { type Actor, insertPolicy } from './rows/policy.ts';
import { policyValues, siteTable } from './tables/site.ts';

/**
 * Makes this the site's own policy. Only the values that differ are written, each with its row in the change log, so
 * that every value keeps who set it; a value that is left out goes back to its default. A conflict is about the one
 * value that somebody else has set since `basedOn`.
 */
export function savePolicy(db: Database, policy: SitePolicy, actor: Actor, basedOn: BasedOn = null): Saved {
  return changeSite(db, actor, (log) => putPolicy(log, policy, basedOn));
}

export function saveSiteName(db: Database, name: string, actor: Actor, basedOn: BasedOn = null): Saved {
  return changeSite(db, actor, (log) => putSiteName(log, name, basedOn));
}

/** Part of a transaction of changeSite. */
export function putPolicy(log: ChangeWriter, policy: SitePolicy, basedOn: BasedOn): Saved {
  const { db } = log;
  const part = partToChange(db, []);
  const reading = acceptSite({ ...part, site: { ...part.site, policy } });
  if (!reading.ok) return reading;
  const old: Record<string, unknown> = part.site.policy;
  const own: Record<string, unknown> = reading.site.site.policy;
  for (const key of new Set([...Object.keys(old), ...Object.keys(own)])) {
    const [before, after] = [old[key] ?? null, own[key] ?? null];
    if (isDeepStrictEqual(before, after)) continue;
    const conflict = conflictOf(db, basedOn, { noun: 'policy', subject: key, theirs: before });
    if (conflict !== null) return refusedFor(conflict);
    db.delete(policyValues).where(eq(policyValues.key, key)).run();
    if (after !== null) insertPolicy(db, { [key]: after }, log.actor);
    log.record({ noun: 'policy', subject: key, before, after });
  }
  return { ok: true, revision: readRevision(db) };
}

/** Part of a transaction of changeSite. */
export function putSiteName(log: ChangeWriter, name: string, basedOn: BasedOn): Saved {
  const { db } = log;
  const part = partToChange(db, []);
  const reading = acceptSite({ ...part, site: { ...part.site, name } });
  if (!reading.ok) return reading;
  const before = part.site.name;
  if (before === name) return { ok: true, revision: readRevision(db) };
  const conflict = conflictOf(db, basedOn, { noun: 'site', subject: 'name', theirs: before });
  if (conflict !== null) return refusedFor(conflict);
  db.update(siteTable).set({ name }).run();
  return { ok: true, revision: log.record({ noun: 'site', subject: 'name', before, after: name }) };
}
