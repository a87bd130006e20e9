import type { Run } from '../model/racking.ts';
import type { BayRows, RunRows } from './rack-rows.ts';
import type { RefusalBook } from './refusal-book.ts';
import { statedOr } from './stated-facts.ts';

const PARTS = [
  { key: 'id', side: 'Frame', both: null },
  { key: 'typeId', side: 'FrameType', both: 'frameType' },
  { key: 'condition', side: 'FrameCondition', both: 'frameCondition' },
] as const;
type Part = (typeof PARTS)[number];
type Said = { value: unknown; row: number; fact: string };

/**
 * The n + 1 frames of n bays. A frame between two bays is the right one of one and the left one of the next: what the
 * rows of both say of it must agree. A frame without a name gets one from its run and number.
 */
export function assembleFrames(
  run: RunRows,
  bayIds: readonly string[],
  before: Run | null,
  book: RefusalBook,
): { raw: unknown[]; locate(index: number, key: string): { row: number; fact: string | null } } {
  const bayAt = new Map((before?.bays ?? []).map((bay, at) => [bay.id, at]));
  const standingFrame = (index: number) => {
    const [left, right] = [bayAt.get(bayIds[index] ?? ''), bayAt.get(bayIds[index - 1] ?? '')];
    if (left !== undefined) return before!.frames[left];
    if (right !== undefined) return before!.frames[right + 1];
    return bayIds.length === 0 ? before?.frames[0] : undefined;
  };
  const rowsOf = (index: number) =>
    bayIds.length === 0 && index === 0 ? run.alone : run.bays.get(bayIds[index] ?? '');
  const count = bayIds.length + 1;
  const said = Array.from({ length: count }, (_, index) =>
    PARTS.map((part): Said | null => {
      const right = sideSays(rowsOf(index - 1), 'right', part);
      const left = sideSays(rowsOf(index), 'left', part);
      if (right !== null && left !== null && right.value !== left.value) {
        book.refuse(left.row, left.fact, { is: 'same-as-row', row: right.row, value: String(right.value) });
      }
      return right ?? left;
    }),
  );
  const names = new Set(said.map(([id]) => id?.value));
  for (let index = 0; index < count; index++) names.add(standingFrame(index)?.id);
  const raw = said.map((parts, index) => {
    const standing = standingFrame(index);
    const [id, typeId, condition] = PARTS.map((part, at) => parts[at]?.value ?? standing?.[part.key]);
    return { id: id ?? freshName(run.id, index, names), typeId, condition };
  });
  return {
    raw,
    locate(index, key) {
      const at = PARTS.findIndex((part) => part.key === key);
      const here = said[index]?.[at] ?? null;
      if (here !== null) return { row: here.row, fact: here.fact };
      const bay = rowsOf(index) ?? rowsOf(index - 1);
      const side = bayIds[index] === undefined && index > 0 ? 'right' : 'left';
      return { row: bay?.rows[0] ?? run.rows[0]!, fact: at < 0 ? null : `${side}${PARTS[at]!.side}` };
    },
  };
}

/** What a bay's rows say of one of its frames; what they say of both counts where the side itself is not spoken of. */
function sideSays(bay: BayRows | undefined, side: 'left' | 'right', part: Part): Said | null {
  if (bay === undefined) return null;
  for (const fact of [`${side}${part.side}`, part.both]) {
    const value = fact === null ? undefined : statedOr(bay.stated, fact, undefined);
    if (fact !== null && value !== undefined) return { value, row: bay.stated.get(fact)!.row, fact };
  }
  return null;
}

function freshName(run: string, index: number, names: Set<unknown>): string {
  let name = `${run}-f${index + 1}`;
  while (names.has(name)) name += 'x';
  names.add(name);
  return name;
}
