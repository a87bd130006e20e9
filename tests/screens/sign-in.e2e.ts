import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, type Page, test } from '@playwright/test';
import { eq } from 'drizzle-orm';
import { closeDatabase, openDatabase } from '../../lib/store/open-database.ts';
import { rememberDemo } from '../../lib/store/settings.ts';
import { people, sessions } from '../../lib/store/tables/people.ts';
import { PASSWORD, SIGNED_OUT, signedInAs } from './signed-in.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

test.use({ storageState: SIGNED_OUT });

// a test before may have read another site in
test.beforeAll(() => {
  const db = openDatabase(join(process.env.SCREENS_DATA!, 'tinewise.db'), join(root, 'drizzle'));
  rememberDemo(db, new Date().toISOString());
  closeDatabase(db);
});

async function signIn(page: Page, name: string, password: string) {
  await page.getByLabel('Sign-in name or e-mail').fill(name);
  await page.getByLabel('Password').fill(password);
  await page.getByRole('button', { name: 'Sign in' }).click();
}

test('who is not signed in comes to the sign-in screen and, signed in, to where they wanted', async ({
  page,
}) => {
  await page.goto('/loads?basis=declared');
  await expect(page).toHaveURL(/\/sign-in\?next=/);
  await expect(page.getByRole('navigation')).toHaveCount(0);
  await signIn(page, 'Viewer', 'not the right one');
  await expect(page.getByText('This name and password do not go together.')).toBeVisible();
  await signIn(page, 'Viewer', PASSWORD);
  await expect(page).toHaveURL(/\/loads\?basis=declared/);
  await page.getByRole('link', { name: 'Your account: Test viewer, viewer' }).click();
  await expect(page.getByText('You may look at everything and change nothing.')).toBeVisible();
  await page.getByRole('button', { name: 'Sign out' }).click();
  await expect(page).toHaveURL(/\/sign-in/);
  await page.goto('/loads');
  await expect(page).toHaveURL(/\/sign-in/);
});

test('no address leads out of Tinewise after signing in', async ({ page }) => {
  await page.goto('/sign-in?next=//evil.example/x');
  await signIn(page, 'viewer', PASSWORD);
  await expect(page.getByRole('navigation', { name: 'Screens' })).toBeVisible();
  expect(new URL(page.url()).pathname).toBe('/');
});

test('the demo can be looked round in each role without a password', async ({ page }) => {
  await page.goto('/sign-in');
  const roles = page.getByRole('region', { name: 'Look round the demo as' }).getByRole('button');
  await expect(roles).toHaveCount(5);
  await roles.filter({ hasText: 'Shift lead' }).click();
  await expect(page.getByRole('link', { name: /^Your account: Demo shift lead/ })).toBeVisible();
  await page.goto('/account');
  await expect(page.getByText('People of the demo have no password.')).toBeVisible();
});

test('what a role may not do is not offered, and who may is said', async ({ page }) => {
  await page.goto('/sign-in');
  await page.getByRole('button', { name: /^Viewer/ }).click();
  await expect(page.getByRole('navigation', { name: 'Screens' })).toBeVisible();
  await page.goto('/site');
  await expect(
    page.getByText('Only an administrator may read in a site file; you are signed in as a viewer.'),
  ).toBeVisible();
  await expect(page.getByLabel('Site file (JSON)')).toHaveCount(0);
  expect((await page.goto('/people'))?.status()).toBe(403);
  await expect(page.getByText('This is not for your role')).toBeVisible();
});

test('after too many wrong tries one has to wait, and is told how long', async ({ request, baseURL }) => {
  const post = () =>
    request.post('/api/auth/sign-in', {
      headers: { origin: baseURL! },
      data: { name: 'guesser', password: 'guess number one' },
    });
  for (let n = 0; n < 6; n++) expect((await post()).status()).toBe(401);
  const answer = await post();
  expect(answer.status()).toBe(429);
  expect(Number(answer.headers()['retry-after'])).toBeGreaterThan(800);
  expect((await answer.json()).message).toBe('Too many wrong tries. Try again in 15 minutes.');
});

