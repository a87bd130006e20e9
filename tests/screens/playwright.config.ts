import { rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';
import { chooseBrowser } from './choose-browser.mjs';
import { signedInAs } from './signed-in.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const output = fileURLToPath(new URL('./output', import.meta.url));
const port = process.env.SCREENS_PORT ?? '4390';

// The first reading of this file starts with no database; the workers that read it again find the variable set.
if (process.env.SCREENS_DATA === undefined) {
  process.env.SCREENS_DATA = `${output}/data`;
  rmSync(process.env.SCREENS_DATA, { recursive: true, force: true });
}

export default defineConfig({
  testDir: '.',
  testMatch: '**/*.e2e.ts',
  globalSetup: './signed-in.ts',
  outputDir: `${output}/results`,
  snapshotPathTemplate: '{testDir}/{testFileName}-{arg}{ext}',
  fullyParallel: false,
  workers: 1, // all tests share one server and one database
  forbidOnly: true,
  retries: 0, // a test that passes at the second try has failed
  timeout: 60_000,
  expect: { timeout: 10_000 },
  reporter: 'list',
  use: {
    baseURL: `http://127.0.0.1:${port}`,
    storageState: signedInAs('planner'), // who needs another role says so: signed-in.ts
    locale: 'en-GB',
    timezoneId: 'UTC',
    trace: 'retain-on-failure',
    screenshot: 'only-on-failure',
    launchOptions: {
      executablePath: chooseBrowser(),
      args: [
        ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
        '--disable-gpu',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-default-apps',
        '--disable-domain-reliability',
        '--disable-sync',
        '--metrics-recording-only',
        '--no-first-run',
        '--no-default-browser-check',
        '--no-pings',
      ],
    },
  },
  webServer: {
    command: 'node bin/start.mjs',
    cwd: root,
    url: `http://127.0.0.1:${port}/`,
    env: { PORT: port, TINEWISE_DATA: process.env.SCREENS_DATA },
    reuseExistingServer: false,
    timeout: 300_000, // it builds first when the build is stale
    stdout: 'pipe',
    gracefulShutdown: { signal: 'SIGTERM', timeout: 10_000 },
  },
});
