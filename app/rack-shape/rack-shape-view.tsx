'use client';

import Link from 'next/link';
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { EmptyState } from '@/app/_parts/empty-state.tsx';
import { useSite } from '@/app/_parts/use-site.ts';
import { EditRunDesk, type MayChange } from '@/app/rack-shape/edit-run-desk.tsx';
import { NewRunDesk } from '@/app/rack-shape/new-run-desk.tsx';
import type { RunChange } from '@/lib/rack-shape/run-change.ts';

export type ShapeMode = { kind: 'new'; copyOf: string | null } | { kind: 'edit'; runId: string };

/** Fetches the site once and opens the desk for a new run or for one that stands. */
export function RackShapeView({
  siteName,
  revision,
  mode,
  mayChange,
}: {
  siteName: string;
  revision: number;
  mode: ShapeMode;
  mayChange: MayChange;
}) {
  const router = useRouter();
  const state = useSite(revision);
  const [begun, setBegun] = useState<readonly RunChange[]>([]);
  if (state.state === 'loading') return <p role="status">Fetching {siteName}…</p>;
  if (state.state === 'failed')
    return (
      <EmptyState title="The site could not be fetched">
        <p>{state.why}. Check the connection to the server and load this page again.</p>
      </EmptyState>
    );
  const { site } = state.index;
  if (mode.kind === 'new') {
    const copyOf = site.runs.find((run) => run.id === mode.copyOf) ?? null;
    return (
      <NewRunDesk
        key={`${state.revision} ${mode.copyOf}`}
        site={site}
        revision={state.revision}
        copyOf={copyOf}
      />
    );
  }
  const saved = site.runs.find((run) => run.id === mode.runId);
  if (saved === undefined)
    return (
      <EmptyState title={`There is no run ${mode.runId}`}>
        <p>It has another id by now, or it was taken away.</p>
        <Link className="button" href="/rack-shape">
          All runs
        </Link>
      </EmptyState>
    );
  return (
    <EditRunDesk
      key={`${state.revision} ${saved.id}`}
      site={site}
      revision={state.revision}
      saved={saved}
      mayChange={mayChange}
      begun={begun}
      onBegun={(changes) => {
        setBegun(changes);
        router.refresh();
      }}
    />
  );
}
