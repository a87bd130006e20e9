import type { Metadata } from 'next';
import Link from 'next/link';
import { SavedLine } from '@/app/_entry/saved-line.tsx';
import { Allowed } from '@/app/_parts/allowed.tsx';
import { AskedRefusals } from '@/app/_parts/asked-refusals.tsx';
import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { ListLinks } from '@/app/_parts/list-links.tsx';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { readUnits } from '@/app/_parts/read-units.ts';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { listLoads, readLoadsAsk } from '@/app/loads/list-loads.ts';
import { LoadsForm } from '@/app/loads/loads-form.tsx';
import { LoadsPages } from '@/app/loads/loads-pages.tsx';
import { LoadsTable } from '@/app/loads/loads-table.tsx';
import { siteSnapshot } from '@/lib/store/server-database.ts';

export const metadata: Metadata = { title: 'Loads' };

/** All loads, a page at a time, found, narrowed and sorted by the server: a list of any length stays light. */
export default async function LoadsPage({ searchParams }: { searchParams: Promise<RawQuery> }) {
  await requirePermission('read');
  const [snapshot, raw, units] = await Promise.all([siteSnapshot(), searchParams, readUnits()]);
  if (snapshot === null) return <NoSite />;
  const { ask, refused } = readLoadsAsk(raw);
  const page = listLoads(snapshot.index, ask);
  return (
    <div className="stack">
      <h1>Loads</h1>
      <SavedLine raw={raw} />
      <div className="row no-print">
        <Allowed what="change-loads">
          <Link href="/loads/new" className="button">
            Add a load
          </Link>
        </Allowed>
        <ListLinks list="loads" />
      </div>
      <LoadsForm key={JSON.stringify(ask)} ask={ask} />
      <AskedRefusals title="Part of the address could not be read and was left out" refused={refused} />
      <LoadsTable page={page} ask={ask} units={units} />
      <LoadsPages page={page} ask={ask} />
    </div>
  );
}
