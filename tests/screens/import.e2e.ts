import { readFile } from 'node:fs/promises';
import { type Download, expect, type Page, test } from '@playwright/test';
import type { Site } from '../../lib/model/site.ts';
import { machineFaults, overflowPx } from './machine-faults.ts';
import { signedInAs } from './signed-in.ts';

/** Every load and pallet that these tests bring in is called so; the racks screen and others know none of them. */
const PREFIX = `IMP-${Date.now().toString(36)}`;

/** Columns in an order of their own, decimal commas, inches, a byte order mark; one mass that is none, one word of its own. */
const ERP = [
  'Width (in);Gross weight;SKU;Description;Height (in);Weighed how;Length (in);Shelf no',
  `39,37;850,5;${PREFIX}-1;Pump sets;47,25;scale;47,24;7`,
  `39,37;about 300;${PREFIX}-2;Valves;35;scale;47,24;8`,
  `31,5;300;${PREFIX}-3;Hoses;40,5;label;47,24;9`,
].join('\r\n');

async function choose(page: Page, ...files: [name: string, text: string][]) {
  await page
    .getByLabel('Lists to read in')
    .setInputFiles(files.map(([name, text]) => ({ name, mimeType: 'text/csv', buffer: Buffer.from(text) })));
  for (const [name] of files) await expect(page.getByRole('heading', { name, exact: true })).toBeVisible();
}

async function textOf(download: Download): Promise<string> {
  return readFile((await download.path())!, 'utf8');
}

const count = (page: Page, list: RegExp, label: string) =>
  page.getByRole('region', { name: list }).locator('dl > div').filter({ hasText: label }).locator('dd');

test('a warehouse export is mended, tried, stored, and stands on the loads screen', async ({ page }) => {
  await page.goto('/import');
  await choose(page, ['erp.csv', `\ufeff${ERP}`]);
  await expect(page.getByLabel('It is a list of')).toHaveValue('loads');
  await expect(page.getByLabel('Load width', { exact: true })).toHaveValue('0');
  await expect(page.getByText('Passed over, since no fact comes from')).toContainText('Shelf no');

  // What the guess left open: the basis of the mass, in words of the file's own.
  await expect(page.getByRole('status').filter({ hasText: 'Not given yet' })).toContainText('Mass basis');
  await page.getByLabel('Mass basis').selectOption({ label: 'Weighed how' });
  await page.getByText('Mass basis: words of the file').click();
  await page.getByLabel('weighed is written as').fill('scale');
  await page.getByLabel('declared is written as').fill('label');
  await expect(page.getByText('Not given yet')).toBeHidden();

  // A wrong unit shows at once in what is read, and is put right.
  const height = page.getByRole('listitem').filter({ has: page.getByLabel('Load height', { exact: true }) });
  await page.getByLabel('Load height: in').selectOption('cm');
  await expect(height).toContainText(/472\.5\smm/);
  await page.getByLabel('Load height: in').selectOption('in');
  await expect(height).toContainText(/1\s200\.15\smm/); // 47.25 x 25.4

  await page.getByRole('button', { name: 'Try it without storing' }).click();
  await expect(page.getByText('Nothing would be stored')).toBeVisible();
  const refused = page.getByRole('table', { name: 'Refused rows of erp.csv' });
  await expect(refused).toContainText('row 3');
  await expect(refused).toContainText('Gross weight');
  await expect(refused).toContainText('"about 300" came, a number with a decimal comma');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Download the refused rows' }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('erp-refused.csv');
  const rows = await textOf(download);
  expect(rows).toContain(`${PREFIX}-2`);
  expect(rows).not.toContain(`${PREFIX}-1`);

  await page.getByLabel('Store the good rows').check();
  await page.getByRole('button', { name: 'Store 2 added, 0 changed' }).click();
  await expect(page.getByRole('heading', { name: 'Stored' })).toBeFocused();

  // The mended rows come with the headers of the refused ones; the file itself is known again.
  await page.getByRole('button', { name: 'Read in more' }).click();
  await choose(page, ['erp.csv', ERP.replace('about 300', '300,25')]);
  await expect(
    page.getByText(/Read as Test planner \(planner\) last read a file with these headers/),
  ).toBeVisible();
  await page.getByRole('button', { name: 'Try it without storing' }).click();
  await expect(count(page, /^Loads from erp\.csv/, 'Unchanged')).toHaveText('2');
  await page.getByRole('button', { name: 'Store 1 added, 0 changed' }).click();
  await expect(page.getByRole('heading', { name: 'Stored' })).toBeVisible();

  await page.goto(`/loads/${PREFIX}-1`);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Pump sets');
  await expect(page.getByRole('main')).toContainText(/850\.5\skg/);
  await page.goto(`/loads?find=${PREFIX}`);
  await expect(page.getByRole('main')).toContainText('Hoses');
});

