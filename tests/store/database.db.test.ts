import { spawn } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { sql } from 'drizzle-orm';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { importSite } from '../../lib/store/import-site.ts';
import { DatabaseRefused } from '../../lib/store/migrate-database.ts';
import { backUpDatabase, closeDatabase, type Database, openDatabase } from '../../lib/store/open-database.ts';
import { isEmpty, readRevision, readSite } from '../../lib/store/read-site.ts';
import { makeSite } from '../site-builder.ts';

const ACTOR = { who: 'A planner', at: '2026-03-02T06:30:00Z' };
const root = fileURLToPath(new URL('../..', import.meta.url));

let folder: string;
let path: string;
const opened: Database[] = [];

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'tinewise-store-'));
  path = join(folder, 'tinewise.db');
});
afterEach(() => {
  for (const db of opened.splice(0)) closeDatabase(db);
  rmSync(folder, { recursive: true, force: true });
});

function open(at = path, migrations?: string): Database {
  const db = openDatabase(at, migrations);
  opened.push(db);
  return db;
}

function pragma(db: Database, name: string): unknown {
  return db.values(sql.raw(`PRAGMA ${name}`))[0]?.[0];
}

describe('an open database', () => {
  it('keeps a write-ahead log, syncs every commit, waits for other writers and holds references', () => {
    const db = open();
    expect(pragma(db, 'journal_mode')).toBe('wal');
    expect(pragma(db, 'synchronous')).toBe(2); // FULL
    expect(pragma(db, 'busy_timeout')).toBe(10_000);
    expect(pragma(db, 'foreign_keys')).toBe(1);
  });

  it('opened again finds what was written', () => {
    const db = openDatabase(path);
    importSite(db, makeSite(), ACTOR);
    closeDatabase(db);
    expect(readSite(open())).toEqual(makeSite());
  });

  it('takes no row that refers to nothing, from wherever it is written', () => {
    const db = open();
    importSite(db, makeSite(), ACTOR);
    expect(() => db.$client.exec("INSERT INTO stock VALUES ('nowhere', 0, 'crates')")).toThrow(/FOREIGN KEY/);
    expect(() => db.$client.exec('DELETE FROM aisles')).toThrow(/FOREIGN KEY/);
    expect(() => db.$client.exec('UPDATE site SET only = 2')).toThrow(/CHECK/);
    expect(readSite(db)).toEqual(makeSite());
  });
});

describe('two connections', () => {
  it('see each other: a reader is not stopped by a writer and sees the old site until the commit', () => {
    const writer = open();
    const reader = open();
    importSite(writer, makeSite(), ACTOR);
    writer.transaction(
      () => {
        writer.run(sql`UPDATE site SET name = 'half-way'`);
        expect(readSite(reader)?.site.name).toBe('Harbour store');
      },
      { behavior: 'immediate' },
    );
    expect(readSite(reader)?.site.name).toBe('half-way');
  });

  it('take turns: a write waits while another process writes, then goes through', async () => {
    const db = open();
    importSite(db, makeSite(), ACTOR);
    const other = child(`
      const db = openDatabase(process.argv[1]);
      db.transaction(() => {
        process.stdout.write('writing');
        Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 700);
      }, { behavior: 'immediate' });
    `);
    await other.says('writing');
    const start = performance.now();
    expect(importSite(db, makeSite(), ACTOR)).toBe(2);
    expect(performance.now() - start).toBeGreaterThan(200);
    expect(await other.ended).toEqual({ code: 0, signal: null });
  });

  it('give up with a busy error when the other holds on for too long, and nothing is written', async () => {
    const db = open();
    importSite(db, makeSite(), ACTOR);
    db.run(sql`PRAGMA busy_timeout = 50`);
    const holder = open();
    holder.transaction(
      () => expect(() => importSite(db, makeSite({ site: { name: 'x' } }), ACTOR)).toThrow(/locked|busy/i),
      { behavior: 'immediate' },
    );
    expect(readRevision(db)).toBe(1);
    expect(readSite(db)).toEqual(makeSite());
  });

  it('may open a new file at the same moment: its tables are made once', async () => {
    const script = 'openDatabase(process.argv[1]);';
    const ends = await Promise.all([child(script).ended, child(script).ended, child(script).ended]);
    expect(ends.map((end) => end.code)).toEqual([0, 0, 0]);
    expect(isEmpty(open())).toBe(true);
  });
});

describe('a transaction', () => {
  it('that throws half-way leaves no trace, in the site or in the log', () => {
    const db = open();
    importSite(db, makeSite(), ACTOR);
    expect(() =>
      db.transaction(() => {
        db.run(sql`DELETE FROM checks`);
        db.run(sql`UPDATE site SET revision = 99`);
        throw new Error('the lights went out');
      }),
    ).toThrow('the lights went out');
    expect(readSite(db)).toEqual(makeSite());
    expect(readRevision(db)).toBe(1);
  });
});

