'use client';

import { useEffect, useState } from 'react';
import { fetchJson } from '@/app/_parts/fetch-json.ts';
import type { SiteChanges } from '@/app/api/site/changes/route.ts';
import { applyToIndex } from '@/lib/model/apply-to-index.ts';
import type { Site } from '@/lib/model/site.ts';
import { indexSite, type SiteIndex } from '@/lib/model/site-index.ts';

export type SiteState =
  | { state: 'loading' }
  | { state: 'ready'; index: SiteIndex; revision: number }
  | { state: 'failed'; why: string };

type Held = { revision: number; index: SiteIndex };

let held: { revision: number; site: Promise<Held> } | null = null;

/** The site in the browser: fetched and indexed once for each revision, however many screens ask. */
export function useSite(revision: number): SiteState {
  const [state, setState] = useState<SiteState>({ state: 'loading' });
  useEffect(() => {
    let wanted = true;
    fetchSite(revision).then(
      (site) => wanted && setState({ state: 'ready', ...site }),
      (error: unknown) => wanted && setState({ state: 'failed', why: String(error) }),
    );
    return () => {
      wanted = false;
    };
  }, [revision]);
  return state;
}

function fetchSite(revision: number): Promise<Held> {
  if (held?.revision !== revision) {
    const site = readSite(held?.site ?? null, revision);
    held = { revision, site };
    site.catch(() => {
      held = null; // so that the next screen tries again
    });
  }
  return held.site;
}

/** What is held with the changes since put in; fetched whole where nothing is held or too much has changed. */
async function readSite(before: Promise<Held> | null, revision: number): Promise<Held> {
  const former = await before?.catch(() => null);
  const renewed = former ? await withChanges(former) : null;
  if (renewed !== null) return renewed;
  const fetched = await fetchWhole();
  return fetched.revision === revision ? fetched : ((await withChanges(fetched)) ?? fetchWhole());
}

async function fetchWhole(): Promise<Held> {
  const { revision, site } = await fetchJson<{ revision: number; site: Site }>('/api/site');
  return { revision, index: indexSite(site) };
}

async function withChanges(former: Held): Promise<Held | null> {
  const { revision, changes } = await fetchJson<SiteChanges>(`/api/site/changes?since=${former.revision}`);
  return changes === null ? null : { revision, index: applyToIndex(former.index, changes) };
}
