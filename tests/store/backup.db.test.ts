import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sql } from 'drizzle-orm';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { FileTaken, writeBackup } from '../../lib/store/backup.ts';
import { readChanges } from '../../lib/store/change-log.ts';
import { importSite } from '../../lib/store/import-site.ts';
import { closeDatabase, type Database, openDatabase } from '../../lib/store/open-database.ts';
import { readRevision, readSite } from '../../lib/store/read-site.ts';
import { restoreBackup } from '../../lib/store/restore.ts';
import { saveSiteName } from '../../lib/store/save-policy.ts';
import { saveTruck } from '../../lib/store/save-site.ts';
import { renewSnapshot } from '../../lib/store/site-snapshot.ts';
import { makeSite } from '../site-builder.ts';
import { migrationsUpTo } from './older-migrations.ts';

const ACTOR = { who: 'A planner', at: '2026-03-02T06:30:00Z' };
const KEEPER = { who: 'A keeper', at: '2026-03-05T09:00:00.123Z' };
const how = { actor: KEEPER, serverIsStopped: false };

let folder: string;
let path: string;
let copy: string;
let db: Database;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'tinewise-backup-'));
  path = join(folder, 'tinewise.db');
  copy = join(folder, 'copy.db');
  db = openDatabase(path);
  importSite(db, makeSite(), ACTOR);
});
afterEach(() => {
  closeDatabase(db);
  rmSync(folder, { recursive: true, force: true });
});

describe('a backup', () => {
  it('is never written over a file that is there, unless that is meant', () => {
    writeFileSync(copy, 'precious');
    expect(() => writeBackup(db, copy, { overwrite: false })).toThrow(FileTaken);
    expect(readFileSync(copy, 'utf8')).toBe('precious');
    writeBackup(db, copy, { overwrite: true });
    expect(siteIn(copy)).toEqual(makeSite());
  });

  it('that is broken off leaves no file behind', () => {
    expect(() => writeBackup(db, join(folder, 'nowhere/copy.db'), { overwrite: false })).toThrow();
    db.run(sql`BEGIN`);
    expect(() => writeBackup(db, copy, { overwrite: false })).toThrow(); // VACUUM is not for a transaction
    db.run(sql`ROLLBACK`);
    expect(readdirSync(folder).filter((name) => !name.startsWith('tinewise.db'))).toEqual([]);
  });
});

