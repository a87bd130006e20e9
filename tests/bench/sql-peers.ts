import { DuckDBInstance } from '@duckdb/node-api';
import Database from 'better-sqlite3';
import type { Digest, PlateQuestion } from './plate-question.ts';
import type { TakeDownLoop } from './take-down-loop.ts';

const TABLES = [
  'create table pallet (id integer, lift double, centre double, mass double)',
  'create table rating (truck integer, height double, centre double, capacity double)',
];

/**
 * One statement for both: capacities per lift, load centre and truck by a range join with the plates, then the pallets
 * against them. Rows of the plate are few, pallets many.
 */
const QUERY = `
  with kind as (select distinct lift, centre from pallet),
  proven as (
    select kind.lift, kind.centre, rating.truck, max(rating.capacity) as capacity
    from kind join rating on rating.height >= kind.lift and rating.centre >= kind.centre
    group by kind.lift, kind.centre, rating.truck),
  served as (
    select pallet.id, count(*) as able, max(proven.capacity) - min(pallet.mass) as margin
    from pallet join proven on proven.lift = pallet.lift and proven.centre = pallet.centre
      and proven.capacity >= pallet.mass
    group by pallet.id)
  select sum(able) as able, (select count(*) from pallet) - count(*) as stranded, sum(margin) * 4 as margin from served`;

export type SqlPeer = { name: string; ask: () => Promise<Digest>; close: () => void };

type Row = Record<string, unknown>;

function digestOf(row: Row): Digest {
  return { able: Number(row.able), stranded: Number(row.stranded), marginQuarterKg: Number(row.margin) };
}

/** SQLite in memory, with its tables filled and its statement prepared. */
export function openSqlite({ pallets, trucks }: PlateQuestion): SqlPeer {
  const db = new Database(':memory:');
  for (const table of TABLES) db.exec(table);
  db.exec('begin');
  const pallet = db.prepare('insert into pallet values (?, ?, ?, ?)');
  for (const [id, { liftMm, centreMm, massKg }] of pallets.entries())
    pallet.run(id, liftMm, centreMm, massKg);
  const rating = db.prepare('insert into rating values (?, ?, ?, ?)');
  for (const [truck, { ratings }] of trucks.entries()) {
    for (const { liftHeightMm, loadCentreMm, capacityKg } of ratings) {
      rating.run(truck, liftHeightMm, loadCentreMm, capacityKg);
    }
  }
  db.exec('commit');
  db.exec('analyze');
  const query = db.prepare(QUERY);
  return { name: 'SQLite', ask: async () => digestOf(query.get() as Row), close: () => db.close() };
}

/** DuckDB in memory, with as many threads as it likes, its tables filled through its appender. */
export async function openDuckDb({ pallets, trucks }: PlateQuestion): Promise<SqlPeer> {
  const connection = await (await DuckDBInstance.create(':memory:')).connect();
  for (const table of TABLES) await connection.run(table);
  const pallet = await connection.createAppender('pallet');
  for (const [id, { liftMm, centreMm, massKg }] of pallets.entries()) {
    pallet.appendInteger(id);
    for (const value of [liftMm, centreMm, massKg]) pallet.appendDouble(value);
    pallet.endRow();
  }
  pallet.closeSync();
  const rating = await connection.createAppender('rating');
  for (const [truck, { ratings }] of trucks.entries()) {
    for (const { liftHeightMm, loadCentreMm, capacityKg } of ratings) {
      rating.appendInteger(truck);
      for (const value of [liftHeightMm, loadCentreMm, capacityKg]) rating.appendDouble(value);
      rating.endRow();
    }
  }
  rating.closeSync();
  return {
    name: 'DuckDB',
    ask: async () => digestOf((await connection.runAndReadAll(QUERY)).getRowObjectsJson()[0] as Row),
    close: () => connection.closeSync(),
  };
}

/**
 * The full grid for one load in DuckDB: what the plate allows of each location and truck, found once for each lift,
 * joined with the locations and stored as a table. Answers how many pairs the plate proves.
 */
export async function openPlateGrid({ load, places, trucks }: TakeDownLoop): Promise<{
  ask: () => Promise<number>;
  close: () => void;
}> {
  const connection = await (await DuckDBInstance.create(':memory:')).connect();
  for (const table of ['create table place (id integer, lift double)', TABLES[1]!])
    await connection.run(table);
  const place = await connection.createAppender('place');
  for (const [id, { liftMm }] of places.entries()) {
    place.appendInteger(id);
    place.appendDouble(liftMm);
    place.endRow();
  }
  place.closeSync();
  const rating = await connection.createAppender('rating');
  for (const [truck, { ratings }] of trucks.entries()) {
    for (const { liftHeightMm, loadCentreMm, capacityKg } of ratings) {
      rating.appendInteger(truck);
      for (const value of [liftHeightMm, loadCentreMm, capacityKg]) rating.appendDouble(value);
      rating.endRow();
    }
  }
  rating.closeSync();
  const store = `
    create or replace table answer as
    with lift as (select distinct lift from place),
    proven as (
      select lift.lift, rating.truck, max(rating.capacity) as capacity
      from lift join rating on rating.height >= lift.lift and rating.centre >= ${load.centreMm}
      group by lift.lift, rating.truck)
    select place.id, proven.truck, proven.capacity - ${load.kg} as margin
    from place join proven on proven.lift = place.lift`;
  return {
    ask: async () => {
      await connection.run(store);
      const counted = await connection.runAndReadAll('select count(*) as n from answer where margin >= 0');
      return Number(counted.getRowObjectsJson()[0]!.n);
    },
    close: () => connection.closeSync(),
  };
}
