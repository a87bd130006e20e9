import { expect, test } from '@playwright/test';
import { machineFaults, overflowPx } from './machine-faults.ts';

test('the fleet is a table that says which truck may be used now', async ({ page }) => {
  await page.goto('/trucks');
  const table = page.getByRole('table', { name: 'Trucks of this site' });
  await expect(table.getByRole('row')).toHaveCount(15); // 14 trucks and the headings
  await expect(table.getByRole('row', { name: /NA-3/ })).toContainText('On hold');
  await expect(table.getByRole('row', { name: /CB-4/ })).toContainText('Check failed');
  await expect(table.getByRole('row', { name: /SK-2/ })).toContainText('Never checked');
  await page.getByLabel('Find a truck').fill('narrow');
  await expect(table.getByRole('row')).toHaveCount(4);
});

test('a truck leads from the list to its plate as it reads, its chart and its papers', async ({ page }) => {
  await page.goto('/trucks');
  await page.getByRole('link', { name: 'CB-2', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('CB-2');
  const upright = page.getByRole('table', { name: /Mast vertical, forks/ });
  await expect(upright.getByRole('columnheader', { name: '800\u202fmm' })).toBeVisible();
  await expect(upright.getByRole('row', { name: /^6.000.mm/ })).toContainText('2\u202f250\u202fkg');
  await expect(page.getByRole('table', { name: /Mast tilted forward/ })).toContainText('1\u202f450\u202fkg');
  await expect(
    page
      .getByRole('img', { name: /Load chart/ })
      .first()
      .locator('desc'),
  ).toContainText('mast tilted forward');
  await expect(page.getByRole('region', { name: 'Fit for service' })).toContainText('Who may drive it');
});

test('what a truck can take down adds up to everything that stands', async ({ page }) => {
  await page.goto('/trucks/CB-2');
  const served = page.getByRole('table', { name: /Standing pallets/ });
  const cells = await served.getByRole('row', { name: /^All/ }).getByRole('cell').allInnerTexts();
  const [standing, ...counts] = cells.map((text) => Number(text.replace(/\D/g, '')));
  expect(standing).toBeGreaterThan(0);
  expect(counts.reduce((sum, count) => sum + count, 0)).toBe(standing);
});

test('a plate that stops short of the mast says so, in words and on the chart', async ({ page }) => {
  await page.goto('/trucks/RT-3');
  await expect(page.getByRole('complementary', { name: 'About this plate' })).toContainText(
    'nothing is proven above',
  );
  await expect(page.getByText('Hatched: the plate states nothing there.')).toBeVisible();
});

test('a truck that is not there is not found', async ({ page }) => {
  const response = await page.goto('/trucks/XX-99');
  expect(response?.status()).toBe(404);
  await expect(page.getByText('There is nothing at this address')).toBeVisible();
});

test('the list is sorted and a truck opened with the keyboard alone', async ({ page }) => {
  await page.goto('/trucks');
  await page.getByRole('button', { name: 'Lifts to' }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('columnheader', { name: 'Lifts to' })).toHaveAttribute(
    'aria-sort',
    'ascending',
  );
  await page.keyboard.press('Enter');
  await expect(page.getByRole('table').getByRole('rowheader').first()).toContainText('NA-3'); // 9800 mm
  await page.getByRole('table').getByRole('link').first().focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('NA-3');
});

test('has no serious fault for people who hear or tab it, and fits a phone', async ({ page }) => {
  for (const [path, heading] of [
    ['/trucks', 'Trucks'],
    ['/trucks/CB-2', 'CB-2'],
    ['/trucks/RT-3', 'RT-3'],
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
