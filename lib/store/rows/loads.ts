import { asc } from 'drizzle-orm';
import type { HandPick, Load, PalletType } from '../../model/load.ts';
import type { StockRow } from '../../model/site.ts';
import type { Database } from '../open-database.ts';
import { items, loads, palletTypes, stock } from '../tables/loads.ts';
import { grouped } from './grouped.ts';
import { insertAll } from './insert-all.ts';
import { only } from './only.ts';

export function insertPalletTypes(db: Database, list: readonly PalletType[], first = 0): void {
  insertAll(
    db,
    palletTypes,
    list.map((type, i) => ({ ...type, ordinal: first + i })),
  );
}

export function readPalletTypes(db: Database, id?: string): PalletType[] {
  const rows = db
    .select()
    .from(palletTypes)
    .where(only(palletTypes.id, id))
    .orderBy(asc(palletTypes.ordinal))
    .all();
  return rows.map(({ ordinal: _, ...type }) => type);
}

export function insertLoads(db: Database, list: readonly Load[], first = 0): void {
  const rows = list.map(({ items: _, handPick, ...load }, i) => ({
    ...load,
    ordinal: first + i,
    ...(handPick && pickColumns(handPick)),
  }));
  insertAll(db, loads, rows);
  insertAll(
    db,
    items,
    list.flatMap((load) => (load.items ?? []).map((item, ordinal) => ({ load: load.id, ordinal, ...item }))),
  );
}

export function readLoads(db: Database, id?: string): Load[] {
  const itemsOf = grouped(
    db.select().from(items).where(only(items.load, id)).orderBy(asc(items.ordinal)).all(),
    (row) => row.load,
    ({ name, massKg, count }) => ({ name, massKg, count }),
  );
  const rows = db.select().from(loads).where(only(loads.id, id)).orderBy(asc(loads.ordinal)).all();
  return rows.map((row) => ({
    id: row.id,
    name: row.name,
    palletType: row.palletType,
    items: itemsOf.get(row.id) ?? null,
    grossKg: row.grossKg,
    massBasis: row.massBasis,
    depthMm: row.depthMm,
    widthMm: row.widthMm,
    heightMm: row.heightMm,
    centreFromHeelMm: row.centreFromHeelMm,
    centreHeightMm: row.centreHeightMm,
    picksPerWeek: row.picksPerWeek,
    group: row.group,
    handPick: handPickOf(row),
  }));
}

function pickColumns(pick: HandPick) {
  return {
    pickMassKg: pick.massKg,
    pickHorizontalMm: pick.horizontalMm,
    pickGripHeightMm: pick.gripHeightMm,
    pickDestinationHeightMm: pick.destinationHeightMm,
    pickAsymmetryDeg: pick.asymmetryDeg,
    pickLiftsPerMinute: pick.liftsPerMinute,
    pickDurationHours: pick.durationHours,
    pickCoupling: pick.coupling,
  };
}

/** The columns are written together, so that one of them tells for all; a hole among them is a broken database. */
function handPickOf(row: typeof loads.$inferSelect): HandPick | null {
  if (row.pickMassKg === null) return null;
  const pick = {
    massKg: row.pickMassKg,
    horizontalMm: row.pickHorizontalMm,
    gripHeightMm: row.pickGripHeightMm,
    destinationHeightMm: row.pickDestinationHeightMm,
    asymmetryDeg: row.pickAsymmetryDeg,
    liftsPerMinute: row.pickLiftsPerMinute,
    durationHours: row.pickDurationHours,
    coupling: row.pickCoupling,
  };
  if (Object.values(pick).includes(null)) throw new Error(`the hand pick of load ${row.id} has holes`);
  return pick as HandPick;
}

export function insertStock(db: Database, list: readonly StockRow[], first = 0): void {
  insertAll(
    db,
    stock,
    list.map((row, i) => ({ ...row, ordinal: first + i })),
  );
}

export function readStock(db: Database): StockRow[] {
  const rows = db.select().from(stock).orderBy(asc(stock.ordinal)).all();
  return rows.map(({ location, load }) => ({ location, load }));
}
