import type { Metadata } from 'next';
import { EmptyState } from '@/app/_parts/empty-state.tsx';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { readUnits } from '@/app/_parts/read-units.ts';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { TruckList } from '@/app/trucks/truck-list.tsx';
import { siteSnapshot } from '@/lib/store/server-database.ts';

export const metadata: Metadata = { title: 'Trucks' };

export default async function TrucksPage() {
  await requirePermission('read');
  const [snapshot, units] = await Promise.all([siteSnapshot(), readUnits()]);
  if (snapshot === null) return <NoSite />;
  const nowIso = new Date().toISOString();
  return (
    <div className="stack">
      <h1>Trucks</h1>
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
