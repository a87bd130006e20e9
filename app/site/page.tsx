import type { Metadata } from 'next';
import Link from 'next/link';
import { SavedLine } from '@/app/_entry/saved-line.tsx';
import { Allowed } from '@/app/_parts/allowed.tsx';
import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { readUnits } from '@/app/_parts/read-units.ts';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { ChangeLog } from '@/app/site/change-log.tsx';
import { ImportForm } from '@/app/site/import-form.tsx';
import { PolicyTable } from '@/app/site/policy-table.tsx';
import { SiteCounts } from '@/app/site/site-counts.tsx';
import { readChanges } from '@/lib/store/change-log.ts';
import { readPolicyAuthors } from '@/lib/store/rows/policy.ts';
import { serverDatabase, siteSnapshot } from '@/lib/store/server-database.ts';
import styles from './site.module.css';

export const metadata: Metadata = { title: 'Site' };

const CHANGES_SHOWN = 20;

export default async function SitePage({ searchParams }: { searchParams: Promise<RawQuery> }) {
  await requirePermission('read');
  const snapshot = await siteSnapshot();
  const db = serverDatabase();
  const [units, raw] = await Promise.all([readUnits(), searchParams]);
  return (
    <div className="stack">
      <h1>{snapshot === null ? 'No site yet' : snapshot.site.site.name}</h1>
      <SavedLine raw={raw} />
      {snapshot === null ? null : <SiteCounts index={snapshot.index} revision={snapshot.revision} />}
      <div className={styles.files}>
        <section className="sheet stack" aria-labelledby="import-heading">
          <h2 id="import-heading">Read in a site file</h2>
          <p className="soft">
            The file takes the place of{' '}
            {snapshot === null ? 'the empty site' : 'everything the site holds now'}, all of it or nothing.
            The change log stays.
          </p>
          <Allowed what="import-site">
            <ImportForm />
          </Allowed>
        </section>
        {snapshot === null ? null : (
          <section className="sheet stack" aria-labelledby="download-heading">
            <h2 id="download-heading">Keep a copy</h2>
            <p className="soft">
              One JSON file with every fact: racks, trucks, loads, stock, checks and policy.
            </p>
            <a className="button" href="/site/file" download>
              Download the site file
            </a>
            <p>
              List by list: <Link href="/export">export lists</Link> or{' '}
              <Link href="/import">read lists in</Link>.
            </p>
          </section>
        )}
      </div>
      {snapshot === null ? null : (
        <PolicyTable own={snapshot.site.site.policy} authors={readPolicyAuthors(db)} units={units}>
          <Allowed what="set-policy">
            <div className="row">
              <Link href="/site/policy" className="button">
                Change the policy
              </Link>
            </div>
          </Allowed>
        </PolicyTable>
      )}
      <ChangeLog changes={readChanges(db, { limit: CHANGES_SHOWN })} />
    </div>
  );
}
