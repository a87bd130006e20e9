import { count, eq } from 'drizzle-orm';
import { cameAs, type Expected, nearestTo, type Refusal } from '../model/refusal.ts';
import type { StockRow } from '../model/site.ts';
import { readSite as acceptSite } from '../model/site-file.ts';
import type { Check } from '../model/truck.ts';
import { type BasedOn, changeSite, conflictOf, partToChange, refusedFor, type Saved } from './change-site.ts';
import type { ChangeWriter } from './change-writer.ts';
import type { Database } from './open-database.ts';
import { freeOrdinal, keyBehind, nextOrdinal } from './ordinals.ts';
import { readRevision } from './read-site.ts';
import { insertStock } from './rows/loads.ts';
import type { Actor } from './rows/policy.ts';
import { insertChecks, readTrucks } from './rows/trucks.ts';
import { loads, stock } from './tables/loads.ts';
import { locations } from './tables/racking.ts';
import { checks } from './tables/trucks.ts';

/*
 * Pallets that come, move and go. These happen all day, so they look up the two ids that matter instead of reading the
 * site; what they refuse and how they say it is what a site file's reader would say.
 */

/** A pallet of this load stands in this location from now on, in the place of whatever stood there. */
export function saveStockRow(db: Database, row: StockRow, actor: Actor, basedOn: BasedOn = null): Saved {
  return changeSite(db, actor, (log) => putStock(log, row, basedOn));
}

/** Nothing stands in this location from now on. No change when it is empty already. */
export function removeStockRow(db: Database, location: string, actor: Actor, basedOn: BasedOn = null): Saved {
  return changeSite(db, actor, (log) => dropStock(log, location, basedOn));
}

/** The pallet that stands in `from` stands in `to` from now on: both or neither. Refused when `to` is taken. */
export function moveStockRow(
  db: Database,
  from: string,
  to: string,
  actor: Actor,
  basedOn: BasedOn = null,
): Saved {
  return changeSite(db, actor, (log) => {
    const moved = stockAt(db, from);
    const conflict =
      conflictOf(db, basedOn, { noun: 'stock', subject: from, theirs: moved?.load ?? null }) ??
      conflictOf(db, basedOn, { noun: 'stock', subject: to, theirs: stockAt(db, to)?.load ?? null });
    if (conflict !== null) return refusedFor(conflict);
    if (moved === null) return refused(from, { is: 'id-in', list: '$.stock (locations)', nearest: null });
    const taken = stockAt(db, to);
    if (taken !== null) return refused(to, { is: 'unique', firstAt: `$.stock[${taken.ordinal}].location` });
    const row = { location: to, load: moved.load };
    const refusals = unknownIds(db, row);
    if (refusals.length > 0) return { ok: false, refusals };
    dropStock(log, from, null);
    return putStock(log, row, null, moved.ordinal);
  });
}

/** Writes down a walk-round before the shift. It is kept for good: there is no change or removal of a check. */
export function addCheck(db: Database, check: Check, actor: Actor): Saved {
  return changeSite(db, actor, (log) => {
    const known = typeof check.truck === 'string' ? readTrucks(db, check.truck) : [];
    const alone = acceptSite({ ...partToChange(db, []), trucks: known, checks: [check] });
    const reading = alone.ok ? alone : acceptSite({ ...partToChange(db, ['trucks']), checks: [check] });
    if (!reading.ok) return reading;
    const after = reading.site.checks[0]!;
    const ordinal = nextOrdinal(db, checks);
    insertChecks(db, [after], ordinal);
    const change = {
      noun: 'check',
      subject: after.truck,
      before: null,
      after,
      ordinal,
      ahead: null,
    } as const;
    return { ok: true, revision: log.record(change) };
  });
}

/** Part of a transaction of changeSite. `wanted`: the place in the list of a pallet that was moved or is put back. */
export function putStock(
  log: ChangeWriter,
  row: StockRow,
  basedOn: BasedOn,
  wanted: number | null = null,
): Saved {
  const { db } = log;
  const before = stockAt(db, row.location);
  const refusals = unknownIds(db, row, before?.ordinal);
  if (refusals.length > 0) return { ok: false, refusals };
  if (before?.load === row.load) return { ok: true, revision: readRevision(db) };
  const fact = { noun: 'stock', subject: row.location } as const;
  const conflict = conflictOf(db, basedOn, { ...fact, theirs: before?.load ?? null });
  if (conflict !== null) return refusedFor(conflict);
  const ordinal = before?.ordinal ?? freeOrdinal(db, stock, wanted);
  db.delete(stock).where(eq(stock.location, row.location)).run();
  insertStock(db, [row], ordinal);
  const came = before === null ? { ordinal, ahead: keyBehind(db, stock.location, ordinal) } : {};
  const change = { ...fact, before: before?.load ?? null, after: row.load, ...came };
  return { ok: true, revision: log.record(change) };
}

/** Part of a transaction of changeSite. */
export function dropStock(log: ChangeWriter, location: string, basedOn: BasedOn): Saved {
  const { db } = log;
  const stood = stockAt(db, location);
  if (stood === null) return { ok: true, revision: readRevision(db) };
  const fact = { noun: 'stock', subject: location } as const;
  const conflict = conflictOf(db, basedOn, { ...fact, theirs: stood.load });
  if (conflict !== null) return refusedFor(conflict);
  db.delete(stock).where(eq(stock.location, location)).run();
  const change = { ...fact, before: stood.load, after: null, ordinal: stood.ordinal };
  return { ok: true, revision: log.record(change) };
}

/** What stands in a location, and where in the list; null for nothing. */
export function stockAt(db: Database, location: string) {
  return db.select().from(stock).where(eq(stock.location, location)).all()[0] ?? null;
}

function unknownIds(db: Database, row: StockRow, ordinal?: number): Refusal[] {
  const sides = [
    { key: 'location', list: '$.runs (locations)', table: locations },
    { key: 'load', list: '$.loads', table: loads },
  ] as const;
  return sides.flatMap(({ key, list, table }) => {
    const came = row[key];
    const known = db.select({ id: table.id }).from(table).where(eq(table.id, came)).all().length > 0;
    if (known) return [];
    const path = `$.stock[${ordinal ?? db.select({ n: count() }).from(stock).all()[0]!.n}]`;
    const ids = db.select({ id: table.id }).from(table).all();
    const nearest = nearestTo(
      came,
      ids.map((entry) => entry.id),
    );
    return [{ path: `${path}.${key}`, came: cameAs(came), expected: { is: 'id-in', list, nearest } }];
  });
}

function refused(location: string, expected: Expected): Saved {
  return { ok: false, refusals: [{ path: '$.stock', came: cameAs(location), expected }] };
}
