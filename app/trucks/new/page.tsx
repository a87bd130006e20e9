import type { Metadata } from 'next';
import Link from 'next/link';
import { NoScript } from '@/app/_entry/no-script.tsx';
import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { attachmentsOf } from '@/app/trucks/_entry/attachments-of.ts';
import { TruckEntry } from '@/app/trucks/_entry/truck-entry.tsx';
import { siteSnapshot } from '@/lib/store/server-database.ts';

export const metadata: Metadata = { title: 'New truck' };

/** A truck to be added; `copy` names the one that it begins as. */
export default async function NewTruckPage({ searchParams }: { searchParams: Promise<RawQuery> }) {
  await requirePermission('change-trucks');
  const [snapshot, raw] = await Promise.all([siteSnapshot(), searchParams]);
  if (snapshot === null) return <NoSite />;
  const copyOf = snapshot.index.trucks.get(String(raw.copy ?? '')) ?? null;
  return (
    <div className="stack">
      <p>
        <Link href="/trucks">Trucks</Link>
      </p>
      <h1>{copyOf === null ? 'A new truck' : `A new truck like ${copyOf.id}`}</h1>
      {copyOf === null ? null : (
        <p className="soft">
          Everything is copied but the id. Another truck has a plate of its own: read it there.
        </p>
      )}
      <NoScript />
      <TruckEntry
        saved={null}
        copyOf={copyOf}
        revision={snapshot.revision}
        photo={null}
        attachments={attachmentsOf(snapshot.site)}
      />
    </div>
  );
}
