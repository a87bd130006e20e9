import { count, eq } from 'drizzle-orm';
import { cameAs, type Expected, nearestTo, type Refusal } from '../model/refusal.ts';
import type { StockRow } from '../model/site.ts';
import { readSite as acceptSite } from '../model/site-file.ts';
import type { Check } from '../model/truck.ts';
import { recordChange } from './change-log.ts';
import type { Database } from './open-database.ts';
import { readRevision } from './read-site.ts';
import { insertStock } from './rows/loads.ts';
import type { Actor } from './rows/policy.ts';
import { insertChecks } from './rows/trucks.ts';
import { changeSite, nextOrdinal, partToChange, type Saved } from './save-entry.ts';
import { loads, stock } from './tables/loads.ts';
import { locations } from './tables/racking.ts';
import { checks } from './tables/trucks.ts';

/*
 * Pallets that come, move and go. These happen all day, so they look up the two ids that matter instead of reading the
 * site; what they refuse and how they say it is what a site file's reader would say.
 */

/** A pallet of this load stands in this location from now on, in the place of whatever stood there. */
export function saveStockRow(db: Database, row: StockRow, actor: Actor): Saved {
  return changeSite(db, () => {
    const before = stockAt(db, row.location);
    const refusals = unknownIds(db, row, before?.ordinal);
    if (refusals.length > 0) return { ok: false, refusals };
    if (before?.load === row.load) return { ok: true, revision: readRevision(db) };
    put(db, row, before?.ordinal);
    return { ok: true, revision: record(db, actor, row.location, before?.load ?? null, row.load) };
  });
}

/** Nothing stands in this location from now on. No change when it is empty already. */
export function removeStockRow(db: Database, location: string, actor: Actor): Saved {
  return changeSite(db, () => {
    const before = stockAt(db, location);
    if (before === null) return { ok: true, revision: readRevision(db) };
    db.delete(stock).where(eq(stock.location, location)).run();
    return { ok: true, revision: record(db, actor, location, before.load, null) };
  });
}

/** The pallet that stands in `from` stands in `to` from now on: both or neither. Refused when `to` is taken. */
export function moveStockRow(db: Database, from: string, to: string, actor: Actor): Saved {
  return changeSite(db, () => {
    const moved = stockAt(db, from);
    if (moved === null) return refused(from, { is: 'id-in', list: '$.stock (locations)', nearest: null });
    const taken = stockAt(db, to);
    if (taken !== null) return refused(to, { is: 'unique', firstAt: `$.stock[${taken.ordinal}].location` });
    const row = { location: to, load: moved.load };
    const refusals = unknownIds(db, row);
    if (refusals.length > 0) return { ok: false, refusals };
    db.delete(stock).where(eq(stock.location, from)).run();
    put(db, row, moved.ordinal);
    record(db, actor, from, moved.load, null);
    return { ok: true, revision: record(db, actor, to, null, moved.load) };
  });
}

/** Writes down a walk-round before the shift. It is kept for good: there is no change or removal of a check. */
export function addCheck(db: Database, check: Check, actor: Actor): Saved {
  return changeSite(db, () => {
    const reading = acceptSite({ ...partToChange(db, ['trucks']), checks: [check] });
    if (!reading.ok) return reading;
    const after = reading.site.checks[0]!;
    insertChecks(db, [after], nextOrdinal(db, checks));
    const change = { kind: 'add', noun: 'check', subject: after.truck, before: null, after } as const;
    return { ok: true, revision: recordChange(db, actor, change) };
  });
}

function stockAt(db: Database, location: string) {
  return db.select().from(stock).where(eq(stock.location, location)).all()[0] ?? null;
}

function put(db: Database, row: StockRow, ordinal = nextOrdinal(db, stock)): void {
  db.delete(stock).where(eq(stock.location, row.location)).run();
  insertStock(db, [row], ordinal);
}

function record(db: Database, actor: Actor, subject: string, before: string | null, after: string | null) {
  const kind = after === null ? 'remove' : before === null ? 'add' : 'save';
  return recordChange(db, actor, { kind, noun: 'stock', subject, before, after });
}

function unknownIds(db: Database, row: StockRow, ordinal?: number): Refusal[] {
  const path = `$.stock[${ordinal ?? db.select({ n: count() }).from(stock).all()[0]!.n}]`;
  const sides = [
    { key: 'location', list: '$.runs (locations)', table: locations },
    { key: 'load', list: '$.loads', table: loads },
  ] as const;
  return sides.flatMap(({ key, list, table }) => {
    const came = row[key];
    const known = db.select({ id: table.id }).from(table).where(eq(table.id, came)).all().length > 0;
    if (known) return [];
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
