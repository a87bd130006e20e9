import type { Bay, Frame } from '../model/racking.ts';
import {
  bayNumber,
  type LabelPattern,
  type LabelPiece,
  lettersBelowOne,
  readPattern,
  writeBay,
  writeLabel,
} from './label-pattern.ts';
import { refuse, type Shaped } from './shape-fault.ts';

/** The bays of a run with ids after a pattern: locations as it says, each bay as run and bay. */
export function labelBays(runId: string, bays: readonly Bay[], labels: LabelPattern): Shaped<Bay[]> {
  const read = readLabels(labels, lowestLevel(bays));
  if (!read.ok) return read;
  const value = bays.map((bay, at) =>
    labelBay(runId, bay, labels, read.value, bayNumber(labels, at, bays.length)),
  );
  return { ok: true, value };
}

/** One bay with ids after a pattern, in which the bay is called `bayName`. */
export function labelBay(
  runId: string,
  bay: Bay,
  labels: LabelPattern,
  pieces: readonly LabelPiece[],
  bayName: number | string,
): Bay {
  return {
    ...bay,
    id: `${runId}-${writeBay(pieces, bayName)}`,
    levels: bay.levels.map((level) => {
      const perRow = level.locations.length / level.depthPositions;
      const locations = level.locations.map((_, at) => {
        const row = at < perRow ? 1 : 2;
        const column = row === 1 ? at : at - perRow;
        return writeLabel(labels, pieces, { bay: bayName, level: level.level, row, column, perRow });
      });
      return { ...level, locations };
    }),
  };
}

/** The pieces of a pattern that can name levels from `lowest` up. */
export function readLabels(labels: LabelPattern, lowest: number): Shaped<LabelPiece[]> {
  const read = readPattern(labels.pattern);
  if (!read.ok) return refuse('labels.pattern', read.fault);
  const part = lettersBelowOne(labels, read.pieces, lowest);
  if (part !== null) return refuse('labels.pattern', { is: 'letters-below-one', part });
  return { ok: true, value: read.pieces };
}

export function lowestLevel(bays: readonly Bay[]): number {
  return Math.min(...bays.map((bay) => bay.levels[0]?.level ?? 0));
}

/** Frames counted from the left: `A1-L-F00` stands left of the first bay. */
export function frameId(runId: string, at: number): string {
  return `${runId}-F${String(at).padStart(2, '0')}`;
}

/** An id for a frame that is put between others: the first free one after `at`. */
export function freeFrameId(runId: string, frames: readonly Frame[]): string {
  const taken = new Set(frames.map((frame) => frame.id));
  let at = frames.length;
  while (taken.has(frameId(runId, at))) at += 1;
  return frameId(runId, at);
}
