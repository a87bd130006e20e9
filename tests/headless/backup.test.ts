import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { importSite } from '../../lib/store/import-site.ts';
import { closeDatabase, type Database, openDatabase } from '../../lib/store/open-database.ts';
import { readRevision, readSite } from '../../lib/store/read-site.ts';
import { saveSiteName } from '../../lib/store/save-policy.ts';
import { makeSite } from '../site-builder.ts';
import { runTinewise } from './run-tinewise.ts';

const ACTOR = { who: 'A planner', at: '2026-03-02T06:30:00Z' };

let folder: string;
let db: Database;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'tinewise-commands-'));
  vi.stubEnv('TINEWISE_DATA', folder);
  db = openDatabase(join(folder, 'tinewise.db'));
  importSite(db, makeSite(), ACTOR);
});
afterEach(() => {
  vi.unstubAllEnvs();
  closeDatabase(db);
  rmSync(folder, { recursive: true, force: true });
});

it('backs up and restores by one command each, with the database open as a running server has it', async () => {
  const copy = join(folder, 'copy.db');
  const kept = await runTinewise(['backup', copy]);
  expect(kept).toMatchObject({ code: 0, stderr: '' });
  expect(kept.stdout).toMatch(/^Backed up to .*copy\.db: revision 1, \d+\.\d MB\.\n$/);
  saveSiteName(db, 'Pier store', ACTOR);
  const restored = await runTinewise(['restore', copy]);
  expect(restored).toMatchObject({ code: 0, stderr: '' });
  expect(restored.stdout).toMatch(/revision 3\.\nWhat was there before is kept in .*tinewise\.db\.replaced-/);
  expect(readSite(db)).toEqual(makeSite());
  expect(readRevision(db)).toBe(3);
  expect(readdirSync(folder).filter((name) => name.includes('replaced'))).toHaveLength(1);
});

it('says what stood against it, and changes nothing', async () => {
  const taken = join(folder, 'taken');
  writeFileSync(taken, 'precious');
  const refused = await runTinewise(['backup', taken]);
  expect(refused).toMatchObject({ code: 1, stdout: '' });
  expect(refused.stderr).toContain('is there already. Give another name, or --force');
  expect(readFileSync(taken, 'utf8')).toBe('precious');
  expect((await runTinewise(['backup', taken, '--force'])).code).toBe(0);

  const letter = join(folder, 'letter');
  writeFileSync(letter, 'To the harbour master. '.repeat(400));
  expect((await runTinewise(['restore', letter])).stderr).toContain(
    'is damaged. Take another backup. Nothing was changed.',
  );
  expect((await runTinewise(['restore', join(folder, 'nowhere')])).stderr).toContain(
    'is not there. Nothing was changed.',
  );
  expect((await runTinewise(['restore'])).stderr).toContain('a path was expected');
  expect(readRevision(db)).toBe(1);
});

it('backs up nothing where there is no database, and makes none', async () => {
  const empty = join(folder, 'empty');
  vi.stubEnv('TINEWISE_DATA', empty);
  const answer = await runTinewise(['backup', join(folder, 'copy.db')]);
  expect(answer.code).toBe(1);
  expect(answer.stderr).toContain('is not there. Start Tinewise once');
  expect(existsSync(empty)).toBe(false);
});
