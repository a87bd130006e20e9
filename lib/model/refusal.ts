/** What the place wanted instead of what came. lib/words turns it into the sentence a person reads. */
export type Expected =
  | { is: 'json' }
  | { is: 'type'; type: string }
  | { is: 'present' }
  | { is: 'known-key'; nearest: string | null }
  | { is: 'one-of'; values: readonly (string | number)[] }
  | { is: 'above'; limit: number }
  | { is: 'at-least'; limit: number }
  | { is: 'at-most'; limit: number }
  | { is: 'length'; from: number; to: number | null }
  | { is: 'whole-number' }
  | { is: 'size-or-none' }
  | { is: 'time' }
  | { is: 'text'; rule: string }
  | { is: 'once' }
  | { is: 'unique'; firstAt: string }
  | { is: 'id-in'; list: string; nearest: string | null }
  | { is: 'frames-for-bays'; bays: number }
  | { is: 'higher-than-level-below'; field: 'level' | 'beamTopMm'; below: number }
  | { is: 'floor-at-zero' }
  | { is: 'beam-above-floor' }
  | { is: 'even-positions' }
  | { is: 'both-or-neither'; other: string }
  | { is: 'at-least-field'; field: string; value: number }
  | { is: 'at-most-field'; field: string; value: number };

/** One fault in what was read: where (JSON path), what came (as JSON, shortened), what was expected. */
export type Refusal = { path: string; came: string; expected: Expected };

/** `$.runs[3].bays[0].clearWidthMm` */
export function jsonPath(keys: readonly PropertyKey[]): string {
  return keys.reduce<string>((path, key) => {
    if (typeof key === 'number') return `${path}[${key}]`;
    const name = String(key);
    return /^[A-Za-z_][A-Za-z0-9_]*$/.test(name) ? `${path}.${name}` : `${path}[${JSON.stringify(name)}]`;
  }, '$');
}

/** What came, as JSON and short enough for a line; "nothing" where there was nothing. */
export function cameAs(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'number' && !Number.isFinite(value)) return String(value);
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) {
    const keys = Object.keys(value);
    return keys.length === 0
      ? 'an empty object'
      : `an object with ${keys.slice(0, 4).join(', ')}${keys.length > 4 ? ', ...' : ''}`;
  }
  const text = JSON.stringify(value);
  return text.length > 80 ? `${text.slice(0, 77)}..."` : text;
}

/** The entry nearest to what came (edit distance at most a third of its length, two at least), or null. */
export function nearestTo(came: string, entries: Iterable<string>): string | null {
  let best: string | null = null;
  let bestDistance = Math.max(2, Math.floor(came.length / 3)) + 1;
  for (const entry of entries) {
    if (Math.abs(entry.length - came.length) >= bestDistance) continue;
    const distance = editDistance(came, entry);
    if (distance < bestDistance) [best, bestDistance] = [entry, distance];
  }
  return best;
}

/** Levenshtein distance: insertions, deletions and replacements that turn one text into the other. */
function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const replaced = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(replaced, row[j]! + 1, next[j - 1]! + 1));
    }
    row = next;
  }
  return row[b.length]!;
}
