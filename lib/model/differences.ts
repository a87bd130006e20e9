/** One fact that differs: where, and what stood and stands there; undefined where that side has no such place. */
export type Difference = { path: readonly string[]; before: unknown; after: unknown };

/**
 * Where do two facts differ, leaf by leaf, in the order of the fact's keys?
 *
 * Entries of a list are told apart by their `id`, levels by their `level`, so that an entry put in the middle is one
 * addition and not a change of all behind it; other lists of objects by their place, counted from 1. A list of plain
 * values is one fact. Where one side is null or missing, the other's leaves are all named.
 */
export function differences(before: unknown, after: unknown): Difference[] {
  const found: Difference[] = [];
  compare([], before, after, found);
  return found;
}

function compare(path: readonly string[], before: unknown, after: unknown, found: Difference[]): void {
  const [one, other] = [partsOf(before), partsOf(after)];
  const comparable = one !== null ? other !== null || isNothing(after) : other !== null && isNothing(before);
  if (!comparable) {
    if (!isSame(before, after)) found.push({ path, before, after });
    return;
  }
  for (const key of new Set([...(one?.keys() ?? []), ...(other?.keys() ?? [])])) {
    compare([...path, key], one?.get(key), other?.get(key), found);
  }
}

/** The named parts of an object or of a list of objects; null for a leaf. */
function partsOf(fact: unknown): Map<string, unknown> | null {
  if (typeof fact !== 'object' || fact === null) return null;
  if (!Array.isArray(fact)) return new Map(Object.entries(fact));
  if (fact.length === 0 || !fact.every((entry) => typeof entry === 'object' && entry !== null)) return null;
  const names = fact.map((entry, at) => String(entry.id ?? entry.level ?? at + 1));
  const isUnique = new Set(names).size === names.length;
  return new Map(fact.map((entry, at) => [isUnique ? names[at]! : String(at + 1), entry]));
}

function isNothing(fact: unknown): boolean {
  return fact === null || fact === undefined || (Array.isArray(fact) && fact.length === 0);
}

function isSame(before: unknown, after: unknown): boolean {
  if (isNothing(before) && isNothing(after)) return true;
  return Object.is(before, after) || JSON.stringify(before) === JSON.stringify(after);
}
