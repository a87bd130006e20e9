const compare = new Intl.Collator('en', { numeric: true, sensitivity: 'variant' }).compare;

/** Orders names as people do: A2 before A10. */
export function naturalOrder(a: string, b: string): number {
  return compare(a, b) || (a < b ? -1 : a > b ? 1 : 0);
}

/** Something that stands in a row of things: at a stated number counted from 1, or not said where. */
export type Placed = { id: string; order: number | null; row: number };

export type OrderFault =
  | { fault: 'taken'; row: number; firstRow: number | null }
  | { fault: 'gap'; row: number; next: number }
  | { fault: 'unsaid'; row: number };

/**
 * In which order do things stand, those that stood there already and those that rows speak of?
 *
 * By the stated numbers, which must be 1, 2, 3, ... without a gap or a double; what stood there keeps its number unless
 * a row gives it another. Where no row gives a number and something is new: by name, provided that what stood there
 * already stands in the order of its names (`byName` then says that names decided). Otherwise the order is unsaid.
 */
export function orderOf(
  standing: readonly string[],
  rows: readonly Placed[],
): { ids: string[]; faults: OrderFault[]; byName: boolean } {
  const spoken = new Map(rows.map((entry) => [entry.id, entry]));
  const known = new Set(standing);
  const fresh = rows.filter((entry) => !known.has(entry.id));
  if (rows.every((entry) => entry.order === null)) {
    if (fresh.length === 0) return { ids: [...standing], faults: [], byName: false };
    const inOrder = standing.every((id, at) => at === 0 || naturalOrder(standing[at - 1]!, id) < 0);
    if (!inOrder) {
      return { ids: [], faults: fresh.map(({ row }) => ({ fault: 'unsaid', row })), byName: false };
    }
    const ids = [...standing, ...fresh.map((entry) => entry.id)].sort(naturalOrder);
    return { ids, faults: [], byName: ids.length > 1 };
  }
  const unsaid = fresh.filter((entry) => entry.order === null);
  if (unsaid.length > 0)
    return { ids: [], faults: unsaid.map(({ row }) => ({ fault: 'unsaid', row })), byName: false };
  const all = [
    ...standing.map((id, at) => ({
      id,
      at: spoken.get(id)?.order ?? at + 1,
      row: spoken.get(id)?.row ?? null,
    })),
  ];
  all.push(...fresh.map((entry) => ({ id: entry.id, at: entry.order!, row: entry.row })));
  // Among two at one number the one without a row comes first, so that a row is named.
  all.sort((a, b) => a.at - b.at || (a.row ?? -1) - (b.row ?? -1));
  const fallback = rows[0]!.row;
  const faults = all.flatMap((entry, i): OrderFault[] => {
    const before = all[i - 1];
    if (before !== undefined && before.at === entry.at) {
      return [{ fault: 'taken', row: entry.row ?? fallback, firstRow: before.row }];
    }
    const next = (before?.at ?? 0) + 1;
    return entry.at === next ? [] : [{ fault: 'gap', row: entry.row ?? fallback, next }];
  });
  return { ids: all.map((entry) => entry.id), faults, byName: false };
}
