import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { availableParallelism, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { freePort } from '../../../bin/free-port.mjs';
import { buildWhenStale } from '../../../bin/make-ready.mjs';
import { startNext, stopTogether } from '../../../bin/processes.mjs';
import type { Site } from '../../../lib/model/site.ts';
import { importSite } from '../../../lib/store/import-site.ts';
import { closeDatabase, openDatabase } from '../../../lib/store/open-database.ts';
import * as save from '../../../lib/store/save-site.ts';
import { moveStockRow } from '../../../lib/store/save-stock.ts';
import { rememberDemo } from '../../../lib/store/settings.ts';
import { seededRandom } from '../bench-site.ts';
import { enlargeDemo } from './enlarge-demo.ts';
import { Person, type Sample } from './person.ts';
import { readsOf } from './reads.ts';

/*
 * How long do 25 people wait when they work at once on a site of 200 000 locations? Run by `npm run bench:load`, by hand;
 * never part of the tests. Stops by itself: PEOPLE_S seconds of people who think between two requests, then RUSH_S
 * seconds without a thought. Every fifth request is an edit.
 */

const SIZE = { locations: 200_000, trucks: 200, loads: 50_000 };
const PEOPLE = 25;
const PEOPLE_S = Number(process.env.PEOPLE_S ?? 45);
const RUSH_S = Number(process.env.RUSH_S ?? 10);
const MOST_REQUESTS = 20_000;
const GOAL_P95_MS = 300;

const folder = process.env.LOAD_DATA ?? join(tmpdir(), 'tinewise-load');
const say = (text = '') => console.log(text);

stopTogether();
if ((await buildWhenStale()) !== 0) process.exit(1);
const now = new Date().toISOString();
const site = enlargeDemo(SIZE, now);
const seeded = seed(site);
const port = await freePort('127.0.0.1', Number(process.env.LOAD_PORT ?? 4420), 20);
if (port === null) throw new Error('no port is free');
const server = startNext(['start', '-H', '127.0.0.1', '-p', String(port)], {
  TINEWISE_DATA: folder,
  TINEWISE_HOST: '127.0.0.1',
  NODE_ENV: 'production',
});
try {
  await serverAnswers();
  await measurePeople();
} finally {
  server.kill('SIGTERM');
  rmSync(folder, { recursive: true, force: true });
}

/** A new database with the site and, for each person, one change to undo: a pallet moved, a load weighed, a truck held. */
function seed(site: Site): { change: number; role: string }[] {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const db = openDatabase(join(folder, 'tinewise.db'));
  const start = performance.now();
  importSite(db, site, { who: 'the load test', at: now });
  rememberDemo(db, now);
  say(`imported in ${((performance.now() - start) / 1000).toFixed(1)} s`);
  const stocked = new Set(site.stock.map(({ location }) => location));
  const empty = site.runs
    .flatMap((run) => run.bays.flatMap((bay) => bay.levels.flatMap((level) => level.locations)))
    .filter((location) => !stocked.has(location));
  const made = Array.from({ length: PEOPLE }, (_, at) => {
    const actor = { who: `Person ${at}`, at: now };
    const stock = site.stock[at * 97]!;
    const load = site.loads[at * 89]!;
    const truck = site.trucks[at]!;
    const [role, saved] =
      at % 3 === 0
        ? (['planner', moveStockRow(db, stock.location, empty[at * 13]!, actor)] as const)
        : at % 3 === 1
          ? ([
              'planner',
              save.saveLoad(db, { ...load, grossKg: 500 + at, massBasis: 'weighed' }, actor),
            ] as const)
          : ([
              'safety-officer',
              save.saveTruck(db, { ...truck, hold: { since: now, reason: `Reason ${at}` } }, actor),
            ] as const);
    if (!saved.ok) throw new Error(JSON.stringify(saved));
    return { role, change: saved.revision };
  });
  closeDatabase(db);
  return made;
}

async function serverAnswers(): Promise<void> {
  const end = Date.now() + 60_000;
  for (;;) {
    try {
      await fetch(`http://127.0.0.1:${port}/sign-in`);
      return;
    } catch {
      if (Date.now() > end) throw new Error('the server does not answer');
      await sleep(200);
    }
  }
}

async function measurePeople(): Promise<void> {
  const warm: Sample[] = [];
  const first = new Person(port!, seeded[0]!.change, warm);
  await first.signIn('planner');
  const reads = readsOf(site);
  for (const { what, path } of reads) await first.read(what, path(0));
  const start = performance.now();
  await first.read('first site', '/api/site');
  say(`the whole site, zipped, the first time after the start: ${Math.round(performance.now() - start)} ms`);
  say(`memory of the server after the first requests: ${memory()}`);
  first.leave();

  for (const [name, seconds, thinks] of [
    [`${PEOPLE} people who read 1 to 3 s between two requests, ${PEOPLE_S} s`, PEOPLE_S, true],
    [`${PEOPLE} people without a thought between, ${RUSH_S} s`, RUSH_S, false],
  ] as const) {
    const samples: Sample[] = [];
    const began = performance.now();
    const usedBefore = processorS();
    await Promise.all(seeded.map((_, at) => work(at, performance.now() + seconds * 1000, thinks, samples)));
    report(name, samples, (performance.now() - began) / 1000, thinks);
    const usedMs = ((processorS() - usedBefore) * 1000) / samples.length;
    say(
      `the server used ${usedMs.toFixed(0)} ms of processor time a request; load average of the machine ${loadavg()[0]!.toFixed(1)} on ${availableParallelism()} cores`,
    );
  }
}

async function work(at: number, end: number, thinks: boolean, samples: Sample[]): Promise<void> {
  // neighbouring seeds of the generator begin alike: 25 people would ask the same at once
  const random = seededRandom(Math.imul(at + 1, 0x9e3779b1));
  const own = seeded[at]!;
  const person = new Person(port!, own.change, samples);
  await person.signIn(own.role);
  const reads = readsOf(site);
  if (thinks) await sleep(random() * 3000);
  for (let n = 0; performance.now() < end && samples.length < MOST_REQUESTS; n += 1) {
    if (n % 5 === 4) own.change = await person.edit();
    else {
      const { what, path } = reads[Math.floor(random() * reads.length)]!;
      await person.read(what, path(random()));
    }
    if (thinks) await sleep(1000 + random() * 2000);
  }
  person.leave();
}

/** The goal is for people; without a thought between, what is measured is how much the server can do at all. */
function report(name: string, samples: readonly Sample[], seconds: number, hasGoal: boolean): void {
  say(`\n${name}: ${samples.length} requests, ${(samples.length / seconds).toFixed(0)} a second`);
  say(
    `${'what'.padEnd(22)}${'n'.padStart(6)}${'p50'.padStart(8)}${'p95'.padStart(8)}${'max'.padStart(8)}  ms`,
  );
  const kinds = [...new Set(samples.map(({ what }) => what))].sort();
  for (const kind of kinds)
    row(
      kind,
      samples.filter(({ what }) => what === kind),
    );
  const reads = row(
    'ALL READS',
    samples.filter(({ isEdit }) => !isEdit),
  );
  const edits = row(
    'ALL EDITS',
    samples.filter(({ isEdit }) => isEdit),
  );
  const met = reads < GOAL_P95_MS && edits < GOAL_P95_MS;
  if (hasGoal) say(`goal (p95 below ${GOAL_P95_MS} ms for reads and edits): ${met ? 'met' : 'NOT met'}`);
  say(`memory ${memory()}`);
}

function row(name: string, samples: readonly Sample[]): number {
  const ms = samples.map((sample) => sample.ms).sort((a, b) => a - b);
  const at = (part: number) => ms[Math.min(ms.length - 1, Math.ceil(part * ms.length) - 1)] ?? 0;
  const cells = [at(0.5), at(0.95), at(1)].map((value) => value.toFixed(0).padStart(8));
  say(`${name.padEnd(22)}${String(ms.length).padStart(6)}${cells.join('')}`);
  return at(0.95);
}

/** Processor time that the server has used so far, s; NaN where the system does not tell (not Linux). */
function processorS(): number {
  try {
    const fields = readFileSync(`/proc/${server.pid}/stat`, 'utf8').split(') ')[1]!.split(' ');
    return (Number(fields[11]) + Number(fields[12])) / 100;
  } catch {
    return Number.NaN;
  }
}

/** What the server holds now and at most has held, from the process table; nothing where there is none (not Linux). */
function memory(): string {
  try {
    const status = readFileSync(`/proc/${server.pid}/status`, 'utf8');
    const mb = (key: string) => Math.round(Number(new RegExp(`${key}:\\s+(\\d+)`).exec(status)?.[1]) / 1024);
    return `${mb('VmRSS')} MB now, ${mb('VmHWM')} MB at most`;
  } catch {
    return 'not known on this system';
  }
}
