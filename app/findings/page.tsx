import type { Metadata } from 'next';
import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { readFindingsQuery, writeFindingsQuery } from '@/app/findings/findings-query.ts';
import { FindingsView } from '@/app/findings/findings-view.tsx';
import { siteSnapshot } from '@/lib/store/server-database.ts';

export const metadata: Metadata = { title: 'Findings' };

/** What about the whole site a person should act on. The address says what is looked at: see readFindingsQuery. */
export default async function FindingsPage({ searchParams }: { searchParams: Promise<RawQuery> }) {
  await requirePermission('read');
  const [snapshot, raw] = await Promise.all([siteSnapshot(), searchParams]);
  if (snapshot === null) return <NoSite />;
  const { query, refused } = readFindingsQuery(raw);
  return (
    <FindingsView
      key={writeFindingsQuery(query)}
      siteName={snapshot.site.site.name}
      revision={snapshot.revision}
      initial={query}
      refused={refused}
    />
  );
}
