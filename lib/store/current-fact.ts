import { eq } from 'drizzle-orm';
import type { ChangeNoun } from '../model/change.ts';
import type { Database } from './open-database.ts';
import { readPhotoFact } from './plate-photos.ts';
import { readOne, type Shelf, type ShelfList, type ShelfNoun } from './save-entry.ts';
import { stockAt } from './save-stock.ts';
import { AISLES, DOCKS, FRAME_TYPES, LOADS, OPERATORS, PALLET_TYPES, RUNS, TRUCKS } from './shelves.ts';
import { policyValues, siteTable } from './tables/site.ts';

const SHELVES = {
  'pallet-type': PALLET_TYPES,
  'frame-type': FRAME_TYPES,
  aisle: AISLES,
  run: RUNS,
  dock: DOCKS,
  truck: TRUCKS,
  operator: OPERATORS,
  load: LOADS,
} as const satisfies Record<ShelfNoun, unknown>;

/** The shelf of a noun whose entries have ids. */
export function shelfOf(noun: ShelfNoun): Shelf<ShelfList> {
  return SHELVES[noun] as unknown as Shelf<ShelfList>;
}

/** The fact as it stands, as the change log would write it down; null where there is none. Checks are never changed. */
export function readFact(db: Database, noun: Exclude<ChangeNoun, 'check'>, subject: string): unknown {
  switch (noun) {
    case 'stock':
      return stockAt(db, subject)?.load ?? null;
    case 'policy': {
      const row = db.select().from(policyValues).where(eq(policyValues.key, subject)).all()[0];
      return row === undefined ? null : JSON.parse(row.value);
    }
    case 'plate-photo':
      return readPhotoFact(db, subject);
    case 'site':
      return db.select({ name: siteTable.name }).from(siteTable).all()[0]?.name ?? null;
    default:
      return readOne(db, shelfOf(noun), subject);
  }
}