describe('a backup', () => {
  it('is a whole copy, taken while the database is in use, that opens by itself', () => {
    const db = open();
    importSite(db, makeSite(), ACTOR);
    const copy = join(folder, "o'clock copy.db");
    backUpDatabase(db, copy);
    importSite(db, makeSite({ site: { name: 'later' } }), ACTOR);
    const restored = open(copy);
    expect(readSite(restored)).toEqual(makeSite());
    expect(readRevision(restored)).toBe(1);
  });

  it('never writes over a file that is there', () => {
    const db = open();
    const taken = join(folder, 'taken');
    writeFileSync(taken, 'precious');
    expect(() => backUpDatabase(db, taken)).toThrow();
    expect(readFileSync(taken, 'utf8')).toBe('precious');
  });
});

describe('a database that is not of this version', () => {
  it('from a newer one is refused by name and left as it is', () => {
    const db = openDatabase(path);
    importSite(db, makeSite(), ACTOR);
    db.run(sql`INSERT INTO __drizzle_migrations (hash, created_at) VALUES ('from the future', 9e12)`);
    db.run(sql`PRAGMA wal_checkpoint(TRUNCATE)`);
    closeDatabase(db);
    const before = readFileSync(path);
    expect(refusalOf(() => openDatabase(path))).toMatchObject({ reason: 'newer-version', path });
    expect(readFileSync(path).equals(before)).toBe(true);
  });

  it('from an older one is brought up to date with its facts in place', () => {
    const older = openDatabase(path);
    importSite(older, makeSite(), ACTOR);
    closeDatabase(older);
    const next = withMigration('ALTER TABLE docks ADD COLUMN height_mm real;');
    const db = open(path, next);
    expect(db.values(sql`SELECT id, height_mm FROM docks`)).toEqual([['dock-1', null]]);
    expect(readSite(db)).toEqual(makeSite());
    expect(refusalOf(() => openDatabase(path))).toMatchObject({ reason: 'newer-version' });
  });

  it('stays as it was when a migration fails half-way', () => {
    const older = openDatabase(path);
    importSite(older, makeSite(), ACTOR);
    closeDatabase(older);
    const broken = withMigration('DROP TABLE stock;--> statement-breakpoint\nALTER TABLE nowhere ADD x;');
    expect(() => openDatabase(path, broken)).toThrow(/nowhere/);
    expect(readSite(open())).toEqual(makeSite());
  });

  it('but somebody else’s is refused', () => {
    const other = openDatabase(path);
    other.run(sql`DROP TABLE __drizzle_migrations`);
    closeDatabase(other);
    expect(refusalOf(() => openDatabase(path))).toMatchObject({ reason: 'not-ours' });
  });

  it('and a file that is no database is refused by SQLite and left as it is', () => {
    writeFileSync(
      path,
      'A letter to the harbour master, long enough to be mistaken for something else. '.repeat(20),
    );
    const before = readFileSync(path);
    expect(() => openDatabase(path)).toThrow(/not a database/);
    expect(readFileSync(path).equals(before)).toBe(true);
  });
});

/** A copy of the migrations with one more at the end. */
function withMigration(statements: string): string {
  const copy = join(folder, 'migrations');
  cpSync(join(root, 'drizzle'), copy, { recursive: true });
  const journalPath = join(copy, 'meta/_journal.json');
  const journal = JSON.parse(readFileSync(journalPath, 'utf8'));
  const last = journal.entries.at(-1);
  journal.entries.push({ ...last, idx: last.idx + 1, when: last.when + 1, tag: 'one_more' });
  writeFileSync(journalPath, JSON.stringify(journal));
  writeFileSync(join(copy, 'one_more.sql'), statements);
  return copy;
}

function refusalOf(action: () => unknown): DatabaseRefused {
  try {
    action();
  } catch (error) {
    if (error instanceof DatabaseRefused) return error;
    throw error;
  }
  throw new Error('was not refused');
}

/** Another process that runs this script with `openDatabase` at hand and the database's path as its argument. */
function child(script: string) {
  const opener = "const { openDatabase } = await import('./lib/store/open-database.ts');";
  const args = ['--import', 'tsx', '--input-type=module', '-e', `${opener}\n${script}`, path];
  const process_ = spawn(process.execPath, args, { cwd: root, stdio: ['ignore', 'pipe', 'inherit'] });
  let said = '';
  process_.stdout.on('data', (chunk) => {
    said += chunk;
  });
  const ended = new Promise<{ code: number | null; signal: string | null }>((resolve) => {
    process_.on('exit', (code, signal) => resolve({ code, signal }));
  });
  return {
    ended,
    kill: () => process_.kill('SIGKILL'),
    says: async (word: string) => {
      while (!said.includes(word)) {
        if (process_.exitCode !== null)
          throw new Error(`ended with ${process_.exitCode} before it said ${word}`);
        await new Promise((done) => setTimeout(done, 5));
      }
    },
  };
}
