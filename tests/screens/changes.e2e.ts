import { expect, test } from '@playwright/test';
import { machineFaults, overflowPx } from './machine-faults.ts';
import { signedInAs } from './signed-in.ts';

const LOAD = '/loads/ODD-12';

test('a change is found, looked at field by field, and undone after its consequences are shown', async ({
  page,
  browser,
}) => {
  await page.goto(LOAD);
  const title = page.getByRole('heading', { level: 1 });
  const before = await title.textContent();
  await page.goto(`${LOAD}/edit`);
  await page.getByLabel('Name', { exact: true }).fill('Undone by the test');
  await page.getByRole('button', { name: 'Save the load' }).click();
  await expect(page).toHaveURL(/saved=/);

  await page.goto('/changes?noun=load&find=undone+by+the+TEST');
  const item = page.getByRole('listitem').filter({ hasText: 'Load ODD-12 changed' }).first();
  await expect(item.getByRole('row').filter({ hasText: 'name' })).toContainText('Undone by the test');
  await item.getByRole('link', { name: 'Load ODD-12 changed' }).click();
  await expect(page).toHaveURL(/\/changes\/\d+$/);
  const address = page.url();

  const viewer = await browser.newContext({ storageState: signedInAs('viewer') });
  const looking = await viewer.newPage();
  await looking.goto(address);
  await expect(looking.getByText(/Only a planner may/)).toBeVisible();
  await expect(looking.getByRole('button', { name: 'Undo this change' })).toHaveCount(0);
  await viewer.close();

  const undoing = page.getByRole('region', { name: 'Undo it' });
  await expect(undoing.getByRole('row').filter({ hasText: 'name' })).toContainText('Undone by the test');
  await undoing.getByRole('button', { name: 'Undo this change' }).click();
  await expect(title).toContainText(/Load ODD-12 put back \(change \d+ undone\)/);
  await page.goto(address);
  await expect(page.getByText('It was undone by')).toBeVisible();
  await page.goto(LOAD);
  await expect(title).toHaveText(before!);
});

test('the list narrows by who, what and when, and says what of its address it could not read', async ({
  page,
}) => {
  await page.goto('/changes?kind=import&noun=site');
  await expect(
    page.getByRole('listitem').filter({ hasText: 'The whole site read in' }).first(),
  ).toBeVisible();
  await expect(page.getByRole('listitem').filter({ hasText: 'Load ODD-12' })).toHaveCount(0);
  await page.getByLabel('To day').fill('2001-01-01');
  await page.getByRole('button', { name: 'Show', exact: true }).click();
  await expect(page.getByText('No change matches.')).toBeVisible();
  await page.goto('/changes?noun=lorry');
  await expect(page.getByText(/could not be read and was left out/)).toBeVisible();
});

test('both screens fit a phone and have no serious fault for a reader of screens', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  for (const address of ['/changes', '/changes/1']) {
    await page.goto(address);
    expect(await overflowPx(page)).toBeLessThanOrEqual(0);
    expect(await machineFaults(page)).toEqual([]);
  }
});
