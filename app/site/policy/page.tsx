import type { Metadata } from 'next';
import Link from 'next/link';
import { NoScript } from '@/app/_entry/no-script.tsx';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { PolicyForm } from '@/app/site/policy/policy-form.tsx';
import { readPolicyAuthors } from '@/lib/store/rows/policy.ts';
import { serverDatabase, siteSnapshot } from '@/lib/store/server-database.ts';

export const metadata: Metadata = { title: 'Change the policy' };

/** Every policy value with its default, the default's source and who set it; changed only once its consequence was seen. */
export default async function PolicyPage() {
  await requirePermission('set-policy');
  const snapshot = await siteSnapshot();
  if (snapshot === null) return <NoSite />;
  return (
    <div className="stack">
      <h1>Change the policy of {snapshot.site.site.name}</h1>
      <p>
        Nothing here can raise a plate or a notice: a policy decides how careful the site is beyond them.{' '}
        <Link href="/site#policy-heading">Back to the site</Link>
      </p>
      <NoScript />
      <PolicyForm
        key={snapshot.revision}
        own={snapshot.site.site.policy}
        authors={readPolicyAuthors(serverDatabase())}
        revision={snapshot.revision}
      />
    </div>
  );
}
