// npm test: everything; `npm test -- unit` or `npm test -- screens` for one part; `npm run check` for what needs no build.
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { count, tallyOfPlaywright, tallyOfVitest } from './count-tests.mjs';
import { freePort } from './free-port.mjs';
import { buildWhenStale, demandNode, installWhenNeeded } from './make-ready.mjs';
import { isStopping, runNext, runNode, stopTogether } from './processes.mjs';

const PARTS = ['check', 'unit', 'screens'];
const BIOME = 'node_modules/@biomejs/biome/bin/biome';
const TSC = 'node_modules/typescript/bin/tsc';
const VITEST = 'node_modules/vitest/vitest.mjs';
const PLAYWRIGHT = 'node_modules/@playwright/test/cli.js';

const part = process.argv[2] ?? 'all';
if (part !== 'all' && !PARTS.includes(part)) {
  console.error(`Unknown part ${JSON.stringify(part)}; ${PARTS.join(', ')} was expected, or none for all.`);
  process.exit(1);
}

demandNode();
stopTogether();
const reports = mkdtempSync(join(tmpdir(), 'tinewise-test-'));
process.on('exit', () => rmSync(reports, { recursive: true, force: true }));

const failedStages = [];
const tallies = [];

if (!(await stage('install', installWhenNeeded))) process.exit(1);
if (part === 'all' || part === 'check') {
  await stage('lint and format', () =>
    runNode([BIOME, 'check', '--config-path=tests/lint-rules.json', '--error-on-warnings', '.']),
  );
  await stage('types', async () => {
    const generated = await runNext(['typegen']);
    return generated === 0 ? runNode([TSC, '--noEmit', '-p', 'tests']) : generated;
  });
}
if (part === 'check') {
  await testStage('import directions', 'layers.json', tallyOfVitest, (report) =>
    vitest(report, ['tests/layers.test.ts']),
  );
}
if (part === 'all' || part === 'unit') {
  await testStage('unit and property tests', 'vitest.json', tallyOfVitest, vitest);
}
if (part === 'all' || part === 'screens') {
  // without a build there is nothing to look at: the browser tests then count as one that failed
  const isBuilt = await stage('build', buildWhenStale);
  await testStage(
    'browser tests',
    'playwright.json',
    tallyOfPlaywright,
    isBuilt ? playwright : async () => 1,
  );
}

const total = count(tallies);
if (failedStages.length > 0) console.log(`\nFailed: ${failedStages.join(', ')}.`);
console.log(`\n${total.passed} passed, ${total.failed} failed`);
process.exit(failedStages.length === 0 && total.failed === 0 ? 0 : 1);

function vitest(report, files = []) {
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  return runNode([VITEST, 'run', '--config', 'tests/vitest.config.ts', ...reporters, ...files]);
}

async function playwright(report) {
  const { chooseBrowser } = await import('../tests/screens/choose-browser.mjs');
  try {
    chooseBrowser();
  } catch (error) {
    console.error(error.message);
    return 1;
  }
  const port = await freePort('127.0.0.1', 4390, 50);
  return runNode([PLAYWRIGHT, 'test', '--config', 'tests/screens', '--reporter=list,json'], {
    SCREENS_PORT: String(port),
    PLAYWRIGHT_JSON_OUTPUT_FILE: report,
  });
}

async function stage(name, work) {
  console.log(`\n--- ${name}`);
  const code = await work();
  if (isStopping()) process.exit(130);
  if (code !== 0) failedStages.push(name);
  return code === 0;
}

/** A stage with a report of its tests. No report: it broke down, which counts as one test that failed. */
async function testStage(name, file, tallyOf, work) {
  const report = join(reports, file);
  await stage(name, () => work(report));
  const read = existsSync(report) ? tallyOf(JSON.parse(readFileSync(report, 'utf8'))) : null;
  tallies.push(read ?? { passed: 0, failed: 1 });
}
