import type { Metadata } from 'next';
import Link from 'next/link';
import { SavedLine } from '@/app/_entry/saved-line.tsx';
import { Allowed } from '@/app/_parts/allowed.tsx';
import { EmptyState } from '@/app/_parts/empty-state.tsx';
import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { ListLinks } from '@/app/_parts/list-links.tsx';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { readUnits } from '@/app/_parts/read-units.ts';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { TruckList } from '@/app/trucks/truck-list.tsx';
import { siteSnapshot } from '@/lib/store/server-database.ts';

export const metadata: Metadata = { title: 'Trucks' };

export default async function TrucksPage({ searchParams }: { searchParams: Promise<RawQuery> }) {
  await requirePermission('read');
  const [snapshot, units, raw] = await Promise.all([siteSnapshot(), readUnits(), searchParams]);
  if (snapshot === null) return <NoSite />;
  const nowIso = new Date().toISOString();
  return (
    <div className="stack">
      <h1>Trucks</h1>
      <SavedLine raw={raw} />
      <div className="row no-print">
        <Allowed what="change-trucks">
          <Link href="/trucks/new" className="button">
            Add a truck
          </Link>
        </Allowed>
        <ListLinks list="trucks" />
      </div>
      {snapshot.site.trucks.length === 0 ? (
        <EmptyState title="This site has no trucks">
          <p>Read in a site file that lists them, each with its capacity plate.</p>
        </EmptyState>
      ) : (
        <TruckList index={snapshot.index} nowIso={nowIso} units={units} />
      )}
    </div>
  );
}