test('a made-up address does not give new tries', async ({ request, baseURL }) => {
  const statuses = [];
  for (let n = 0; n < 7; n++) {
    const headers = { origin: baseURL!, 'x-forwarded-for': `198.51.100.${n}` };
    const data = { name: 'guesser-2', password: 'guess' };
    statuses.push((await request.post('/api/auth/sign-in', { headers, data })).status());
  }
  expect(statuses).toEqual([401, 401, 401, 401, 401, 401, 429]);
});

test('signing in takes a page of ours, no other path of the library is open, and no token is told', async ({
  request,
  baseURL,
}) => {
  const data = { name: 'viewer', password: PASSWORD };
  const post = (path: string, headers: Record<string, string>) => request.post(path, { data, headers });
  expect((await post('/api/auth/sign-in', {})).status()).toBe(403);
  expect((await post('/api/auth/sign-in', { origin: 'http://evil.example' })).status()).toBe(403);
  const own = { origin: baseURL! };
  for (const path of [
    'sign-up/email',
    'sign-in/email',
    'change-password',
    'update-user',
    'delete-user',
    'list-sessions',
  ]) {
    expect((await post(`/api/auth/${path}`, own)).status()).toBe(404);
  }
  expect((await request.get('/api/auth/get-session')).status()).toBe(405);
  const answer = await post('/api/auth/sign-in', own);
  expect([answer.status(), (await answer.body()).length]).toEqual([204, 0]);
  expect(answer.headers()['set-cookie']).toMatch(/HttpOnly; SameSite=Lax/i);
});

test('the demo is not looked round through a proxy or under another name', async ({ request, baseURL }) => {
  const ask = (headers: Record<string, string>) =>
    request.post('/api/auth/demo-sign-in', {
      data: { role: 'viewer' },
      headers: { origin: baseURL!, ...headers },
    });
  expect((await ask({ 'x-forwarded-for': '192.0.2.9' })).status()).toBe(403);
  expect((await ask({ host: 'depot.example', origin: 'http://depot.example' })).status()).toBe(403);
  expect((await ask({})).status()).toBe(204);
});

test('a session that has ended leads to the sign-in screen', async ({ page }) => {
  await page.goto('/sign-in');
  await signIn(page, 'viewer', PASSWORD);
  await expect(page.getByRole('navigation', { name: 'Screens' })).toBeVisible();
  const db = openDatabase(join(process.env.SCREENS_DATA!, 'tinewise.db'), join(root, 'drizzle'));
  const viewer = db.select().from(people).where(eq(people.email, 'viewer@sign-in-name.invalid')).all()[0]!;
  const own = db.select().from(sessions).where(eq(sessions.userId, viewer.id)).all();
  const newest = own.reduce((a, b) => (a.createdAt > b.createdAt ? a : b));
  db.update(sessions)
    .set({ expiresAt: new Date(Date.now() - 1) })
    .where(eq(sessions.id, newest.id))
    .run();
  closeDatabase(db);
  expect((await page.request.get('/api/site')).status()).toBe(401);
  await page.getByRole('link', { name: 'Trucks', exact: true }).click();
  await expect(page).toHaveURL(/\/sign-in\?next=%2Ftrucks$/);
});

