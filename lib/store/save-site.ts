import type { Load, PalletType } from '../model/load.ts';
import type { Aisle, Dock, FrameType, Run } from '../model/racking.ts';
import type { Operator, Truck } from '../model/truck.ts';
import { type BasedOn, changeSite, type Saved } from './change-site.ts';
import type { Database } from './open-database.ts';
import type { Actor } from './rows/policy.ts';
import { dropEntry, type Entry, putEntry, type Shelf, type ShelfList } from './save-entry.ts';
import { AISLES, DOCKS, FRAME_TYPES, LOADS, OPERATORS, PALLET_TYPES, RUNS, TRUCKS } from './shelves.ts';

/*
 * One save and one removal a noun. A save replaces the entry of the same id in its place or adds it at the end; both
 * judge the result as a site file would be judged, and write a change-log row.
 *
 * `basedOn` is the revision at which the editor read the entry: when somebody else has changed it since, the answer is
 * the conflict and nothing is stored. Without it, or with null, the save overwrites: for scripts that mean to.
 */

function save<List extends ShelfList>(shelf: Shelf<List>) {
  return (db: Database, entry: Entry<List>, actor: Actor, basedOn: BasedOn = null): Saved =>
    changeSite(db, actor, (log) => putEntry(log, shelf, entry, basedOn));
}

function remove<List extends ShelfList>(shelf: Shelf<List>) {
  return (db: Database, id: string, actor: Actor, basedOn: BasedOn = null): Saved =>
    changeSite(db, actor, (log) => dropEntry(log, shelf, id, basedOn));
}

type Save<Noun> = (db: Database, entry: Noun, actor: Actor, basedOn?: BasedOn) => Saved;
type Remove = (db: Database, id: string, actor: Actor, basedOn?: BasedOn) => Saved;

export const savePalletType: Save<PalletType> = save(PALLET_TYPES);
export const removePalletType: Remove = remove(PALLET_TYPES);

export const saveFrameType: Save<FrameType> = save(FRAME_TYPES);
export const removeFrameType: Remove = remove(FRAME_TYPES);

export const saveAisle: Save<Aisle> = save(AISLES);
export const removeAisle: Remove = remove(AISLES);

export const saveRun: Save<Run> = save(RUNS);
export const removeRun: Remove = remove(RUNS);

export const saveDock: Save<Dock> = save(DOCKS);
export const removeDock: Remove = remove(DOCKS);

export const saveTruck: Save<Truck> = save(TRUCKS);
/** The truck's checks go with it; the change log keeps both. A truck that only stands still is held, not removed. */
export const removeTruck: Remove = remove(TRUCKS);

export const saveOperator: Save<Operator> = save(OPERATORS);
export const removeOperator: Remove = remove(OPERATORS);

export const saveLoad: Save<Load> = save(LOADS);
export const removeLoad: Remove = remove(LOADS);
