import type { Load, PalletType } from '../model/load.ts';
import type { Aisle, Dock, FrameType, Run } from '../model/racking.ts';
import type { Operator, Truck } from '../model/truck.ts';
import type { Database } from './open-database.ts';
import { insertLoads, insertPalletTypes } from './rows/loads.ts';
import type { Actor } from './rows/policy.ts';
import { insertAisles, insertDocks, insertFrameTypes, insertRuns } from './rows/racking.ts';
import { insertOperators, insertTrucks, takeChecksOf } from './rows/trucks.ts';
import { removeEntry, type Saved, type Shelf, saveEntry } from './save-entry.ts';
import { loads, palletTypes } from './tables/loads.ts';
import { aisles, docks, frameTypes, runs } from './tables/racking.ts';
import { operators, trucks } from './tables/trucks.ts';

/*
 * One save and one removal a noun. A save replaces the entry of the same id in its place or adds it at the end; both
 * judge the result as a site file would be judged, and write a change-log row.
 */

const PALLET_TYPES: Shelf<'palletTypes'> = {
  noun: 'pallet-type',
  list: 'palletTypes',
  table: palletTypes,
  insert: insertPalletTypes,
  agreesWith: [],
  neededBy: ['loads'],
};

const FRAME_TYPES: Shelf<'frameTypes'> = {
  noun: 'frame-type',
  list: 'frameTypes',
  table: frameTypes,
  insert: insertFrameTypes,
  agreesWith: [],
  neededBy: ['runs', 'aisles'],
};

const AISLES: Shelf<'aisles'> = {
  noun: 'aisle',
  list: 'aisles',
  table: aisles,
  insert: insertAisles,
  agreesWith: [],
  neededBy: ['runs', 'frameTypes'],
};

const RUNS: Shelf<'runs'> = {
  noun: 'run',
  list: 'runs',
  table: runs,
  insert: insertRuns,
  // a changed run may lose a location that is stocked
  agreesWith: ['aisles', 'frameTypes', 'stock', 'loads', 'palletTypes'],
  neededBy: [],
};

const DOCKS: Shelf<'docks'> = {
  noun: 'dock',
  list: 'docks',
  table: docks,
  insert: insertDocks,
  agreesWith: [],
  neededBy: [],
};

const TRUCKS: Shelf<'trucks'> = {
  noun: 'truck',
  list: 'trucks',
  table: trucks,
  insert: insertTrucks,
  agreesWith: [],
  neededBy: [],
  takesAlong: (db, id) => ({ checks: takeChecksOf(db, id) }),
};

const OPERATORS: Shelf<'operators'> = {
  noun: 'operator',
  list: 'operators',
  table: operators,
  insert: insertOperators,
  agreesWith: [],
  neededBy: [],
};

const LOADS: Shelf<'loads'> = {
  noun: 'load',
  list: 'loads',
  table: loads,
  insert: insertLoads,
  agreesWith: ['palletTypes'],
  neededBy: ['stock', 'runs', 'aisles', 'frameTypes'],
};

export const savePalletType = (db: Database, palletType: PalletType, actor: Actor): Saved =>
  saveEntry(db, PALLET_TYPES, palletType, actor);
export const removePalletType = (db: Database, id: string, actor: Actor): Saved =>
  removeEntry(db, PALLET_TYPES, id, actor);

export const saveFrameType = (db: Database, frameType: FrameType, actor: Actor): Saved =>
  saveEntry(db, FRAME_TYPES, frameType, actor);
export const removeFrameType = (db: Database, id: string, actor: Actor): Saved =>
  removeEntry(db, FRAME_TYPES, id, actor);

export const saveAisle = (db: Database, aisle: Aisle, actor: Actor): Saved =>
  saveEntry(db, AISLES, aisle, actor);
export const removeAisle = (db: Database, id: string, actor: Actor): Saved =>
  removeEntry(db, AISLES, id, actor);

export const saveRun = (db: Database, run: Run, actor: Actor): Saved => saveEntry(db, RUNS, run, actor);
export const removeRun = (db: Database, id: string, actor: Actor): Saved => removeEntry(db, RUNS, id, actor);

export const saveDock = (db: Database, dock: Dock, actor: Actor): Saved => saveEntry(db, DOCKS, dock, actor);
export const removeDock = (db: Database, id: string, actor: Actor): Saved =>
  removeEntry(db, DOCKS, id, actor);

export const saveTruck = (db: Database, truck: Truck, actor: Actor): Saved =>
  saveEntry(db, TRUCKS, truck, actor);
/** The truck's checks go with it; the change log keeps both. A truck that only stands still is held, not removed. */
export const removeTruck = (db: Database, id: string, actor: Actor): Saved =>
  removeEntry(db, TRUCKS, id, actor);

export const saveOperator = (db: Database, operator: Operator, actor: Actor): Saved =>
  saveEntry(db, OPERATORS, operator, actor);
export const removeOperator = (db: Database, id: string, actor: Actor): Saved =>
  removeEntry(db, OPERATORS, id, actor);

export const saveLoad = (db: Database, load: Load, actor: Actor): Saved => saveEntry(db, LOADS, load, actor);
export const removeLoad = (db: Database, id: string, actor: Actor): Saved =>
  removeEntry(db, LOADS, id, actor);