test('several files go in together, in the order in which they need one another, and stand in the racks', async ({
  page,
}) => {
  const site = (await (await page.request.get('/export/site.json')).json()) as Site;
  const taken = new Set(site.stock.map(({ location }) => location));
  const empty = site.runs
    .flatMap(({ bays }) => bays.flatMap(({ levels }) => levels.flatMap(({ locations }) => locations)))
    .find((location) => !taken.has(location))!;
  await page.goto('/import');
  await choose(
    page,
    ['stock.csv', `Location,Load\n${empty},${PREFIX}-9\n`],
    [
      'goods.csv',
      `Load,Load name,Mass basis,Load depth (mm),Load width (mm),Load height (mm),Gross mass (kg)\n${PREFIX}-9,Gear boxes,weighed,1200,800,900,400\n`,
    ],
  );
  await page.getByRole('button', { name: 'Try it without storing' }).click();
  await expect(count(page, /^Loads from goods\.csv/, 'Added')).toHaveText('1');
  await expect(count(page, /^Stock from stock\.csv/, 'Added')).toHaveText('1');
  await page.getByRole('button', { name: 'Store 2 added, 0 changed' }).click();
  await expect(page.getByRole('heading', { name: 'Stored' })).toBeVisible();
  await page.goto(`/loads/${PREFIX}-9`);
  await expect(page.getByRole('main')).toContainText(empty);
});

test('a change is shown fact by fact, and a site that has changed meanwhile is shown anew instead of stored', async ({
  page,
  context,
}) => {
  const site = (await (await page.request.get('/export/site.json')).json()) as Site;
  const load = site.loads[0]!;
  const file = (kg: number): [string, string] => [
    'weights.csv',
    `Load,Gross mass (kg),Mass basis\n${load.id},${kg},weighed\n`,
  ];
  const first = load.grossKg === 401 ? 402 : 401;
  await page.goto('/import');
  await choose(page, file(first));
  await page.getByRole('button', { name: 'Try it without storing' }).click();
  const facts = page.getByRole('region', { name: 'Changed facts' });
  await expect(facts.getByRole('row').filter({ hasText: 'Gross mass' })).toContainText(`${first}`);

  const other = await context.newPage();
  await other.goto('/import');
  await choose(other, file(first + 7));
  await other.getByRole('button', { name: 'Try it without storing' }).click();
  await other.getByRole('button', { name: /^Store 0 added/ }).click();
  await expect(other.getByRole('heading', { name: 'Stored' })).toBeVisible();

  await page.getByRole('button', { name: /^Store 0 added/ }).click();
  await expect(page.getByText('The site has changed meanwhile.')).toBeVisible();
  await expect(facts.getByRole('row').filter({ hasText: 'Gross mass' })).toContainText(`${first + 7}`);
  await page.getByRole('button', { name: /^Store 0 added/ }).click();
  await expect(page.getByRole('heading', { name: 'Stored' })).toBeVisible();
  const after = (await (await page.request.get('/export/site.json')).json()) as Site;
  expect(after.loads[0]!.grossKg).toBe(first);
});

