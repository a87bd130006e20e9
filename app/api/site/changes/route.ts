import type { NextRequest } from 'next/server';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { MOST_CHANGES_SENT } from '@/app/api/site/site-text.ts';
import type { FactChange } from '@/lib/model/change.ts';
import { readChangesAfter } from '@/lib/store/change-log.ts';
import { readRevision } from '@/lib/store/read-site.ts';
import { serverDatabase } from '@/lib/store/server-database.ts';

/** `null`: too much has changed, or the whole site: fetch it anew. */
export type SiteChanges = { revision: number; changes: readonly FactChange[] | null };

/** What has been changed after the revision `since`, for whoever holds the site as it stood then. */
export async function GET(request: NextRequest): Promise<Response> {
  await requirePermission('read');
  const db = serverDatabase();
  const revision = readRevision(db);
  const since = Number(request.nextUrl.searchParams.get('since') ?? Number.NaN);
  const answer: SiteChanges = { revision, changes: changesAfter(since) };
  return Response.json(answer, { headers: { 'cache-control': 'no-store' } });

  function changesAfter(from: number): FactChange[] | null {
    if (!Number.isSafeInteger(from) || from < 0 || from > revision) return null;
    const rows = readChangesAfter(db, from, MOST_CHANGES_SENT);
    if (rows === null || rows.some(({ wholeSite }) => wholeSite)) return null;
    return rows.map(({ noun, subject, before, after, ahead }) => ({ noun, subject, before, after, ahead }));
  }
}
