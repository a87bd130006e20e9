import { expect, type Page, test } from '@playwright/test';
import { machineFaults, overflowPx } from './machine-faults.ts';

const counts = (page: Page) => page.getByRole('list', { name: 'Findings by severity' });
const listed = (page: Page) => page.getByText(/^\d[\d\u202f]* (in all|of )/);
const items = (page: Page) => page.getByRole('region').getByRole('listitem');
const kind = (page: Page, name: RegExp) => page.getByRole('region', { name });

async function audited(page: Page) {
  await expect(counts(page)).not.toContainText('·', { timeout: 30_000 });
}

async function countOf(page: Page, severity: string): Promise<number> {
  const text = await counts(page).getByRole('button', { name: severity }).locator('strong').textContent();
  return Number((text ?? '').replace(/\D/g, ''));
}

test('a safety officer sees what must stop, the gravest first, and opens the rack with the place marked', async ({
  page,
}) => {
  await page.goto('/');
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('link', { name: 'Findings' }).click();
  await audited(page);
  const [stop, plan, note] = [
    await countOf(page, 'Stop'),
    await countOf(page, 'Plan'),
    await countOf(page, 'Note'),
  ];
  await expect(listed(page)).toHaveText(`${stop + plan + note} in all`);

  // the demo overloads two beam pairs: see lib/demo/trouble.ts
  const beams = kind(page, /^Beam pair overloaded/);
  await expect(beams.getByRole('listitem')).toHaveCount(2);
  const first = beams.getByRole('listitem').filter({ hasText: 'bay A5-L-03, level 2' });
  await expect(first).toContainText('too much');
  await expect(first).toContainText('Take load off until the limit is met');
  await expect(first).toContainText('Rule: Beam pair');
  await first.getByRole('link', { name: /^Rack A5-L at A5-L-03-2-/ }).click();
  await expect(page).toHaveURL(/\/racks\?.*location=A5-L-03-2-\d.*run=A5-L/);
  await expect(page.getByText(/^A5-L-03-2-\d: level 2.*Refuse, decided by: Beam pair/)).toBeVisible({
    timeout: 30_000,
  });
  await page.goBack();
  await audited(page);
  await kind(page, /^Only one truck can take it down/)
    .getByRole('link', { name: 'Truck CB-2' })
    .first()
    .click();
  await expect(page).toHaveURL(/\/trucks\/CB-2$/);
});

test('the list is narrowed by severity, kind, place, truck and words, and the address says so', async ({
  page,
}) => {
  await page.goto('/findings');
  await audited(page);
  const stop = await countOf(page, 'Stop');
  await counts(page).getByRole('button', { name: 'Stop' }).click();
  await expect(page).toHaveURL(/severity=stop/);
  await expect(listed(page)).toHaveText(new RegExp(`^${stop} of `));
  await page.getByLabel('Where', { exact: true }).selectOption('aisle A6');
  await expect(page).toHaveURL(/aisle=A6/);
  await page.getByLabel('Words', { exact: true }).fill('ODD-07 tall');
  await expect(kind(page, /^Load too tall/).getByRole('listitem')).toHaveCount(2);
  await page.getByLabel('Where', { exact: true }).selectOption('run A6-R');
  await expect(kind(page, /^Load too tall/).getByRole('listitem')).toHaveCount(1);

  const address = page.url();
  await page.goto('/findings');
  await page.goto(address);
  await audited(page);
  await expect(kind(page, /^Load too tall/).getByRole('listitem')).toHaveCount(1);
  await expect(page.getByLabel('Words', { exact: true })).toHaveValue('ODD-07 tall');

  await page.getByRole('button', { name: 'Show all' }).first().click();
  await page.getByLabel('Truck', { exact: true }).selectOption('RT-3');
  await expect(kind(page, /^Plate stops below the mast/)).toContainText('truck RT-3');
  await page.getByLabel('Kind', { exact: true }).selectOption('out-of-reach');
  await expect(page.getByText('No finding matches. Ask for less at once.')).toBeVisible();
});

