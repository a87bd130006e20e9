import { asc } from 'drizzle-orm';
import type { SitePolicy } from '../../model/policy.ts';
import type { Database } from '../open-database.ts';
import { policyValues } from '../tables/site.ts';
import { insertAll } from './insert-all.ts';

export type Actor = { who: string; at: string };
export type PolicyValue = { key: string; changedBy: string; changedAt: string };

export function insertPolicy(db: Database, policy: SitePolicy, { who, at }: Actor): void {
  const stated = Object.entries(policy).filter(([, value]) => value !== undefined);
  insertAll(
    db,
    policyValues,
    stated.map(([key, value]) => ({ key, value: JSON.stringify(value), changedBy: who, changedAt: at })),
  );
}

export function readPolicy(db: Database): SitePolicy {
  const rows = db.select().from(policyValues).orderBy(asc(policyValues.key)).all();
  return Object.fromEntries(rows.map((row) => [row.key, JSON.parse(row.value)]));
}

/** Who set each value that is the site's own, and when. A key that is missing stands at its default. */
export function readPolicyAuthors(db: Database): PolicyValue[] {
  const rows = db.select().from(policyValues).orderBy(asc(policyValues.key)).all();
  return rows.map(({ key, changedBy, changedAt }) => ({ key, changedBy, changedAt }));
}
