/** What may be changed. A `subject` is the id within the noun: of stock the location, of policy the key, of checks and plate photos the truck. */
export const CHANGE_NOUNS = [
  'site',
  'policy',
  'pallet-type',
  'frame-type',
  'aisle',
  'run',
  'dock',
  'truck',
  'plate-photo',
  'operator',
  'load',
  'stock',
  'check',
] as const;
export type ChangeNoun = (typeof CHANGE_NOUNS)[number];

export const CHANGE_KINDS = ['import', 'save', 'add', 'remove', 'revert', 'restore'] as const;
export type ChangeKind = (typeof CHANGE_KINDS)[number];

/** The nouns that are lists of entries with an id of their own, and where the site file keeps each. */
export const NOUN_LISTS = {
  'pallet-type': 'palletTypes',
  'frame-type': 'frameTypes',
  aisle: 'aisles',
  run: 'runs',
  dock: 'docks',
  truck: 'trucks',
  operator: 'operators',
  load: 'loads',
} as const;

/** What one change did to one fact. */
export type FactChange = {
  noun: ChangeNoun;
  subject: string;
  /** What stood there, as data; null where nothing did. */
  before: unknown;
  /** What stands there now, as data; null where nothing does. */
  after: unknown;
  /** Of an entry that came into its list: the entry that it came to stand ahead of; null for the end of the list. */
  ahead: string | null;
};

/** One row of the change log. Its `id` is the revision that it made. */
export type Change = FactChange & {
  id: number;
  at: string;
  who: string;
  kind: ChangeKind;
  /** The id of the first change that was made together with this one: they are undone together. */
  batch: number;
  /** The whole site was exchanged: `before` and `after` are then counts, not facts. */
  wholeSite: boolean;
  /** The change that this one undoes; null when it undoes none. */
  reverts: number | null;
};

/**
 * Why a change was not made: somebody else has changed the same fact since it was read. `revision` is where the site
 * stands now: who has seen `theirs` and still means it saves again, based on that.
 */
export type Conflict = {
  noun: ChangeNoun;
  subject: string;
  /** The revision at which the fact was read. */
  since: number;
  /** Who has changed it last, when, how. */
  by: string;
  at: string;
  kind: ChangeKind;
  /** The fact as it was read; not known when the whole site was exchanged since. */
  base: { known: true; fact: unknown } | { known: false };
  /** The fact as it stands; null where it is gone. */
  theirs: unknown;
  revision: number;
};

/** Why the database could not do what was asked. Nothing of it was kept. */
export const UNAVAILABLE = ['disk-full', 'locked', 'read-only', 'damaged', 'disk-fault'] as const;
export type Unavailable = (typeof UNAVAILABLE)[number];

/** Why a change is of a kind that cannot be undone at all. */
export type CannotRevert =
  | 'no-such-change'
  | 'check-is-kept'
  | 'was-restored'
  | 'former-site-not-kept'
  | 'photo-not-kept';
