'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import type { Audit } from '@/lib/audit/audit-site.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import { AuditClient } from '@/workers/audit.client.ts';

export type AuditWork =
  | { state: 'rest' }
  | { state: 'busy'; done: number }
  | { state: 'stopped' }
  | { state: 'failed'; why: string };

/** Audits the site in a worker, again whenever the time asked about changes. The last answer stays until the next one. */
export function useAudit(index: SiteIndex, asOf: string | null) {
  const client = useRef<AuditClient | null>(null);
  const [audit, setAudit] = useState<Audit | null>(null);
  const [work, setWork] = useState<AuditWork>({ state: 'busy', done: 0 });
  const [turn, setTurn] = useState(0);

  useEffect(
    () => () => {
      client.current?.dispose();
      client.current = null;
    },
    [],
  );

  // biome-ignore lint/correctness/useExhaustiveDependencies: a new turn asks the same again
  useEffect(() => {
    let wanted = true;
    setWork({ state: 'busy', done: 0 });
    client.current ??= new AuditClient();
    client.current
      .audit(index.site, { asOf }, (done) => wanted && setWork({ state: 'busy', done }))
      .then(
        (reply) => {
          if (!wanted || reply.kind === 'superseded') return;
          setAudit(reply.audit);
          setWork({ state: 'rest' });
        },
        (error: unknown) => wanted && setWork({ state: 'failed', why: String(error) }),
      );
    return () => {
      wanted = false;
    };
  }, [index, asOf, turn]);

  const stop = useCallback(() => {
    client.current?.dispose();
    client.current = null;
    setWork({ state: 'stopped' });
  }, []);
  const again = useCallback(() => setTurn((before) => before + 1), []);
  return { audit, work, stop, again };
}
