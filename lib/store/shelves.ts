import { eq, sql } from 'drizzle-orm';
import type { SQLiteColumn, SQLiteTable } from 'drizzle-orm/sqlite-core';
import type { Run } from '../model/racking.ts';
import type { Database } from './open-database.ts';
import { nextOrdinal } from './ordinals.ts';
import { insertLoads, insertPalletTypes, readLoads, readPalletTypes } from './rows/loads.ts';
import {
  insertAisles,
  insertDocks,
  insertFrameTypes,
  insertRuns,
  readAisles,
  readDocks,
  readFrameTypes,
  readRuns,
} from './rows/racking.ts';
import {
  insertChecks,
  insertOperators,
  insertTrucks,
  readOperators,
  readTrucks,
  takeChecksOf,
} from './rows/trucks.ts';
import type { Shelf } from './save-entry.ts';
import { loads, palletTypes, stock } from './tables/loads.ts';
import { aisles, docks, frames, frameTypes, locations, runs } from './tables/racking.ts';
import { checks, operators, trucks } from './tables/trucks.ts';

export const PALLET_TYPES: Shelf<'palletTypes'> = {
  noun: 'pallet-type',
  list: 'palletTypes',
  table: palletTypes,
  read: readPalletTypes,
  insert: insertPalletTypes,
  isNeeded: (db, id) => holds(db, loads, loads.palletType, id),
  agreesWith: [],
  neededBy: ['loads'],
};

export const FRAME_TYPES: Shelf<'frameTypes'> = {
  noun: 'frame-type',
  list: 'frameTypes',
  table: frameTypes,
  read: readFrameTypes,
  insert: insertFrameTypes,
  isNeeded: (db, id) => holds(db, frames, frames.typeId, id),
  agreesWith: [],
  neededBy: ['runs', 'aisles'],
};

export const AISLES: Shelf<'aisles'> = {
  noun: 'aisle',
  list: 'aisles',
  table: aisles,
  read: readAisles,
  insert: insertAisles,
  isNeeded: (db, id) => holds(db, runs, runs.aisleId, id),
  agreesWith: [],
  neededBy: ['runs', 'frameTypes'],
};

export const RUNS: Shelf<'runs'> = {
  noun: 'run',
  list: 'runs',
  table: runs,
  read: readRuns,
  insert: insertRuns,
  beside: (db, run) => ({
    aisles: typeof run.aisleId === 'string' ? readAisles(db, run.aisleId) : [],
    frameTypes: readFrameTypes(db),
  }),
  clashes: (db, run) => takesLocationOfAnother(db, run) || losesStockedLocation(db, run),
  isNeeded: (db, id) => losesStockedLocation(db, { id, bays: [] }),
  agreesWith: ['aisles', 'frameTypes', 'stock', 'loads', 'palletTypes'],
  neededBy: [],
};

export const DOCKS: Shelf<'docks'> = {
  noun: 'dock',
  list: 'docks',
  table: docks,
  read: readDocks,
  insert: insertDocks,
  agreesWith: [],
  neededBy: [],
};

export const TRUCKS: Shelf<'trucks'> = {
  noun: 'truck',
  list: 'trucks',
  table: trucks,
  read: readTrucks,
  insert: insertTrucks,
  agreesWith: [],
  neededBy: [],
  takesAlong: (db, id) => ({ checks: takeChecksOf(db, id) }),
  bringsBack: (db, along) => insertChecks(db, along.checks ?? [], nextOrdinal(db, checks)),
};

export const OPERATORS: Shelf<'operators'> = {
  noun: 'operator',
  list: 'operators',
  table: operators,
  read: readOperators,
  insert: insertOperators,
  agreesWith: [],
  neededBy: [],
};

export const LOADS: Shelf<'loads'> = {
  noun: 'load',
  list: 'loads',
  table: loads,
  read: readLoads,
  insert: insertLoads,
  beside: (db, load) => ({
    palletTypes: typeof load.palletType === 'string' ? readPalletTypes(db, load.palletType) : [],
  }),
  isNeeded: (db, id) => holds(db, stock, stock.load, id),
  agreesWith: ['palletTypes'],
  neededBy: ['stock', 'runs', 'aisles', 'frameTypes'],
};

function holds(db: Database, table: SQLiteTable, column: SQLiteColumn, id: string): boolean {
  return db.select({ found: sql`1` }).from(table).where(eq(column, id)).limit(1).all().length > 0;
}

type Located = Pick<Run, 'id' | 'bays'>;

function locationsOf(run: Located): string {
  return JSON.stringify(run.bays.flatMap((bay) => bay.levels.flatMap((level) => level.locations)));
}

function takesLocationOfAnother(db: Database, run: Located): boolean {
  const taken = sql`SELECT 1 FROM ${locations} WHERE ${locations.run} <> ${run.id}
    AND ${locations.id} IN (SELECT value FROM json_each(${locationsOf(run)})) LIMIT 1`;
  return db.values(taken).length > 0;
}

function losesStockedLocation(db: Database, run: Located): boolean {
  const lost = sql`SELECT 1 FROM ${locations} JOIN ${stock} ON ${stock.location} = ${locations.id}
    WHERE ${locations.run} = ${run.id}
    AND ${locations.id} NOT IN (SELECT value FROM json_each(${locationsOf(run)})) LIMIT 1`;
  return db.values(lost).length > 0;
}
