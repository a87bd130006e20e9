'use client';

import { useEffect, useState } from 'react';
import { leanLoad } from '@/lib/entry/lean-load.ts';
import type { LoadConsequences } from '@/lib/entry/load-consequences.ts';
import type { Load, PalletType } from '@/lib/model/load.ts';

export type Weighed =
  | { state: 'none' }
  | { state: 'busy' }
  | { state: 'ready'; consequences: LoadConsequences }
  | { state: 'failed'; why: string };

const SETTLE_MS = 400;

/** What a change of a load comes to, asked of the server once typing stands still; the newest question counts. */
export function useLoadConsequences(load: Load | null, pallet: PalletType | null): Weighed {
  const [weighed, setWeighed] = useState<{ of: string; is: Weighed } | null>(null);
  const asked = load === null ? null : JSON.stringify(leanLoad(load, pallet));
  useEffect(() => {
    if (asked === null) return;
    const ended = new AbortController();
    const ask = async () => {
      try {
        const address = `/api/load-change?load=${encodeURIComponent(asked)}`;
        const answer = await fetch(address, { signal: ended.signal });
        if (!answer.ok) throw new Error(`the server answered ${answer.status}`);
        const consequences = (await answer.json()) as LoadConsequences;
        setWeighed({ of: asked, is: { state: 'ready', consequences } });
      } catch (error) {
        if (!ended.signal.aborted) setWeighed({ of: asked, is: { state: 'failed', why: String(error) } });
      }
    };
    const timer = setTimeout(ask, SETTLE_MS);
    return () => {
      clearTimeout(timer);
      ended.abort();
    };
  }, [asked]);
  if (asked === null) return { state: 'none' };
  return weighed?.of === asked ? weighed.is : { state: 'busy' };
}
