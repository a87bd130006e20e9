import type { Metadata } from 'next';
import Link from 'next/link';
import { Allowed } from '@/app/_parts/allowed.tsx';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { ImportView } from '@/app/import/import-view.tsx';
import { readKept } from '@/app/import/kept-mapping.ts';
import { mayImport } from '@/app/import/needed-permissions.ts';
import { LIST_NAMES, type ListName } from '@/lib/import/lists.ts';
import { readMappings } from '@/lib/store/import-mappings.ts';
import { serverDatabase, siteSnapshot } from '@/lib/store/server-database.ts';

export const metadata: Metadata = { title: 'Read in lists' };

export default async function ImportPage({ searchParams }: { searchParams: Promise<{ list?: string }> }) {
  const { role } = await requirePermission('read');
  const [snapshot, { list: asked }] = await Promise.all([siteSnapshot(), searchParams]);
  if (snapshot === null) return <NoSite />;
  const lists = LIST_NAMES.filter((list) => mayImport(role, list));
  return (
    <div className="stack">
      <h1>Read in lists</h1>
      <p>
        Rows from a CSV file or a spreadsheet add to {snapshot.site.site.name} and change what stands there.
        Nothing is ever taken out, and nothing is stored before you have seen what would change.{' '}
        <Link href="/export">Export lists</Link>
      </p>
      <Allowed what="import-lists">
        <ImportView
          role={role}
          lists={lists}
          asked={lists.find((list): list is ListName => list === asked) ?? null}
          kept={readKept(readMappings(serverDatabase()))}
        />
      </Allowed>
    </div>
  );
}
