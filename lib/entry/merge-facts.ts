import { differences } from '../model/differences.ts';

export type Side = 'mine' | 'theirs';

/** One field of a fact that two people have changed, or one of them. `path` leads to it from the fact. */
export type MergeField = { path: string; changedBy: 'both' | Side };

/** The fields of a truck that are decided as one: parts that only mean something together stay together. */
export const TRUCK_FIELDS: readonly string[] = [
  'name',
  'kind',
  'power',
  'maxLiftMm',
  'freeLiftMm',
  'loweredMm',
  'extendedMm',
  'reachDepth',
  'turning',
  'statedAisleMm',
  'forks',
  'fittedAttachment',
  'speeds',
  'plate.verticalLoadCentreMm',
  'plate.ratings',
  'hold',
];

export const LOAD_FIELDS: readonly string[] = [
  'name',
  'palletType',
  'items',
  'grossKg',
  'massBasis',
  'depthMm',
  'widthMm',
  'heightMm',
  'centreFromHeelMm',
  'centreHeightMm',
  'picksPerWeek',
  'group',
  'handPick',
];

/** Which fields differ from the fact as it was read, and on whose side? A field that both made alike is not asked about. */
export function fieldsToMerge<Fact>(
  fields: readonly string[],
  { base, mine, theirs }: { base: Fact; mine: Fact; theirs: Fact },
): MergeField[] {
  return fields.flatMap((path): MergeField[] => {
    const [was, my, their] = [base, mine, theirs].map((fact) => valueAt(fact, path));
    const [isMine, isTheirs] = [differ(was, my), differ(was, their)];
    if (!differ(my, their) || (!isMine && !isTheirs)) return [];
    return [{ path, changedBy: isMine && isTheirs ? 'both' : isMine ? 'mine' : 'theirs' }];
  });
}

/** Theirs, with the fields that were decided for mine put in. */
export function mergeFacts<Fact extends object>(
  { mine, theirs }: { mine: Fact; theirs: Fact },
  chosen: ReadonlyMap<string, Side>,
): Fact {
  let merged = theirs;
  for (const [path, side] of chosen)
    if (side === 'mine') merged = withValue(merged, path.split('.'), valueAt(mine, path)) as Fact;
  return merged;
}

export function valueAt(fact: unknown, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>((value, key) => (value as Record<string, unknown> | null)?.[key], fact);
}

function withValue(fact: unknown, [key, ...rest]: string[], value: unknown): unknown {
  if (key === undefined) return value;
  const outer = fact as Record<string, unknown>;
  return { ...outer, [key]: withValue(outer[key], rest, value) };
}

function differ(one: unknown, other: unknown): boolean {
  return differences(one, other).length > 0;
}