describe('a backup that is restored', () => {
  it('while the database is open elsewhere is seen there, with a revision that was never given out', () => {
    writeBackup(db, copy, { overwrite: false });
    for (let n = 0; n < 5; n++) saveSiteName(db, `Name ${n}`, ACTOR);
    const held = renewSnapshot(db, null);
    const later = readSite(db);
    const restored = restoreBackup(copy, path, how);
    expect(restored).toEqual({ ok: true, revision: 7, replaced: `${path}.replaced-2026-03-05T090000Z` });
    expect(readSite(db)).toEqual(makeSite());
    expect(readRevision(db)).toBe(7);
    expect(renewSnapshot(db, held)?.site).toEqual(makeSite());
    expect(readChanges(db, { limit: 9 }).map(({ kind, id }) => [id, kind])).toEqual([
      [7, 'restore'],
      [1, 'import'],
    ]);
    expect(siteIn(`${path}.replaced-2026-03-05T090000Z`)).toEqual(later);
  });

  it('makes a conflict of every edit that was begun before', () => {
    writeBackup(db, copy, { overwrite: false });
    saveSiteName(db, 'Pier', ACTOR);
    restoreBackup(copy, path, how);
    const truck = { ...makeSite().trucks[0]!, name: 'Other name' };
    expect(saveTruck(db, truck, ACTOR, 2)).toMatchObject({
      ok: false,
      conflict: { kind: 'restore', by: KEEPER.who },
    });
    expect(saveTruck(db, truck, ACTOR, 3).ok).toBe(true);
  });

  it('may be a database as it lay in use, with its write-ahead log beside it', () => {
    saveSiteName(db, 'Pier', ACTOR);
    cpSync(path, copy);
    cpSync(`${path}-wal`, `${copy}-wal`);
    saveSiteName(db, 'Quay', ACTOR);
    expect(restoreBackup(copy, path, how)).toMatchObject({ ok: true });
    expect(readSite(db)?.site.name).toBe('Pier');
  });

  it('goes into a folder that has no database yet', () => {
    writeBackup(db, copy, { overwrite: false });
    const fresh = join(folder, 'fresh.db');
    expect(restoreBackup(copy, fresh, how)).toMatchObject({ ok: true, replaced: null });
    expect(siteIn(fresh)).toEqual(makeSite());
  });

  it('of an older version is brought up to date, the backup itself untouched', () => {
    const older = openDatabase(copy, migrationsUpTo(1, folder));
    insertOldSite(older);
    closeDatabase(older);
    const before = readFileSync(copy);
    expect(restoreBackup(copy, path, how)).toMatchObject({ ok: true });
    expect(readSite(db)?.site.name).toBe('An old store');
    expect(readFileSync(copy).equals(before)).toBe(true);
  });

  it.each<[string, () => void, string]>([
    ['is not there', () => rmSync(copy), 'no-such-file'],
    ['is no database', () => writeFileSync(copy, 'A letter to the harbour master. '.repeat(200)), 'damaged'],
    ['is somebody else’s', () => alter('DROP TABLE __drizzle_migrations'), 'not-ours'],
    [
      'is of a newer version',
      () => alter("INSERT INTO __drizzle_migrations (hash, created_at) VALUES ('x', 9e12)"),
      'newer-version',
    ],
    [
      'holds dangling references',
      () => alter("INSERT INTO stock VALUES ('nowhere', 0, 'ghost')"),
      'dangling-references',
    ],
    ['has a page overwritten', () => damage(copy), 'damaged'],
  ])('is refused when it %s, and nothing is changed', (_why, spoil, why) => {
    writeBackup(db, copy, { overwrite: false });
    saveSiteName(db, 'Pier', ACTOR);
    spoil();
    expect(restoreBackup(copy, path, how)).toEqual({ ok: false, why });
    expect(readSite(db)?.site.name).toBe('Pier');
    expect(readRevision(db)).toBe(2);
    expect(readdirSync(folder).filter((name) => /replaced|incoming/.test(name))).toEqual([]);
  });

  it('takes the place of a damaged database only once the server is said to be stopped', () => {
    writeBackup(db, copy, { overwrite: false });
    db.run(sql`PRAGMA wal_checkpoint(TRUNCATE)`);
    closeDatabase(db);
    damage(path);
    const spoilt = readFileSync(path);
    expect(restoreBackup(copy, path, how)).toEqual({ ok: false, why: 'present-database-damaged' });
    expect(readFileSync(path).equals(spoilt)).toBe(true);
    const restored = restoreBackup(copy, path, { ...how, serverIsStopped: true });
    expect(restored).toMatchObject({ ok: true });
    db = openDatabase(path);
    expect(readSite(db)).toEqual(makeSite());
    expect(existsSync(`${path}.replaced-2026-03-05T090000Z`)).toBe(true);
  });
});

function siteIn(file: string) {
  const opened = openDatabase(file);
  try {
    expect(opened.values(sql`PRAGMA integrity_check`)).toEqual([['ok']]);
    return readSite(opened);
  } finally {
    closeDatabase(opened);
  }
}

function alter(statement: string): void {
  const opened = openDatabase(copy);
  opened.$client.exec('PRAGMA foreign_keys = OFF');
  opened.$client.exec(statement);
  closeDatabase(opened);
}

/** Overwrites the middle of the file, the header left as it is. */
function damage(file: string): void {
  rmSync(`${file}-wal`, { force: true });
  const bytes = readFileSync(file);
  bytes.fill(0xa5, 4096 * 3, 4096 * 12);
  writeFileSync(file, bytes);
}

function insertOldSite(older: Database): void {
  older.$client.exec("INSERT INTO site VALUES (1, 'An old store', 1)");
  older.$client.exec(
    "INSERT INTO changes (at, who, kind, noun, subject) VALUES ('2026-01-01', 'x', 'import', 'site', 'An old store')",
  );
}