test('every list that is exported changes nothing when it is read in again', async ({ page }) => {
  await page.goto('/export');
  const files: [string, string][] = [];
  for (const [label, name] of [
    ['Racks and locations', 'locations.csv'],
    ['Loads', 'loads.csv'],
    ['Items of loads', 'items.csv'],
    ['Stock', 'stock.csv'],
    ['Aisles', 'aisles.csv'],
  ] as const) {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('link', { name: `${label} as CSV`, exact: true }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(new RegExp(`^[A-Za-z0-9-]+-\\d{4}-\\d{2}-\\d{2}-${name}$`));
    const text = await textOf(download);
    const row = page
      .getByRole('row')
      .filter({ has: page.getByRole('link', { name: `${label} as CSV`, exact: true }) });
    const rows = Number((await row.getByRole('cell').first().textContent())?.replace(/\D/g, ''));
    expect(rows).toBeGreaterThan(0);
    files.push([download.suggestedFilename(), text]);
  }
  await page.goto('/import');
  await choose(page, ...files);
  await page.getByRole('button', { name: 'Try it without storing' }).click();
  await expect(page.getByText('Nothing to store: the site says all of this already.')).toBeVisible({
    timeout: 30_000,
  });
  for (const label of ['Added', 'Changed', 'Rows refused']) {
    const counts = page
      .locator('dl > div')
      .filter({ hasText: new RegExp(`^${label}`) })
      .locator('dd');
    await expect(counts).toHaveText(files.map(() => '0'));
  }
});

test('all of it goes by keys alone', async ({ page }) => {
  await page.goto('/import');
  await choose(page, [
    'keys.csv',
    `Load,Load name,Load depth (mm),Load width (mm),Load height (mm)\n${PREFIX}-k,Keys,1200,800,900\n`,
  ]);
  const basis = page.getByRole('combobox', { name: /^Mass basis(?!:)/ });
  await basis.focus();
  await page.keyboard.press('t'); // the same for every row
  await expect(basis).toHaveValue('constant');
  await page.keyboard.press('Tab');
  await expect(page.getByLabel('Mass basis: in every row')).toBeFocused();
  await page.keyboard.press('d');
  await expect(page.getByLabel('Mass basis: in every row')).toHaveValue('declared');
  const tryIt = page.getByRole('button', { name: 'Try it without storing' });
  for (
    let presses = 0;
    presses < 60 && !(await tryIt.evaluate((it) => it === document.activeElement));
    presses++
  ) {
    await page.keyboard.press('Tab');
  }
  await page.keyboard.press('Enter');
  const store = page.getByRole('button', { name: 'Store 1 added, 0 changed' });
  await expect(store).toBeVisible();
  for (
    let presses = 0;
    presses < 20 && !(await store.evaluate((it) => it === document.activeElement));
    presses++
  ) {
    await page.keyboard.press('Tab');
  }
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Stored' })).toBeFocused();
});

test('reading and trying can be stopped, and go on afterwards', async ({ page }) => {
  await page.goto('/import');
  const rows = Array.from({ length: 60_000 }, (_, at) => `${PREFIX}-m${at},Many ${at},declared,1200,800,900`);
  await choose(page, [
    'many.csv',
    `Load,Load name,Mass basis,Load depth (mm),Load width (mm),Load height (mm)\n${rows.join('\n')}\n`,
  ]);
  await page.getByRole('button', { name: 'Try it without storing' }).click({ timeout: 30_000 });
  await page.getByRole('button', { name: 'Stop' }).click();
  await expect(page.getByText('Stopped. Nothing was stored.')).toBeVisible();
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect(page.getByRole('button', { name: /^Store 60\s000 added/ })).toBeVisible({ timeout: 40_000 });
});

test('the screens fit a phone and hold no serious fault that a machine can find', async ({ page }) => {
  await page.goto('/import');
  await choose(page, ['erp.csv', ERP]);
  await page.getByRole('button', { name: 'Try it without storing' }).click();
  await expect(page.getByText('Nothing would be stored')).toBeVisible();
  for (const width of [1440, 390]) {
    await page.setViewportSize({ width, height: 844 });
    expect(await overflowPx(page)).toBe(0);
    expect(await machineFaults(page)).toEqual([]);
  }
  await page.goto('/export');
  expect(await overflowPx(page)).toBe(0);
  expect(await machineFaults(page)).toEqual([]);
});

test.describe('somebody who may look only', () => {
  test.use({ storageState: signedInAs('viewer') });

  test('is told who reads lists in, and is refused by the server', async ({ page }) => {
    await page.goto('/import');
    await expect(page.getByText(/may read in lists; you are signed in as a viewer/)).toBeVisible();
    await expect(page.getByLabel('Lists to read in')).toBeHidden();
    expect((await page.request.post('/import/apply', { multipart: { asked: '{}' } })).status()).toBe(403);
  });
});