test('without a time, checks and dates are not judged', async ({ page }) => {
  await page.goto('/findings');
  await audited(page);
  await expect(kind(page, /^Truck without a valid check/)).toHaveCount(1);
  await page.getByLabel('Checks, holds and expiry dates').selectOption('not-judged');
  await expect(page).toHaveURL(/asOf=not-judged/);
  await expect(page.getByText(/^Checks, holds and expiry dates not judged\./).first()).toBeVisible();
  await expect(kind(page, /^Truck without a valid check/)).toHaveCount(0);
  await expect(kind(page, /^Beam pair overloaded/)).toHaveCount(1);
});

test('what is listed is taken away as CSV, and all of it goes to paper', async ({ page }) => {
  await page.goto('/findings?severity=stop');
  await audited(page);
  const stop = await countOf(page, 'Stop');
  const downloaded = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Download CSV' }).click();
  const chunks: Buffer[] = [];
  for await (const chunk of await (await downloaded).createReadStream()) chunks.push(chunk as Buffer);
  const lines = Buffer.concat(chunks).toString('utf8').split('\r\n');
  expect(lines).toHaveLength(stop + 1);
  expect(lines.slice(1).every((line) => line.startsWith('stop,'))).toBe(true);

  await page.goto('/findings');
  await audited(page);
  const screen = await items(page).count();
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
  const paper = await items(page).count();
  expect(paper).toBeGreaterThan(screen);
  await expect(page.getByRole('navigation', { name: 'Screens' })).toBeHidden();
  await expect(page.getByText(/^Judged as of/).filter({ visible: true })).toHaveCount(1);
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
  await expect(items(page)).toHaveCount(screen);
});

test('the audit can be stopped, and asked for again', async ({ page, context }) => {
  // the worker's script is held back, so that the answer is long in coming
  let letGo = () => {};
  const held = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  await context.route(/worker/, async (route) => {
    await held;
    await route.continue();
  });
  await page.goto('/findings');
  await page.getByRole('button', { name: 'Stop', exact: true }).click();
  await expect(page.getByText('Stopped. What is shown may not be what was asked.')).toBeVisible();
  letGo();
  await page.getByRole('button', { name: 'Ask again' }).click();
  await audited(page);
});

test('keys alone open "More" and the findings narrow by key; nothing is wrong that a machine can find', async ({
  page,
}) => {
  await page.goto('/findings');
  await audited(page);
  const more = page.getByRole('button', { name: 'More' });
  await more.focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('link', { name: 'Changes', exact: true })).toBeVisible();
  expect(await machineFaults(page)).toEqual([]);
  await page.keyboard.press('Tab');
  await expect(page.getByRole('link', { name: 'Shape of racks' })).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(more).toBeFocused();
  await expect(page.getByRole('link', { name: 'Changes', exact: true })).toBeHidden();
  await counts(page).getByRole('button', { name: 'Note' }).focus();
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/severity=note/);
});

test('the findings fit a phone, with the other screens below "More"', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('/findings');
  await audited(page);
  expect(await overflowPx(page)).toBe(0);
  const bar = page.getByRole('navigation', { name: 'Screens' });
  await expect(bar.getByRole('link')).toHaveText(['Overview', 'Racks', 'Which truck', 'Findings']);
  await bar.getByRole('button', { name: 'More' }).click();
  for (const name of ['Trucks', 'Loads', 'Site', 'Changes'])
    await expect(bar.getByRole('link', { name, exact: true })).toBeVisible();
  await expect(bar.getByRole('link', { name: 'People' })).toHaveCount(0); // for administrators
  expect(await overflowPx(page)).toBe(0);
  const small = await page.evaluate(() =>
    [...document.querySelectorAll('button, select, input, nav a')]
      .map((element) => ({
        is: element.outerHTML.slice(0, 60),
        height: element.getBoundingClientRect().height,
      }))
      .filter(({ height }) => height > 0 && height < 44),
  );
  expect(small).toEqual([]);
  expect(await machineFaults(page)).toEqual([]);
  await bar.getByRole('link', { name: 'Loads', exact: true }).click();
  await expect(page).toHaveURL(/\/loads$/);
});
