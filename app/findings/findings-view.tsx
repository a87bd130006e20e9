'use client';

import { useEffect, useState } from 'react';
import { AskedRefusals } from '@/app/_parts/asked-refusals.tsx';
import { EmptyState } from '@/app/_parts/empty-state.tsx';
import { useSite } from '@/app/_parts/use-site.ts';
import { FindingsDesk } from '@/app/findings/findings-desk.tsx';
import { type FindingsQuery, writeFindingsQuery } from '@/app/findings/findings-query.ts';
import type { Refusal } from '@/lib/model/refusal.ts';
import styles from './findings.module.css';

/** The findings screen: fetches the site once, and keeps the address saying what is looked at. */
export function FindingsView({
  siteName,
  revision,
  initial,
  refused,
}: {
  siteName: string;
  revision: number;
  initial: FindingsQuery;
  refused: readonly Refusal[];
}) {
  const site = useSite(revision);
  const [query, setQuery] = useState(initial);
  const address = writeFindingsQuery(query);
  useEffect(() => {
    const wanted = address === '' ? '/findings' : `/findings?${address}`;
    if (window.location.pathname + window.location.search !== wanted)
      window.history.replaceState(null, '', wanted);
  }, [address]);

  return (
    <div className={styles.screen}>
      <h1>Findings at {siteName}</h1>
      <AskedRefusals title="This part of the address could not be read and was left out" refused={refused} />
      {site.state === 'ready' ? (
        <FindingsDesk
          index={site.index}
          query={query}
          onChange={(part) => setQuery((before) => ({ ...before, ...part }))}
        />
      ) : site.state === 'loading' ? (
        <p role="status">Fetching {siteName}…</p>
      ) : (
        <EmptyState title="The site could not be fetched">
          <p>{site.why}. Check the connection to the server and load this page again.</p>
        </EmptyState>
      )}
    </div>
  );
}
