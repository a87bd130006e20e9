import { LARGEST_NUMBER } from '../model/quantities.ts';
import type { Run } from '../model/racking.ts';
import { insertBay, removeBays, splitBay } from './change-bays.ts';
import { addLevel, changeLevelFacts, markLevel, moveBeam, removeLevel } from './change-levels.ts';
import { changeBayFacts, changeFrameType, markFrames } from './change-steel.ts';
import { MOST } from './description.ts';
import { idRefusals, locationsOf, type Neighbours } from './neighbours.ts';
import { renumberRun } from './renumber-run.ts';
import type { RunChange } from './run-change.ts';
import type { RunDraft } from './run-draft.ts';
import { refuse, type Shaped, type ShapeRefusal } from './shape-fault.ts';

/** The draft after one change, or why the change cannot be made. */
export function changeRun(draft: RunDraft, change: RunChange, neighbours: Neighbours): Shaped<RunDraft> {
  const sizes = sizeRefusals(change);
  if (sizes.length > 0) return { ok: false, refusals: sizes };
  const changed = dispatch(draft, change, neighbours);
  if (!changed.ok) return changed;
  const { run } = changed.value;
  if (run.bays.length > MOST.bays)
    return refuse('range', { is: 'out-of-range', from: 1, to: MOST.bays, of: 'count' });
  const ids = namesAnything(change) ? idRefusals(run, neighbours) : [];
  if (ids.length === 0) return changed;
  return { ok: false, refusals: ids };
}

/** The draft after a list of changes, or which of them cannot be made and why. */
export function changeRunByAll(
  draft: RunDraft,
  changes: readonly RunChange[],
  neighbours: Neighbours,
): { draft: RunDraft; stopped: { at: number; refusals: ShapeRefusal[] } | null } {
  let now = draft;
  for (const [at, change] of changes.entries()) {
    const next = changeRun(now, change, neighbours);
    if (!next.ok) return { draft: now, stopped: { at, refusals: next.refusals } };
    now = next.value;
  }
  return { draft: now, stopped: null };
}

function dispatch(draft: RunDraft, change: RunChange, neighbours: Neighbours): Shaped<RunDraft> {
  const { run } = draft;
  switch (change.kind) {
    case 'move-beam':
      return withRun(draft, moveBeam(run, change));
    case 'level-facts':
      return withRun(draft, changeLevelFacts(run, change));
    case 'add-level':
      return withRun(draft, addLevel(run, change));
    case 'remove-level':
      return withRun(draft, removeLevel(run, change));
    case 'bay-facts':
      return withRun(draft, changeBayFacts(run, change));
    case 'level-condition':
      return withRun(draft, markLevel(run, change));
    case 'frame-condition':
      return withRun(draft, markFrames(run, change));
    case 'frame-type':
      if (!neighbours.frameTypeIds.has(change.typeId))
        return refuse('typeId', { is: 'no-such', what: 'frame-type' });
      return withRun(draft, changeFrameType(run, change));
    case 'insert-bay':
      return insertBay(draft, change);
    case 'split-bay':
      return splitBay(draft, change);
    case 'remove-bays':
      return removeBays(draft, change);
    case 'renumber':
      return renumberRun(draft, change, neighbours);
    default:
      return change satisfies never;
  }
}

/** The same parts, changed: what is no longer among the locations has left the draft. */
function withRun(draft: RunDraft, run: Shaped<Run>): Shaped<RunDraft> {
  if (!run.ok) return run;
  const left = new Set(locationsOf(run.value));
  const locations = new Map([...draft.locations].filter(([now]) => left.has(now)));
  return { ok: true, value: { ...draft, run: run.value, locations } };
}

function namesAnything({ kind }: RunChange): boolean {
  return kind === 'add-level' || kind === 'insert-bay' || kind === 'split-bay' || kind === 'renumber';
}

/** Sizes are above 0 and no slip of the keyboard, as lib/model asks. */
function sizeRefusals(change: RunChange): ShapeRefusal[] {
  const stated: [string, number | null | undefined][] = [];
  const facts = 'facts' in change ? Object.entries(change.facts) : [];
  for (const [field, value] of [...Object.entries(change), ...facts]) {
    if (/(?:Mm|Kg)$/.test(field)) stated.push([field, value as number | null | undefined]);
  }
  const refusals: ShapeRefusal[] = [];
  if (change.kind === 'split-bay' && !(Number.isInteger(change.leftColumns) && change.leftColumns > 0))
    refusals.push({
      field: 'leftColumns',
      fault: { is: 'out-of-range', from: 1, to: MOST.positions, of: 'count' },
    });
  const sizes = stated.flatMap(([field, value]) => {
    if (value === null || value === undefined) return [];
    if (value > 0 && value <= LARGEST_NUMBER) return [];
    const of = field.endsWith('Kg') ? 'mass' : 'length';
    return [{ field, fault: { is: 'out-of-range', from: 0, to: LARGEST_NUMBER, of } as const }];
  });
  return [...refusals, ...sizes];
}
