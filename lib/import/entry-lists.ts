import type { Collection } from './draft.ts';
import type { ListName } from './lists.ts';

/** How the rows of a list other than the locations make the entries of a collection. */
export type EntryList = {
  collection: Exclude<Collection, 'runs'>;
  /** The facts that name an entry, and the paths at which the entry keeps them. */
  key: readonly { fact: string; path: string }[];
  /** Rows of one entry give it a list of children, which replaces the one it has. */
  children: { at: string; facts: readonly string[]; whenEmpty: 'empty-list' | 'null' } | null;
  /** Whether rows may make a new entry; otherwise the entry must stand in the site already. */
  creates: boolean;
  /** Objects inside the entry that are null as a whole while none of their facts is known. */
  groups: readonly string[];
  /** What a new entry has that no row gives. */
  blank: object;
  references: readonly { fact: string; to: 'locations' | 'loads' | 'palletTypes' | 'trucks' }[];
};

const byId = [{ fact: 'id', path: 'id' }] as const;
const plain = { key: byId, children: null, creates: true, groups: [], blank: {}, references: [] } as const;

export const ENTRY_LISTS: Record<Exclude<ListName, 'locations'>, EntryList> = {
  palletTypes: { ...plain, collection: 'palletTypes' },
  aisles: { ...plain, collection: 'aisles' },
  docks: { ...plain, collection: 'docks' },
  frameTypes: {
    ...plain,
    collection: 'frameTypes',
    children: { at: 'ratings', facts: ['maxGapMm', 'capacityKg'], whenEmpty: 'empty-list' },
  },
  trucks: {
    ...plain,
    collection: 'trucks',
    groups: ['turning', 'hold', 'speeds'],
    blank: { forks: {}, plate: { ratings: [] } },
  },
  plateRatings: {
    collection: 'trucks',
    key: [{ fact: 'truck', path: 'id' }],
    children: {
      at: 'plate.ratings',
      facts: ['mast', 'attachment', 'liftHeightMm', 'loadCentreMm', 'capacityKg'],
      whenEmpty: 'empty-list',
    },
    creates: false,
    groups: [],
    blank: {},
    references: [{ fact: 'truck', to: 'trucks' }],
  },
  operators: {
    ...plain,
    collection: 'operators',
    children: { at: 'authorisations', facts: ['kind', 'expires'], whenEmpty: 'empty-list' },
  },
  loads: {
    ...plain,
    collection: 'loads',
    groups: ['handPick'],
    blank: { items: null },
    references: [{ fact: 'palletType', to: 'palletTypes' }],
  },
  items: {
    collection: 'loads',
    key: [{ fact: 'load', path: 'id' }],
    children: { at: 'items', facts: ['name', 'massKg', 'count'], whenEmpty: 'null' },
    creates: false,
    groups: [],
    blank: {},
    references: [{ fact: 'load', to: 'loads' }],
  },
  stock: {
    ...plain,
    collection: 'stock',
    key: [{ fact: 'location', path: 'location' }],
    references: [
      { fact: 'location', to: 'locations' },
      { fact: 'load', to: 'loads' },
    ],
  },
  checks: {
    ...plain,
    collection: 'checks',
    key: [
      { fact: 'truck', path: 'truck' },
      { fact: 'at', path: 'at' },
      { fact: 'by', path: 'by' },
    ],
    blank: { defects: [] },
    references: [{ fact: 'truck', to: 'trucks' }],
  },
};

/** The value at a path such as `forks.lengthMm`; null where an object on the way is null or absent. */
export function valueAt(entry: unknown, path: string): unknown {
  let value = entry;
  for (const key of path.split('.')) {
    if (value === null || typeof value !== 'object') return null;
    value = (value as Record<string, unknown>)[key];
  }
  return value ?? null;
}

/** The ids that a reference may name. */
export function referable(
  site: {
    runs: readonly { bays: readonly { levels: readonly { locations: readonly string[] }[] }[] }[];
    loads: readonly { id: string }[];
    palletTypes: readonly { id: string }[];
    trucks: readonly { id: string }[];
  },
  to: 'locations' | 'loads' | 'palletTypes' | 'trucks',
): Set<string> {
  if (to !== 'locations') return new Set(site[to].map((entry) => entry.id));
  const ids = new Set<string>();
  for (const run of site.runs)
    for (const bay of run.bays) for (const level of bay.levels) for (const id of level.locations) ids.add(id);
  return ids;
}
