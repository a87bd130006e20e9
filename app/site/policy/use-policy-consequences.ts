'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import type { Operation } from '@/lib/check/step.ts';
import { summariseLocations } from '@/lib/grid/summary.ts';
import { type VerdictShifts, verdictShifts } from '@/lib/grid/verdict-shifts.ts';
import type { SitePolicy } from '@/lib/model/policy.ts';
import type { Site } from '@/lib/model/site.ts';
import { GridClient } from '@/workers/grid.client.ts';

/** One of the questions that are asked before and after: as of now, or with checks and dates left out. */
type Asked = { operation: Operation; isNow: boolean };
export type PolicyConsequence = Asked & VerdictShifts;

export type ConsequenceWork =
  | { state: 'none' }
  | { state: 'busy'; done: number }
  | { state: 'told'; of: string; consequences: PolicyConsequence[] }
  | { state: 'failed'; why: string };

const ASKED: readonly Asked[] = (['retrieve', 'place'] as const).flatMap((operation) =>
  [true, false].map((isNow) => ({ operation, isNow })),
);

/**
 * What would a policy change of the verdicts on everything that stands, with the best truck for each? Asked of the
 * worker twice, under the policy as it stands and under the new one, at one and the same time. Asked before the site has
 * been fetched, it is worked out as soon as it has.
 */
export function usePolicyConsequences(site: Site | null) {
  const [work, setWork] = useState<ConsequenceWork>({ state: 'none' });
  const client = useRef<GridClient | null>(null);
  const turn = useRef(0);
  useEffect(() => () => client.current?.dispose(), []);

  const [wanted, setWanted] = useState<{ policy: SitePolicy; of: string } | null>(null);
  const ask = useCallback((policy: SitePolicy, of: string) => {
    setWork({ state: 'busy', done: 0 });
    setWanted({ policy, of });
  }, []);
  useEffect(() => {
    if (wanted === null || site === null) return;
    const judge = async ({ policy, of }: { policy: SitePolicy; of: string }) => {
      turn.current += 1;
      const mine = turn.current;
      client.current?.dispose();
      client.current = new GridClient();
      const grid = client.current;
      const now = new Date().toISOString();
      const bestUnder = async (facts: Site, from: number): Promise<Uint8Array[]> => {
        await grid.open(facts);
        const best: Uint8Array[] = [];
        for (const [at, { operation, isNow }] of ASKED.entries()) {
          const reply = await grid.ask({
            load: { kind: 'stored' },
            trucks: facts.trucks.map(({ id }) => id),
            context: { operation, asOf: isNow ? now : null, operator: null, stock: 'as-is', from: null },
          });
          if (reply.kind === 'superseded') return [];
          best.push(summariseLocations(reply.answer).best);
          if (mine === turn.current) setWork({ state: 'busy', done: from + (0.5 * (at + 1)) / ASKED.length });
        }
        return best;
      };
      try {
        const before = await bestUnder(site, 0);
        const after = await bestUnder({ ...site, site: { ...site.site, policy } }, 0.5);
        if (mine !== turn.current || before.length < ASKED.length || after.length < ASKED.length) return;
        const consequences = ASKED.map((asked, at) => ({
          ...asked,
          ...verdictShifts(before[at]!, after[at]!),
        }));
        setWork({ state: 'told', of, consequences });
      } catch (error) {
        if (mine === turn.current) setWork({ state: 'failed', why: String(error) });
      }
    };
    void judge(wanted);
  }, [wanted, site]);
  return { work, ask };
}
