export type Sorting = { column: string; direction: 'up' | 'down' } | null;

type Sortable = { cells: Record<string, { sort: string | number | null } | undefined> };

const byWords = new Intl.Collator('en', { numeric: true }).compare;

/** Rows in the order asked; what is not known comes last either way. No sorting: as they came. */
export function sortRows<T extends Sortable>(rows: readonly T[], sorting: Sorting): readonly T[] {
  if (sorting === null) return rows;
  const sign = sorting.direction === 'up' ? 1 : -1;
  return rows.toSorted((one, other) => {
    const a = one.cells[sorting.column]?.sort ?? null;
    const b = other.cells[sorting.column]?.sort ?? null;
    if (a === null || b === null) return a === b ? 0 : a === null ? 1 : -1;
    if (typeof a === 'number' && typeof b === 'number') return sign * (a - b);
    return sign * byWords(String(a), String(b));
  });
}
