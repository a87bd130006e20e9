import type { Bay, Condition, Level } from '../model/racking.ts';
import { freeFrameId, labelBay, lowestLevel, readLabels } from './label-run.ts';
import { type ChangeOf, isRange } from './run-change.ts';
import type { RunDraft } from './run-draft.ts';
import { refuse, type Shaped } from './shape-fault.ts';

/**
 * A new bay like one of the run's, before the bay at `before` (the count of bays: at the end), with a new frame. It is
 * sound, holds nothing, and has the levels and capacities of the bay that it is like.
 */
export function insertBay(draft: RunDraft, change: ChangeOf<'insert-bay'>): Shaped<RunDraft> {
  const { run } = draft;
  const { before, like, clearWidthMm, name, labels } = change;
  const model = run.bays[like];
  if (model === undefined || !Number.isInteger(before) || before < 0 || before > run.bays.length)
    return refuse('range', { is: 'no-such', what: 'bay' });
  if (name.trim() === '') return refuse('name', { is: 'missing' });
  const pieces = readLabels(labels, lowestLevel([model]));
  if (!pieces.ok) return pieces;
  const sound = model.levels.map((level) => ({ ...level, condition: 'sound' as const }));
  const bay = labelBay(
    run.id,
    { ...model, clearWidthMm, levels: sound },
    labels,
    pieces.value,
    bayName(name),
  );
  const frameAt = before === 0 ? 0 : before + 1;
  const frame = {
    id: freeFrameId(run.id, run.frames),
    typeId: run.frames[before]!.typeId,
    condition: 'sound' as const,
  };
  return {
    ok: true,
    value: {
      run: {
        ...run,
        bays: run.bays.toSpliced(before, 0, bay),
        frames: run.frames.toSpliced(frameAt, 0, frame),
      },
      bays: draft.bays.toSpliced(before, 0, null),
      frames: draft.frames.toSpliced(frameAt, 0, null),
      locations: draft.locations,
    },
  };
}

/**
 * One bay as two, with a new frame between: the first `leftColumns` positions of each row stay at the left, the rest
 * stand in the right half. Locations keep their ids and their pallets. The notice of the old bay says nothing of two
 * shorter ones, so that pair capacity and bay load are not known until they are stated anew.
 */
export function splitBay(draft: RunDraft, change: ChangeOf<'split-bay'>): Shaped<RunDraft> {
  const { run } = draft;
  const { bay: at, leftMm, rightMm, leftColumns, name } = change;
  const bay = run.bays[at];
  if (bay === undefined) return refuse('range', { is: 'no-such', what: 'bay' });
  if (leftMm + rightMm > bay.clearWidthMm)
    return refuse('rightMm', { is: 'wider-than-bay', bayMm: bay.clearWidthMm });
  if (name.trim() === '') return refuse('name', { is: 'missing' });
  const half = (clearWidthMm: number, id: string, from: number, to: number): Bay => ({
    id,
    clearWidthMm,
    maxBayLoadKg: null,
    levels: bay.levels.map((level) => ({
      ...level,
      pairCapacityKg: null,
      locations: columnsOf(level, from, to),
    })),
  });
  const halves = [
    half(leftMm, bay.id, 0, leftColumns),
    half(rightMm, `${run.id}-${bayName(name)}`, leftColumns, Number.POSITIVE_INFINITY),
  ];
  const left = run.frames[at]!;
  const frame = { id: freeFrameId(run.id, run.frames), typeId: left.typeId, condition: 'sound' as const };
  return {
    ok: true,
    value: {
      run: {
        ...run,
        bays: run.bays.toSpliced(at, 1, ...halves),
        frames: run.frames.toSpliced(at + 1, 0, frame),
      },
      bays: draft.bays.toSpliced(at + 1, 0, draft.bays[at] ?? null),
      frames: draft.frames.toSpliced(at + 1, 0, null),
      locations: draft.locations,
    },
  };
}

/**
 * The run without some bays; what is left closes up. As many frames go: those at the right of the bays, or at their
 * left where the run loses its beginning. Where two frames become one the worse of their conditions stays, so that
 * a red mark is not lost with the frame beside it.
 */
export function removeBays(draft: RunDraft, { range }: ChangeOf<'remove-bays'>): Shaped<RunDraft> {
  const { run } = draft;
  if (!isRange(run, range)) return refuse('range', { is: 'no-such', what: 'bay' });
  const { first, last } = range;
  const count = last - first + 1;
  if (count === run.bays.length) return refuse('range', { is: 'last-bay' });
  const framesFrom = first === 0 ? 0 : first + 1;
  let { frames } = run;
  if (first > 0 && last < run.bays.length - 1) {
    const [kept, gone] = [frames[first]!, frames[last + 1]!];
    frames = frames.with(first, { ...kept, condition: worse(kept.condition, gone.condition) });
  }
  const bays = run.bays.toSpliced(first, count);
  const left = new Set(bays.flatMap((bay) => bay.levels.flatMap((level) => level.locations)));
  return {
    ok: true,
    value: {
      run: { ...run, bays, frames: frames.toSpliced(framesFrom, count) },
      bays: draft.bays.toSpliced(first, count),
      frames: draft.frames.toSpliced(framesFrom, count),
      locations: new Map([...draft.locations].filter(([now]) => left.has(now))),
    },
  };
}

const WORSE = ['sound', 'amber', 'red'] as const satisfies readonly Condition[];

function worse(a: Condition, b: Condition): Condition {
  return WORSE[Math.max(WORSE.indexOf(a), WORSE.indexOf(b))]!;
}

/** A whole number is written as the pattern writes bays; anything else stands as it is. */
function bayName(name: string): number | string {
  return /^\d{1,6}$/.test(name.trim()) ? Number(name) : name.trim();
}

/** The ids of some columns of a level, front row then rear row. */
function columnsOf(level: Level, from: number, to: number): string[] {
  const perRow = level.locations.length / level.depthPositions;
  return level.locations.filter((_, at) => at % perRow >= from && at % perRow < to);
}
