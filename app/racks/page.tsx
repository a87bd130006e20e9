import type { Metadata } from 'next';
import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { readRacksQuery, writeRacksQuery } from '@/app/racks/racks-query.ts';
import { RacksView } from '@/app/racks/racks-view.tsx';
import { siteSnapshot } from '@/lib/store/server-database.ts';

export const metadata: Metadata = { title: 'Racks' };

/** One question asked of every location, looked at run by run. The address is the question: see readRacksQuery. */
export default async function RacksPage({ searchParams }: { searchParams: Promise<RawQuery> }) {
  await requirePermission('read');
  const [snapshot, raw] = await Promise.all([siteSnapshot(), searchParams]);
  if (snapshot === null) return <NoSite />;
  const { query, refused } = readRacksQuery(raw);
  return (
    <RacksView
      key={writeRacksQuery(query)}
      siteName={snapshot.site.site.name}
      revision={snapshot.revision}
      initial={query}
      refused={refused}
    />
  );
}
