import type { Metadata } from 'next';
import Link from 'next/link';
import { NoScript } from '@/app/_entry/no-script.tsx';
import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { groupsOf } from '@/app/loads/_entry/groups-of.ts';
import { LoadEntry } from '@/app/loads/_entry/load-entry.tsx';
import { siteSnapshot } from '@/lib/store/server-database.ts';

export const metadata: Metadata = { title: 'New load' };

/** A load to be added; `copy` names the one that it begins as. */
export default async function NewLoadPage({ searchParams }: { searchParams: Promise<RawQuery> }) {
  await requirePermission('change-loads');
  const [snapshot, raw] = await Promise.all([siteSnapshot(), searchParams]);
  if (snapshot === null) return <NoSite />;
  const { index } = snapshot;
  const copyOf = index.loads.get(String(raw.copy ?? '')) ?? null;
  return (
    <div className="stack">
      <p>
        <Link href="/loads">Loads</Link>
      </p>
      <h1>{copyOf === null ? 'A new load' : `A new load like ${copyOf.id}`}</h1>
      <NoScript />
      <LoadEntry
        saved={null}
        copyOf={copyOf}
        revision={snapshot.revision}
        palletTypes={index.site.palletTypes}
        groups={groupsOf(index.site)}
        policy={index.policy}
        isStanding={false}
      />
    </div>
  );
}
