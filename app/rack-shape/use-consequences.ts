'use client';

import { useEffect, useRef, useState } from 'react';
import type { Consequences, ConsequencesAsked } from '@/lib/rack-shape/consequences.ts';
import { RackShapeClient } from '@/workers/rack-shape.client.ts';

export type Weighed =
  | { state: 'none' }
  | { state: 'busy' }
  | { state: 'ready'; consequences: Consequences }
  | { state: 'failed'; why: string };

/** What a change comes to, reckoned in a worker; the newest question counts. null asks nothing. */
export function useConsequences(asked: ConsequencesAsked | null): Weighed {
  const client = useRef<RackShapeClient | null>(null);
  const [weighed, setWeighed] = useState<{ of: ConsequencesAsked | null; is: Weighed }>({
    of: null,
    is: { state: 'none' },
  });
  useEffect(() => {
    if (asked === null) return;
    client.current ??= new RackShapeClient();
    let wanted = true;
    client.current.weigh(asked).then(
      (consequences) => {
        if (wanted && consequences !== null) setWeighed({ of: asked, is: { state: 'ready', consequences } });
      },
      (error: unknown) => wanted && setWeighed({ of: asked, is: { state: 'failed', why: String(error) } }),
    );
    return () => {
      wanted = false;
    };
  }, [asked]);
  useEffect(
    () => () => {
      client.current?.dispose();
      client.current = null;
    },
    [],
  );
  if (asked === null) return { state: 'none' };
  return weighed.of === asked ? weighed.is : { state: 'busy' };
}
