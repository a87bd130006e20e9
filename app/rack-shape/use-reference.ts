'use client';

import { useMemo, useState } from 'react';
import { DEFAULT_REFERENCE, referenceLoad } from '@/lib/audit/reference-load.ts';
import type { Load } from '@/lib/model/load.ts';
import type { Typed } from '@/lib/rack-shape/description.ts';

export type ReferenceTyped = Record<'massKg' | 'depthMm' | 'widthMm' | 'heightMm', Typed>;

/** The load that every location is tried with; the last one that could be read stays while another is typed. */
export function useReference(): {
  typed: ReferenceTyped;
  set: (part: Partial<ReferenceTyped>) => void;
  load: Load;
} {
  const [typed, setTyped] = useState<ReferenceTyped>(DEFAULT_REFERENCE);
  const [kept, setKept] = useState(DEFAULT_REFERENCE);
  const set = (part: Partial<ReferenceTyped>) => {
    const next = { ...typed, ...part };
    setTyped(next);
    const { massKg, depthMm, widthMm, heightMm } = next;
    if (
      typeof massKg === 'number' &&
      typeof depthMm === 'number' &&
      typeof widthMm === 'number' &&
      typeof heightMm === 'number'
    )
      setKept({ massKg, depthMm, widthMm, heightMm });
  };
  const load = useMemo(() => referenceLoad(kept), [kept]);
  return { typed, set, load };
}
