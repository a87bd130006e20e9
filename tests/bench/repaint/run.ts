import { mkdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from '@playwright/test';
import { freePort } from '../../../bin/free-port.mjs';
import { buildWhenStale } from '../../../bin/make-ready.mjs';
import { startNext, stopTogether } from '../../../bin/processes.mjs';
import type { Site } from '../../../lib/model/site.ts';
import { importSite } from '../../../lib/store/import-site.ts';
import { closeDatabase, openDatabase } from '../../../lib/store/open-database.ts';
import { rememberDemo } from '../../../lib/store/settings.ts';
import { chooseBrowser } from '../../screens/choose-browser.mjs';
import { benchSite } from '../bench-site.ts';
import { machine } from '../measure.ts';

/*
 * How long does the page's own thread work to paint 50 000 cells anew? One run of 50 000 locations, seen whole, half and
 * close, painted again by a key; and the overview's strips of as many. Run by `npm run bench:repaint`, by hand; never
 * part of the tests. Chromium draws without a graphics card here.
 */

const CELLS = 50_000;
const GOAL_MS = 16;
const folder = join(tmpdir(), 'tinewise-repaint');
const say = (text: string) => console.log(text);

stopTogether();
if ((await buildWhenStale()) !== 0) process.exit(1);
seed(oneRun(benchSite({ locations: CELLS, trucks: 20, seed: 1 })));
const port = await freePort('127.0.0.1', 4470, 20);
if (port === null) throw new Error('no port is free');
const server = startNext(['start', '-H', '127.0.0.1', '-p', String(port)], {
  TINEWISE_DATA: folder,
  TINEWISE_HOST: '127.0.0.1',
  NODE_ENV: 'production',
});
const browser = await chromium.launch({
  executablePath: chooseBrowser(),
  args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
});
try {
  say(machine());
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  // tsx names functions through a helper that the page does not have
  await page.addInitScript('globalThis.__name = (named) => named');
  await enter(page);
  await page.goto(`http://127.0.0.1:${port}/racks?asOf=not-judged`);
  const drawing = page.getByRole('application');
  await drawing.waitFor({ timeout: 60_000 });
  await page.getByText('Clear', { exact: false }).first().waitFor();
  await page.waitForTimeout(5000);
  await drawing.focus();
  for (const [name, keys] of [
    ['whole run of 50 000 cells', ['0']],
    ['one step in and out about the whole run', ['+', '-']],
    ['the cursor moved, close to', ['ArrowRight', 'ArrowLeft']],
  ] as const) {
    await report(name, await timeKeys(page, keys));
  }
} finally {
  await browser.close();
  server.kill('SIGTERM');
  rmSync(folder, { recursive: true, force: true });
}

/** All bays of a site in one run. */
function oneRun(site: Site): Site {
  const [first] = site.runs;
  const bays = site.runs.flatMap((run) => run.bays);
  const frame = first!.frames[0]!;
  const frames = Array.from({ length: bays.length + 1 }, (_, at) => ({ ...frame, id: `f${at}` }));
  return { ...site, runs: [{ ...first!, bays, frames }] };
}

function seed(site: Site): void {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const db = openDatabase(join(folder, 'tinewise.db'));
  const at = new Date().toISOString();
  importSite(db, site, { who: 'the measurement', at });
  rememberDemo(db, at);
  closeDatabase(db);
}

async function enter(page: Page): Promise<void> {
  for (let tries = 0; ; tries += 1) {
    try {
      await page.goto(`http://127.0.0.1:${port}/sign-in`);
      break;
    } catch (error) {
      if (tries > 50) throw error;
      await page.waitForTimeout(200);
    }
  }
  await page.getByRole('button', { name: /^planner/i }).click();
  await page.waitForURL((url) => !url.pathname.includes('sign-in'));
}

/** What the page's thread works from a key to the end of its painting, ms, 40 times. */
async function timeKeys(page: Page, keys: readonly string[]): Promise<number[]> {
  return page.evaluate(async (pressed) => {
    const on = document.querySelector('[role="application"]')!;
    const pause = () => new Promise((resolve) => setTimeout(resolve, 60));
    const times: number[] = [];
    for (let n = 0; n < 44; n += 1) {
      const key = pressed[n % pressed.length]!;
      const start = performance.now();
      on.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
      // React renders and paints a key's change before the next task
      await new Promise<void>((resolve) => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => resolve();
        port2.postMessage(null);
      });
      times.push(performance.now() - start);
      await pause();
    }
    return times.slice(4);
  }, keys);
}

async function report(name: string, times: number[]): Promise<void> {
  const rising = times.toSorted((a, b) => a - b);
  const median = rising[Math.floor(rising.length / 2)]!;
  const p95 = rising[Math.floor(rising.length * 0.95)]!;
  say(
    `  ${name.padEnd(45)} median ${median.toFixed(1)} ms, p95 ${p95.toFixed(1)}, most ${rising.at(-1)!.toFixed(1)}  (goal ${GOAL_MS} ms: ${median <= GOAL_MS ? 'met' : 'missed'})`,
  );
}
