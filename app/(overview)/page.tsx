import type { Metadata } from 'next';
import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { siteSnapshot } from '@/lib/store/server-database.ts';
import { readOverviewQuery, writeOverviewQuery } from './overview-query.ts';
import { OverviewView } from './overview-view.tsx';

export const metadata: Metadata = { title: { absolute: 'Overview · Tinewise' } };

/** The whole site at a glance: every location a cell, the worst places listed. */
export default async function OverviewPage({ searchParams }: { searchParams: Promise<RawQuery> }) {
  await requirePermission('read');
  const [snapshot, raw] = await Promise.all([siteSnapshot(), searchParams]);
  if (snapshot === null) return <NoSite />;
  const { query, refused } = readOverviewQuery(raw);
  return (
    <OverviewView
      key={writeOverviewQuery(query)}
      siteName={snapshot.site.site.name}
      revision={snapshot.revision}
      initial={query}
      refused={refused}
    />
  );
}
