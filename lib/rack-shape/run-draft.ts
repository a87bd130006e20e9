import type { Run } from '../model/racking.ts';
import { locationsOf } from './neighbours.ts';

/**
 * A run while it is being changed, with where each of its parts stood in the run as it is saved. `bays`, `frames`:
 * by place in the draft, the place in the saved run or null for new steel. `locations`: id in the draft to saved id;
 * a location that is new has no entry. A pallet stays in its location whatever that is called.
 */
export type RunDraft = {
  run: Run;
  bays: readonly (number | null)[];
  frames: readonly (number | null)[];
  locations: ReadonlyMap<string, string>;
};

/** The draft of a saved run in which nothing has been changed. */
export function draftOf(run: Run): RunDraft {
  return {
    run,
    bays: run.bays.map((_, at) => at),
    frames: run.frames.map((_, at) => at),
    locations: new Map(locationsOf(run).map((id) => [id, id])),
  };
}

/** The draft of a run that is all new. */
export function newDraft(run: Run): RunDraft {
  return {
    run,
    bays: run.bays.map(() => null),
    frames: run.frames.map(() => null),
    locations: new Map(),
  };
}

/** How the locations of a saved run move: those with another id now, and those that are gone. */
export type Moves = { renamed: { from: string; to: string }[]; gone: string[] };

export function movesOf(saved: Run, draft: RunDraft): Moves {
  const stay = new Set(draft.locations.values());
  return {
    renamed: [...draft.locations].flatMap(([to, from]) => (from === to ? [] : [{ from, to }])),
    gone: locationsOf(saved).filter((id) => !stay.has(id)),
  };
}