test('an administrator lets somebody in by a link, changes the role, and signs them out by disabling', async ({
  browser,
}) => {
  const office = await browser.newPage({ storageState: signedInAs('administrator') });
  await office.goto('/account');
  await office.getByRole('link', { name: 'People and roles' }).click();
  const add = office.getByRole('region', { name: 'Let somebody in' });
  await add.getByLabel('Name', { exact: true }).fill('Wren Hollis');
  await add.getByLabel('Sign-in name or e-mail').fill('Wren');
  await add.getByLabel('Role').selectOption('shift-lead');
  await add.getByRole('button', { name: 'Add' }).click();
  const link = await add.getByLabel('One-time link').inputValue();
  expect(link).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/set-password\?link=[\w-]{32}$/);

  const floor = await browser.newPage({ storageState: SIGNED_OUT });
  await floor.goto(link);
  await expect(floor.getByText('Wren Hollis')).toBeVisible();
  const choose = async (password: string, again = password) => {
    await floor.getByLabel('New password').fill(password);
    await floor.getByLabel('The same once more').fill(again);
    await floor.getByRole('button', { name: 'Set the password' }).click();
  };
  await choose('wren hollis is here');
  await expect(floor.getByText("The password holds the person's own name.")).toBeVisible();
  await choose('pallets on a rainy day', 'pallets on a sunny day');
  await expect(floor.getByText('The two passwords differ.')).toBeVisible();
  await choose('pallets on a rainy day');
  await expect(floor).toHaveURL(/\/sign-in$/);
  await signIn(floor, 'wren', 'pallets on a rainy day');
  await expect(floor.getByRole('link', { name: 'Your account: Wren Hollis, shift lead' })).toBeVisible();
  await floor.goto(link);
  await expect(floor.getByText('This link is used or over.')).toBeVisible();

  await floor.goto('/account');
  const change = async (current: string, password: string) => {
    await floor.getByLabel('Password until now').fill(current);
    await floor.getByLabel('New password').fill(password);
    await floor.getByLabel('The same once more').fill(password);
    await floor.getByRole('button', { name: 'Change the password' }).click();
  };
  await change('something else entirely', 'pallets on a windy day');
  await expect(floor.getByText('The password until now is a different one.')).toBeVisible();
  await change('pallets on a rainy day', 'pallets on a windy day');
  await expect(floor.getByText('The password is changed.')).toBeVisible();

  const card = office
    .getByRole('listitem')
    .filter({ has: office.getByRole('heading', { name: 'Wren Hollis' }) });
  await office.reload();
  await card.getByLabel('Role').selectOption('planner');
  await card.getByRole('button', { name: 'Change the role' }).click();
  await expect(card.getByText('The role is changed')).toBeVisible();
  await floor.reload();
  await expect(floor.getByRole('heading', { name: 'Role: planner' })).toBeVisible();

  await card.getByRole('button', { name: 'Disable' }).click();
  await expect(card.getByText('Disabled, and signed out everywhere.')).toBeVisible();
  await floor.reload();
  await expect(floor).toHaveURL(/\/sign-in/);
  await signIn(floor, 'wren', 'pallets on a windy day');
  await expect(floor.getByText('This name and password do not go together.')).toBeVisible();
  await expect(office.getByRole('table', { name: 'Last changes to people' })).toContainText(
    'Test administrator (administrator)',
  );
  await office.close();
  await floor.close();
});

test('who looks round the demo as administrator lets nobody in and takes nobody over', async ({
  page,
  browser,
}) => {
  await page.goto('/sign-in');
  await page.getByRole('button', { name: /^Administrator/ }).click();
  await expect(page.getByRole('navigation', { name: 'Screens' })).toBeVisible();
  await page.goto('/people');
  await expect(page.getByText('People of the demo let nobody in.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Disable' })).toHaveCount(0);

  // the form of the real administrator, sent with the cookies of the demo one
  const office = await browser.newPage({ storageState: signedInAs('administrator') });
  await office.goto('/people');
  await office.context().clearCookies();
  await office.context().addCookies(await page.context().cookies());
  const card = office
    .getByRole('listitem')
    .filter({ has: office.getByRole('heading', { name: 'Test administrator' }) });
  await card.getByRole('button', { name: 'Link for a new password' }).click();
  await expect(card.getByText('People of the demo let nobody in.')).toBeVisible();
  await expect(card.getByLabel('One-time link')).toHaveCount(0);
  await office.close();
});

test('the last administrator cannot shut everybody out', async ({ browser }) => {
  const office = await browser.newPage({ storageState: signedInAs('administrator') });
  await office.goto('/people');
  const card = office
    .getByRole('listitem')
    .filter({ has: office.getByRole('heading', { name: 'Test administrator' }) });
  await card.getByRole('button', { name: 'Disable' }).click();
  await expect(card.getByText('This is the last administrator who can sign in')).toBeVisible();
  await office.close();
});
