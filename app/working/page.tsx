import type { Metadata } from 'next';
import Link from 'next/link';
import { resolveLift } from '@/app/_parts/asked-lift.ts';
import { AskedRefusals } from '@/app/_parts/asked-refusals.tsx';
import { EmptyState } from '@/app/_parts/empty-state.tsx';
import { type RawQuery, readLiftQuery, writeLiftQuery } from '@/app/_parts/lift-query.ts';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { readUnits } from '@/app/_parts/read-units.ts';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { TruckChoice } from '@/app/working/truck-choice.tsx';
import { WorkingView } from '@/app/working/working-view.tsx';
import { siteSnapshot } from '@/lib/store/server-database.ts';

export const metadata: Metadata = { title: 'Working' };

/** One lift, whole working. The address is the question: see readLiftQuery. */
export default async function WorkingPage({ searchParams }: { searchParams: Promise<RawQuery> }) {
  await requirePermission('read');
  const [snapshot, raw, units] = await Promise.all([siteSnapshot(), searchParams, readUnits()]);
  if (snapshot === null) return <NoSite />;
  const { index } = snapshot;
  const read = readLiftQuery(raw);
  const resolved = resolveLift(index, read, new Date().toISOString());
  if (resolved.kind === 'refused') {
    return (
      <div className="stack">
        <h1>Working of a lift</h1>
        <AskedRefusals title="This lift cannot be judged as it was asked" refused={resolved.refused} />
        <EmptyState title="Ask again">
          <p>A lift needs a location, and a load that stands there, is named, or is typed in.</p>
          <Link href={`/which-truck?${writeLiftQuery(resolved.query)}`} className="button button-main">
            Ask in the form
          </Link>
          <Link href="/racks">Find the location in the racks</Link>
        </EmptyState>
      </div>
    );
  }
  const { asked, query } = resolved;
  if (asked.truck === null) return <TruckChoice index={index} asked={asked} query={query} units={units} />;
  return <WorkingView index={index} asked={asked} truck={asked.truck} query={query} units={units} />;
}
