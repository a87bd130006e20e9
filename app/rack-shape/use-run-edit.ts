'use client';

import { useCallback, useMemo } from 'react';
import { readChange, type TypedChange } from '@/app/rack-shape/typed-change.ts';
import { useSettled } from '@/app/rack-shape/use-settled.ts';
import type { Run } from '@/lib/model/racking.ts';
import type { Site } from '@/lib/model/site.ts';
import { changeRun, changeRunByAll } from '@/lib/rack-shape/change-run.ts';
import { type Neighbours, neighboursOf } from '@/lib/rack-shape/neighbours.ts';
import type { RunChange } from '@/lib/rack-shape/run-change.ts';
import { draftOf, type RunDraft } from '@/lib/rack-shape/run-draft.ts';
import type { ShapeRefusal } from '@/lib/rack-shape/shape-fault.ts';
import { beforeAfter, strandedStock } from '@/lib/rack-shape/site-of-run.ts';

export type RunEdit = {
  /** After the changes in the list. */
  kept: RunDraft;
  /** The first change of the list that cannot be made on this run, and why. */
  stopped: { at: number; refusals: ShapeRefusal[] } | null;
  /** The change being typed: ready to be added, or what is wrong with it. */
  pending: { change: RunChange | null; refusals: ShapeRefusal[]; isAsItStands: boolean };
  /** With the change being typed, where it can be made. */
  shown: RunDraft;
};

/** A saved run with a list of changes and the one that is being typed. */
export function useRunEdit(site: Site, saved: Run, changes: readonly RunChange[], typed: TypedChange | null) {
  const neighbours = useMemo(() => neighboursOf(site, saved.id), [site, saved]);
  const listed = useMemo(() => {
    const { draft, stopped } = changeRunByAll(draftOf(saved), changes, neighbours);
    return { kept: draft, stopped };
  }, [saved, changes, neighbours]);
  const judge = useCallback(
    (of: TypedChange | null) => judgeTyped(listed.kept, of, neighbours),
    [listed, neighbours],
  );
  const settled = useSettled(typed, 150);
  const edit = useMemo((): RunEdit => ({ ...listed, ...judge(settled) }), [listed, judge, settled]);
  const sites = useMemo(
    () => (edit.shown.run === saved ? null : beforeAfter(site, saved, edit.shown)),
    [site, saved, edit.shown],
  );
  const stranded = useMemo(() => strandedStock(site, saved, edit.kept), [site, saved, edit.kept]);
  return { edit, sites, stranded, judge, isSettled: settled === typed };
}

const NOTHING: RunEdit['pending'] = { change: null, refusals: [], isAsItStands: false };

/** The change that is being typed on a draft: what it makes of it, or why it cannot be made. */
function judgeTyped(
  kept: RunDraft,
  typed: TypedChange | null,
  neighbours: Neighbours,
): Pick<RunEdit, 'pending' | 'shown'> {
  if (typed === null) return { pending: NOTHING, shown: kept };
  const read = readChange(typed);
  if (read.state === 'incomplete') return { pending: { ...NOTHING, refusals: read.refusals }, shown: kept };
  const made = changeRun(kept, read.change, neighbours);
  if (!made.ok) return { pending: { ...NOTHING, refusals: made.refusals }, shown: kept };
  if (JSON.stringify(made.value.run) === JSON.stringify(kept.run))
    return { pending: { ...NOTHING, isAsItStands: true }, shown: kept };
  return { pending: { ...NOTHING, change: read.change }, shown: made.value };
}
