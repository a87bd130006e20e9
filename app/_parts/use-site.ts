'use client';

import { useEffect, useState } from 'react';
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
    const site = readSite();
    held = { revision, site };
    site.catch(() => {
      held = null; // so that the next screen tries again
    });
  }
  return held.site;
}

async function readSite(): Promise<Held> {
  const response = await fetch('/api/site');
  if (!response.ok) throw new Error(`the server answered ${response.status}`);
  const { revision, site } = (await response.json()) as { revision: number; site: Site };
  return { revision, index: indexSite(site) };
}
