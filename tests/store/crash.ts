import { strict as assert } from 'node:assert';
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { sql } from 'drizzle-orm';
import { readChanges } from '../../lib/store/change-log.ts';
import { importSite } from '../../lib/store/import-site.ts';
import { closeDatabase, openDatabase } from '../../lib/store/open-database.ts';
import { readRevision, readSite } from '../../lib/store/read-site.ts';
import { seededRandom } from '../bench/bench-site.ts';
import { type CrashWork, firstSite, nextSite } from './crash-sites.ts';

/** When the process died, by what it had said: in the midst of a change, or between two. */
export type Death = { when: 'during'; stands: 'old' | 'new' } | { when: 'between'; stands: 'exact' };

const LATEST_KILL_MS = 250;
const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/**
 * Kills (SIGKILL) a process that changes a site, at a moment of this seed, and looks at what it leaves: the site before
 * the change it was at or the one after it, whole, with its log; and every change that it was told is kept. Throws when
 * it is anything else.
 */
export async function killOnce(work: CrashWork, seed: number): Promise<Death> {
  const folder = mkdtempSync(join(tmpdir(), 'tinewise-crash-'));
  const path = join(folder, 'tinewise.db');
  try {
    const db = openDatabase(path);
    importSite(db, firstSite(), { who: 'The first', at: '2026-03-02T00:00:00Z' });
    closeDatabase(db);
    const said = await runAndKill(path, work, seededRandom(seed)() * LATEST_KILL_MS);
    return judge(path, work, said);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function runAndKill(path: string, work: CrashWork, afterMs: number): Promise<string[]> {
  const child = spawn(process.execPath, ['--import', 'tsx', 'tests/store/crash-child.ts', path, work], {
    cwd: ROOT,
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  let said = '';
  const begun = new Promise<void>((resolve) => {
    child.stdout.on('data', (chunk) => {
      said += chunk;
      if (said.includes('ready\n')) child.stdin.write('go');
      if (said.includes('begin 1\n')) resolve();
    });
  });
  const ended = new Promise<string | null>((resolve) =>
    child.on('close', (_code, signal) => resolve(signal)),
  );
  await Promise.race([begun, ended]);
  await sleep(afterMs);
  child.kill('SIGKILL');
  assert.equal(await ended, 'SIGKILL', 'the process ended by itself');
  return said.trim().split('\n');
}

function judge(path: string, work: CrashWork, said: readonly string[]): Death {
  const [word, count] = said.at(-1)!.split(' ');
  const last = Number(count);
  const allowed = word === 'begin' ? [last - 1, last] : [last];
  const db = openDatabase(path);
  try {
    assert.deepEqual(db.values(sql`PRAGMA integrity_check`), [['ok']]);
    assert.deepEqual(db.values(sql`PRAGMA foreign_key_check`), []);
    const made = readRevision(db) - 1;
    assert.ok(allowed.includes(made), `said "${said.at(-1)}" and left ${made} changes`);
    assert.equal(readChanges(db, { limit: made + 2 }).length, made + 1);
    let expected = firstSite();
    for (let n = 0; n < made; n += 1) expected = nextSite(expected, work);
    assert.deepEqual(readSite(db), expected);
    if (word !== 'begin') return { when: 'between', stands: 'exact' };
    return { when: 'during', stands: made === last ? 'new' : 'old' };
  } finally {
    closeDatabase(db);
  }
}

/** How the processes died, counted by what they left. */
export function tallyOf(deaths: readonly Death[]): { duringOld: number; duringNew: number; between: number } {
  const count = (stands: Death['stands']) => deaths.filter((death) => death.stands === stands).length;
  return { duringOld: count('old'), duringNew: count('new'), between: count('exact') };
}
