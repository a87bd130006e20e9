'use client';

import { useEffect, useState } from 'react';
import { AskedRefusals } from '@/app/_parts/asked-refusals.tsx';
import { EmptyState } from '@/app/_parts/empty-state.tsx';
import { useSite } from '@/app/_parts/use-site.ts';
import type { Refusal } from '@/lib/model/refusal.ts';
import styles from './overview.module.css';
import { OverviewDesk } from './overview-desk.tsx';
import { type OverviewQuery, writeOverviewQuery } from './overview-query.ts';

/** The overview: fetches the site once, and keeps the address saying what is looked at. */
export function OverviewView({
  siteName,
  revision,
  initial,
  refused,
}: {
  siteName: string;
  revision: number;
  initial: OverviewQuery;
  refused: readonly Refusal[];
}) {
  const site = useSite(revision);
  const [query, setQuery] = useState(initial);
  const address = writeOverviewQuery(query);
  useEffect(() => {
    const wanted = address === '' ? '/' : `/?${address}`;
    if (window.location.pathname + window.location.search !== wanted)
      window.history.replaceState(null, '', wanted);
  }, [address]);

  return (
    <div className={styles.screen}>
      <h1>{siteName}</h1>
      <AskedRefusals title="This part of the address could not be read and was left out" refused={refused} />
      {site.state === 'ready' ? (
        <OverviewDesk index={site.index} query={query} onChange={(part) => setQuery({ ...query, ...part })} />
      ) : site.state === 'loading' ? (
        <p className={styles.loading} role="status">
          Fetching {siteName}…
        </p>
      ) : (
        <EmptyState title="The site could not be fetched">
          <p>{site.why}. Check the connection to the server and load this page again.</p>
        </EmptyState>
      )}
    </div>
  );
}
