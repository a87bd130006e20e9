import type { RawQuery } from '@/app/_parts/lift-query.ts';

/** What the address of these screens says: a run to copy, a save that was just made, whether it was undone. */
export type ShapeQuery = { copyOf: string | null; savedRevision: number | null; isUndone: boolean };

export function readShapeQuery(raw: RawQuery): ShapeQuery {
  const copy = one(raw.copy);
  const saved = one(raw.saved);
  return {
    copyOf: copy === undefined || copy === '' ? null : copy,
    savedRevision: saved !== undefined && /^\d{1,15}$/.test(saved) ? Number(saved) : null,
    isUndone: one(raw.undone) !== undefined,
  };
}

function one(value: string | string[] | undefined): string | undefined {
  return Array.isArray(value) ? value[0] : value;
}
