import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from '@playwright/test';
import { freePort } from '../../bin/free-port.mjs';
import { importSite } from '../../lib/store/import-site.ts';
import { closeDatabase, openDatabase } from '../../lib/store/open-database.ts';
import { makeSite } from '../site-builder.ts';
import { SIGNED_OUT } from './signed-in.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

test.use({ storageState: SIGNED_OUT });
test.describe.configure({ timeout: 120_000 });

type Server = { address: string; printed: string; stop: () => Promise<void> };

/** Starts Tinewise as `npm start` does, with this data folder, and waits until it has said how to get in. */
async function start(data: string, env: Record<string, string>): Promise<Server> {
  const port = await freePort('127.0.0.1', 4440, 40);
  const child = spawn(process.execPath, ['bin/start.mjs'], {
    cwd: root,
    env: { ...process.env, TINEWISE_DATA: data, PORT: String(port), ...env },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let printed = '';
  await new Promise<void>((ready, failed) => {
    child.stdout!.on('data', (text) => {
      printed += text;
      if (/first-start\?link=\S+\n/.test(printed)) ready();
    });
    child.on('exit', (code) => failed(new Error(`the launcher left with ${code}: ${printed}`)));
  });
  return { address: `http://127.0.0.1:${port}`, printed, stop: () => stop(child) };
}

function stop(child: ChildProcess): Promise<void> {
  return new Promise((stopped) => {
    child.removeAllListeners('exit').on('exit', () => stopped());
    child.kill('SIGTERM');
  });
}

let data: string;
test.beforeEach(() => {
  data = mkdtempSync(join(tmpdir(), 'tinewise-first-'));
});
test.afterEach(() => rmSync(data, { recursive: true, force: true }));

test('with a site of its own and nobody in it, everything leads to where the link is; the link makes one administrator', async ({
  page,
}) => {
  const db = openDatabase(join(data, 'tinewise.db'), join(root, 'drizzle'));
  importSite(db, makeSite(), { who: 'a planner', at: '2026-03-02T06:00:00Z' });
  closeDatabase(db);
  const server = await start(data, {});
  try {
    const link = server.printed.match(/http:\S+first-start\?link=\S+/)![0];
    for (const path of ['/', '/racks?run=x', '/people', '/sign-in', '/set-password?link=x']) {
      await page.goto(server.address + path);
      expect(page.url()).toBe(`${server.address}/first-start`);
    }
    await expect(page.getByText('The link to begin stands where Tinewise was started')).toBeVisible();
    expect((await page.request.get(`${server.address}/api/site`)).status()).toBe(401);
    const demo = await page.request.post(`${server.address}/api/auth/demo-sign-in`, {
      data: { role: 'administrator' },
      headers: { origin: server.address },
    });
    expect(demo.status()).toBe(403);

    await page.goto(`${server.address}/first-start?link=${'x'.repeat(32)}`);
    await expect(page.getByLabel('Your name')).toHaveCount(0);
    await page.goto(link);
    await page.getByLabel('Your name').fill('Ada Moss');
    await page.getByLabel('Sign-in name or e-mail').fill('ada');
    await page.getByLabel('New password').fill('seven tall blue racks');
    await page.getByLabel('The same once more').fill('seven tall blue racks');
    await page.getByRole('button', { name: 'Make the administrator' }).click();
    await expect(page).toHaveURL(`${server.address}/sign-in`);
    await expect(page.getByText('Look round the demo as')).toHaveCount(0);
    await page.getByLabel('Sign-in name or e-mail').fill('ada');
    await page.getByLabel('Password').fill('seven tall blue racks');
    await page.getByRole('button', { name: 'Sign in' }).click();
    await expect(page.getByRole('link', { name: 'Your account: Ada Moss, administrator' })).toBeVisible();
    await page.goto(link);
    await expect(page.getByText('Tinewise has an administrator already.')).toBeVisible();
  } finally {
    await server.stop();
  }
});

test('the demo is not offered by a server that other machines can reach, and its link leads in', async ({
  page,
}) => {
  const server = await start(data, { HOST: '0.0.0.0' });
  try {
    await page.goto(server.address);
    expect(page.url()).toBe(`${server.address}/first-start`);
    const demo = await page.request.post(`${server.address}/api/auth/demo-sign-in`, {
      data: { role: 'viewer' },
      headers: { origin: server.address },
    });
    expect(demo.status()).toBe(403);
  } finally {
    await server.stop();
  }
});

test('a new demo on its own machine opens without a password, and ends when another site is read in', async ({
  page,
}) => {
  const server = await start(data, {});
  try {
    expect(server.printed).toContain('no password is asked');
    await page.goto(server.address);
    await page.getByRole('button', { name: /^Administrator/ }).click();
    await expect(page.getByRole('navigation', { name: 'Screens' })).toBeVisible();
    await page.goto(`${server.address}/site`);
    const site = await (await page.request.get(`${server.address}/site/file`)).text();
    await page
      .getByLabel('Site file (JSON)')
      .setInputFiles({ name: 'own.json', mimeType: 'application/json', buffer: Buffer.from(site) });
    await page.getByRole('button', { name: 'Read it in' }).click();
    await expect(async () => {
      await page.goto(`${server.address}/racks`);
      expect(page.url()).toBe(`${server.address}/first-start`);
    }).toPass();
  } finally {
    await server.stop();
  }
});
