import { expect, type Page, test } from '@playwright/test';
import { machineFaults, overflowPx } from './machine-faults.ts';

// The demo has 300 loads; other walks through the same server may have added a few of their own.
const list = (page: Page) => page.getByRole('table', { name: 'Loads of this site' });

test('loads come a page at a time, each with its mass and what that mass rests on', async ({ page }) => {
  await page.goto('/loads');
  await expect(page.getByText(/^1 to 50 of 3\d\d$/)).toBeVisible();
  await expect(list(page).getByRole('row', { name: /^ODD-08/ })).toContainText('declared');
  await expect(list(page).getByRole('row', { name: /^ODD-11/ })).toContainText('not known');
  await page.getByRole('link', { name: 'Next 50' }).click();
  await expect(page.getByText(/^51 to 100 of 3\d\d$/)).toBeVisible();
});

test('loads are found by words and narrowed by basis, and the address keeps it', async ({ page }) => {
  await page.goto('/loads');
  await page.getByLabel('Find a load').fill('ember bidets');
  await page.getByLabel('Mass').selectOption('declared');
  await page.getByRole('button', { name: 'Show', exact: true }).click();
  await expect(page).toHaveURL(/find=ember\+bidets&basis=declared/);
  const rows = list(page).getByRole('row');
  expect(await rows.count()).toBeGreaterThan(1);
  for (const row of (await rows.all()).slice(1)) await expect(row).toContainText(/Ember bidets.*declared/);
  await expect(page.getByLabel('Find a load')).toHaveValue('ember bidets');
});

test('the heaviest comes first when asked, and what is not weighed comes last', async ({ page }) => {
  await page.goto('/loads?sort=mass&direction=down&page=999');
  await expect(list(page).getByRole('row').last()).toContainText('not known');
  await expect(page.getByRole('columnheader', { name: 'Gross mass' })).toHaveAttribute(
    'aria-sort',
    'descending',
  );
});

test('what cannot be read in the address is named, and the list still comes', async ({ page }) => {
  await page.goto('/loads?basis=guessed&page=two');
  const refused = page.getByRole('alert').filter({ hasText: 'could not be read' });
  await expect(refused).toContainText('Basis of the mass: "guessed" came');
  await expect(refused).toContainText('Page: ');
  await expect(page.getByText(/^1 to 50 of 3\d\d$/)).toBeVisible();
});

test('a load shows its sum, its side view and who can take it down from where it stands', async ({
  page,
}) => {
  await page.goto('/loads/TILE-004?asOf=not-judged');
  const sum = page.getByRole('table', { name: 'How the assessed mass comes about' });
  await expect(sum.getByRole('row', { name: /^Assessed/ })).toContainText('769');
  await expect(page.getByRole('img', { name: /from the side/ }).locator('desc')).toContainText(
    '600\u202fmm from the fork heel',
  );
  const places = page.getByRole('region', { name: /Where it stands/ });
  await expect(places).toContainText('checks, holds and expiry dates not judged');
  await places
    .getByRole('list', { name: /Trucks that may take it down/ })
    .first()
    .getByRole('link')
    .first()
    .click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Take down');
  await expect(page.getByRole('region', { name: 'The answer' }).getByText(/^(Clear|Thin)$/)).toBeVisible();
});

test('a load that nobody weighed says so', async ({ page }) => {
  await page.goto('/loads/ODD-12');
  await expect(page.getByRole('region', { name: 'What it weighs' })).toContainText('not known');
});

test('a load that is picked by hand leads to the lift of one case', async ({ page }) => {
  await page.goto('/loads/SMALL-001');
  await expect(page.getByRole('link', { name: /Picked by hand/ })).toHaveAttribute(
    'href',
    '/hand-pick?load=SMALL-001',
  );
});

test('a load that is not there is not found', async ({ page }) => {
  expect((await page.goto('/loads/NOPE'))?.status()).toBe(404);
});

test('has no serious fault for people who hear or tab it, and fits a phone', async ({ page }) => {
  for (const [path, heading] of [
    ['/loads', 'Loads'],
    ['/loads/TILE-004', 'TILE-004'],
    ['/loads/ODD-12', 'ODD-12'],
  ] as const) {
    await page.setViewportSize({ width: 1440, height: 900 });
    await page.goto(path);
    await expect(page.getByRole('heading', { level: 1 })).toContainText(heading);
    expect(await machineFaults(page), path).toEqual([]);
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await overflowPx(page), path).toBeLessThanOrEqual(0);
    expect(await machineFaults(page), path).toEqual([]);
  }
});
