import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sql } from 'drizzle-orm';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readChanges } from '../../lib/store/change-log.ts';
import { importSite } from '../../lib/store/import-site.ts';
import { DatabaseRefused } from '../../lib/store/migrate-database.ts';
import { closeDatabase, type Database, openDatabase } from '../../lib/store/open-database.ts';
import { readRevision, readSite } from '../../lib/store/read-site.ts';
import { revertChange } from '../../lib/store/revert-change.ts';
import { saveLoad, saveTruck } from '../../lib/store/save-site.ts';
import { moveStockRow } from '../../lib/store/save-stock.ts';
import { StoreUnavailable } from '../../lib/store/transaction.ts';
import { unavailableSentence } from '../../lib/words/change.ts';
import { makeLoad, makeSite } from '../site-builder.ts';
import { bigSite } from './big-site.ts';
import { migrationsUpTo } from './older-migrations.ts';

const ACTOR = { who: 'A planner', at: '2026-03-02T06:30:00Z' };
const site = makeSite({ stock: [{ location: 'a1-1-1', load: 'crates' }] });

let folder: string;
let path: string;
let db: Database;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'tinewise-faults-'));
  path = join(folder, 'tinewise.db');
  db = openDatabase(path);
  importSite(db, site, ACTOR);
});
afterEach(() => {
  closeDatabase(db);
  rmSync(folder, { recursive: true, force: true });
});

function reasonOf(action: () => unknown): string {
  try {
    action();
  } catch (error) {
    if (!(error instanceof StoreUnavailable)) throw error;
    expect(unavailableSentence(error.reason)).toContain('Nothing was stored');
    return error.reason;
  }
  throw new Error('went through');
}

function expectNothingStored() {
  expect(readSite(db)).toEqual(site);
  expect(readRevision(db)).toBe(1);
  expect(readChanges(db, { limit: 9 })).toHaveLength(1);
  expect(db.values(sql`PRAGMA integrity_check`)).toEqual([['ok']]);
}

describe('a full disk', () => {
  /** SQLite's own limit of pages: the file cannot grow any further, which is what a full disk comes to. */
  function fill(spare: number) {
    const pages = db.values<[number]>(sql`PRAGMA page_count`)[0]![0];
    db.run(sql.raw(`PRAGMA max_page_count = ${pages + spare}`));
  }

  it.each([0, 1, 20])('in mid-import (%i pages left) is named and leaves the site as it was', (spare) => {
    fill(spare);
    expect(reasonOf(() => importSite(db, bigSite(5000), ACTOR))).toBe('disk-full');
    expectNothingStored();
  });

  it('in mid-save is named and leaves the site as it was; with room again the save goes through', () => {
    const items = Array.from({ length: 3000 }, (_, at) => ({ name: `Crate ${at}`, massKg: 1, count: 1 }));
    const load = makeLoad({ id: 'many', items });
    fill(2);
    expect(reasonOf(() => saveLoad(db, load, ACTOR))).toBe('disk-full');
    expectNothingStored();
    fill(10_000);
    expect(saveLoad(db, load, ACTOR)).toEqual({ ok: true, revision: 2 });
  });
});

describe('a database that another one holds for too long', () => {
  it('is named and nothing is stored, whatever was asked', () => {
    db.run(sql`PRAGMA busy_timeout = 30`);
    const holder = openDatabase(path);
    holder.$client.exec('BEGIN IMMEDIATE');
    const held = { ...site.trucks[0]!, name: 'Other name' };
    expect(reasonOf(() => importSite(db, bigSite(400), ACTOR))).toBe('locked');
    expect(reasonOf(() => saveTruck(db, held, ACTOR, 1))).toBe('locked');
    expect(reasonOf(() => moveStockRow(db, 'a1-1-1', 'a2-1-1', ACTOR, 1))).toBe('locked');
    expect(reasonOf(() => revertChange(db, 1, ACTOR))).toBe('locked');
    holder.$client.exec('ROLLBACK');
    expectNothingStored();
    expect(saveTruck(db, held, ACTOR, 1).ok).toBe(true);
    closeDatabase(holder);
  });
});

describe('a database that may only be read', () => {
  it('is named', () => {
    db.run(sql`PRAGMA query_only = ON`);
    expect(reasonOf(() => saveTruck(db, { ...site.trucks[0]!, name: 'x' }, ACTOR))).toBe('read-only');
    expectNothingStored();
  });
});

describe('a database of the first version', () => {
  it('is brought up to date: its facts stand, its changes are told apart as they are now', () => {
    const old = join(folder, 'old.db');
    const first = openDatabase(old, migrationsUpTo(1, folder));
    first.$client.exec(`
      INSERT INTO site VALUES (1, 'An old store', 2);
      INSERT INTO docks VALUES ('d1', 0, 1, 2);
      INSERT INTO changes (at, who, kind, noun, subject, before, after) VALUES
        ('2026-01-01', 'x', 'import', 'site', 'An old store', NULL, '{"name":"An old store"}'),
        ('2026-01-02', 'x', 'add', 'dock', 'd1', NULL, '{"id":"d1","xMm":1,"yMm":2}');`);
    closeDatabase(first);
    const now = openDatabase(old);
    expect(readSite(now)).toMatchObject({
      site: { name: 'An old store' },
      docks: [{ id: 'd1', xMm: 1, yMm: 2 }],
    });
    expect(readChanges(now, { limit: 9 })).toMatchObject([
      { id: 2, batch: 2, wholeSite: false, kind: 'add', reverts: null, revertedBy: null },
      { id: 1, batch: 1, wholeSite: true, kind: 'import' },
    ]);
    expect(revertChange(now, 2, ACTOR)).toEqual({ ok: true, revision: 3 });
    expect(readSite(now)?.docks).toEqual([]);
    closeDatabase(now);
    expect(() => openDatabase(old, migrationsUpTo(1, folder))).toThrow(DatabaseRefused);
  });
});
