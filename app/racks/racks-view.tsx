'use client';

import { useEffect, useState } from 'react';
import { AskedRefusals } from '@/app/_parts/asked-refusals.tsx';
import { EmptyState } from '@/app/_parts/empty-state.tsx';
import { useSite } from '@/app/_parts/use-site.ts';
import { RacksDesk } from '@/app/racks/racks-desk.tsx';
import { type RacksQuery, writeRacksQuery } from '@/app/racks/racks-query.ts';
import type { Refusal } from '@/lib/model/refusal.ts';
import styles from './racks.module.css';

/** The racks screen: fetches the site once, and keeps the address saying what is looked at. */
export function RacksView({
  siteName,
  revision,
  initial,
  refused,
}: {
  siteName: string;
  revision: number;
  initial: RacksQuery;
  refused: readonly Refusal[];
}) {
  const site = useSite(revision);
  const [query, setQuery] = useState(initial);
  const address = writeRacksQuery(query);
  useEffect(() => {
    const wanted = address === '' ? '/racks' : `/racks?${address}`;
    if (window.location.pathname + window.location.search !== wanted)
      window.history.replaceState(null, '', wanted);
  }, [address]);

  return (
    <div className={styles.screen}>
      <h1 className="unseen">Racks of {siteName}</h1>
      <AskedRefusals title="This part of the address could not be read and was left out" refused={refused} />
      {site.state === 'ready' ? (
        <RacksDesk index={site.index} query={query} setQuery={setQuery} />
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
