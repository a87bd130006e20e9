import type { Run } from '../model/racking.ts';
import type { LabelPattern } from './label-pattern.ts';
import { frameId, labelBays } from './label-run.ts';
import { idRefusals, locationsOf, type Neighbours } from './neighbours.ts';
import type { RunDraft } from './run-draft.ts';
import { refuse, type Shaped } from './shape-fault.ts';

export type NewName = { id: string; aisleId: string; labels: LabelPattern };

/** The run under other ids, its locations with what stands in them: the draft knows which was which. */
export function renumberRun(draft: RunDraft, name: NewName, neighbours: Neighbours): Shaped<RunDraft> {
  const named = nameRun(draft.run, name, neighbours);
  if (!named.ok) return named;
  const before = locationsOf(draft.run);
  const now = locationsOf(named.value);
  const locations = new Map<string, string>();
  for (const [at, id] of now.entries()) {
    const saved = draft.locations.get(before[at]!);
    if (saved !== undefined) locations.set(id, saved);
  }
  return { ok: true, value: { ...draft, run: named.value, locations } };
}

/**
 * A new run of the same shape in another place, under ids of its own. Its steel is new and so sound; nothing stands in
 * it; where it stands on the floor plan is not known.
 */
export function copyRun(run: Run, name: NewName, neighbours: Neighbours): Shaped<Run> {
  const named = nameRun(run, name, neighbours);
  if (!named.ok) return named;
  return {
    ok: true,
    value: {
      ...named.value,
      frames: named.value.frames.map((frame) => ({ ...frame, condition: 'sound' })),
      bays: named.value.bays.map((bay) => ({
        ...bay,
        levels: bay.levels.map((level) => ({ ...level, condition: 'sound' })),
      })),
      at: null,
    },
  };
}

function nameRun(run: Run, { id, aisleId, labels }: NewName, neighbours: Neighbours): Shaped<Run> {
  if (!neighbours.aisleIds.has(aisleId)) return refuse('aisleId', { is: 'no-such', what: 'aisle' });
  const bays = labelBays(id, run.bays, labels);
  if (!bays.ok) return bays;
  const frames = run.frames.map((frame, at) => ({ ...frame, id: frameId(id, at) }));
  const named = { ...run, id, aisleId, frames, bays: bays.value };
  const refusals = idRefusals(named, neighbours);
  return refusals.length > 0 ? { ok: false, refusals } : { ok: true, value: named };
}
