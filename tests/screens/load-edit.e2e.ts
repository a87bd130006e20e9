import { expect, test } from '@playwright/test';
import { machineFaults, overflowPx } from './machine-faults.ts';

const THIN = '\u202f';

test('a load is added up from its items and its pallet, and drawn, as it is typed', async ({ page }) => {
  await page.goto('/loads/new');
  await page.getByLabel('Id', { exact: true }).fill('E2E-DRUMS');
  await page.getByLabel('Name', { exact: true }).fill('Drums of the test');
  await page.getByLabel('Pallet', { exact: true }).selectOption({ label: `PT-TILE, 25${THIN}kg` });
  await page.getByLabel(/From its items and pallet/).check();
  await page.getByRole('button', { name: 'Add an item' }).click();
  await page.getByLabel('Item 1', { exact: true }).fill('drum');
  await page.getByLabel('One weighs').fill('250');
  await page.getByLabel('How many').fill('4');
  const sum = page.getByRole('table', { name: 'How the assessed mass comes about' });
  await expect(sum).toContainText(`1${THIN}025${THIN}kg`); // 4 x 250 + 25
  await expect(sum).toContainText('Allowance for a calculated mass');
  await page.getByLabel('Depth along the forks').fill('1.2 m');
  await page.getByLabel('Width', { exact: false }).first().fill('800');
  await page.getByLabel('Height, pallet included').fill('1000');
  await page.getByLabel('Centre of gravity from the fork heel').fill('650');
  const side = page.getByRole('img', { name: /from the side/ });
  await expect(side.locator('desc')).toContainText(`650${THIN}mm from the fork heel`);
  await page.getByRole('button', { name: 'Add the load' }).click();
  await expect(page).toHaveURL(/\/loads\/E2E-DRUMS\?saved=\d+/);
  await expect(page.getByText('Gross, calculated from its items')).toBeVisible();
  // declared instead: with its allowance of 10 % by default
  await page.getByRole('link', { name: 'Change it' }).click();
  await page.getByLabel(/^Declared/).check();
  await page.getByLabel('Gross mass, pallet included').fill('1000');
  await expect(sum).toContainText('Gross, declared, not weighed');
  await expect(sum).toContainText(`1${THIN}100${THIN}kg`);
  await page.getByRole('button', { name: 'Save the load' }).click();
  await expect(page).toHaveURL(/saved=/);
  await page.goto('/loads/E2E-DRUMS/edit');
  await page.getByText('Delete load E2E-DRUMS').first().click();
  await page.getByRole('button', { name: 'Delete load E2E-DRUMS' }).click();
  await expect(page).toHaveURL(/\/loads\?gone=\d+/);
  await page.getByRole('link', { name: 'See the change, or undo it' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Load E2E-DRUMS removed');
});

test('what a change comes to where the load stands is listed before it is saved', async ({ page }) => {
  await page.goto('/loads/ODD-01/edit');
  await page.getByLabel(/^Weighed/).check();
  const consequences = page.getByRole('region', { name: 'What the change comes to where it stands' });
  await page.getByLabel('Gross mass, pallet included').fill('9000');
  await expect(consequences.getByRole('status')).toContainText(
    /Of the \d+ locations where it stands, \d+ turn: \d+ for the worse/,
  );
  await expect(consequences.getByRole('listitem').first()).toContainText('turns for the worse');
  await page.getByLabel('Name', { exact: true }).fill('Not saved');
  await page.getByRole('link', { name: 'Leave without saving' }).click();
  await expect(page.getByRole('heading', { level: 1 })).not.toContainText('Not saved');
});

test('a load that stands somewhere is not deleted, and the places are named', async ({ page }) => {
  await page.goto('/loads/ODD-12/edit');
  await page.getByText('Delete load ODD-12').first().click();
  await page.getByRole('button', { name: 'Delete load ODD-12' }).click();
  await expect(page.getByText(/It cannot be deleted: it stands in \S+/)).toBeVisible();
});

test('bad input is told at its field, and nothing is lost', async ({ page }) => {
  await page.goto('/loads/new');
  await page.getByLabel('Name', { exact: true }).fill('Half a load');
  await page.getByLabel('Gross mass, pallet included').fill('1,200');
  await expect(page.getByText(/the comma in "1,200" may mean a thousand or a decimal/)).toBeVisible();
  await page.getByLabel('Depth along the forks').fill('0');
  await expect(page.getByText('0 came, a number above 0 was expected.')).toBeVisible();
  await page.getByRole('button', { name: 'Add the load' }).click();
  await expect(page.locator(':focus')).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Half a load');
  await page.getByLabel('Cases of it are picked by hand').check();
  await expect(page.getByLabel('One case weighs')).toHaveAttribute('aria-invalid', 'true');
});

test('two people at one load: the later one starts again or decides', async ({ page, context }) => {
  await page.goto('/loads/new?copy=TILE-049');
  await page.getByLabel('Id', { exact: true }).fill('TWO-LOADS');
  await page.getByRole('button', { name: 'Add the load' }).click();
  await expect(page).toHaveURL(/\/loads\/TWO-LOADS\?saved=/);
  const other = await context.newPage();
  await page.goto('/loads/TWO-LOADS/edit');
  await other.goto('/loads/TWO-LOADS/edit');
  await other.getByLabel('Picks a week').fill('77');
  await other.getByRole('button', { name: 'Save the load' }).click();
  await expect(other).toHaveURL(/saved=/);
  await page.getByLabel('Group').fill('my group');
  await page.getByRole('button', { name: 'Save the load' }).click();
  await expect(page.getByText(/Somebody else has changed this load/)).toBeVisible();
  await page.getByRole('button', { name: 'Put these into the form' }).click();
  await expect(page.getByLabel('Picks a week')).toHaveValue('77');
  await expect(page.getByLabel('Group')).toHaveValue('my group');
  await page.getByRole('button', { name: 'Save the load' }).click();
  await expect(page).toHaveURL(/saved=/);
  await page.goto('/loads/TWO-LOADS/edit');
  await page.getByText('Delete load TWO-LOADS').first().click();
  await page.getByRole('button', { name: 'Delete load TWO-LOADS' }).click();
  await expect(page).toHaveURL(/gone=/);
});

test('has no serious fault for people who hear or tab it, and fits a phone', async ({ page }) => {
  for (const path of ['/loads/ODD-12/edit', '/loads/new']) {
    for (const width of [1440, 390]) {
      await page.setViewportSize({ width, height: 844 });
      await page.goto(path);
      await expect(page.getByRole('heading', { name: 'What it weighs' })).toBeVisible();
      expect(await machineFaults(page), `${path} ${width}`).toEqual([]);
      expect(await overflowPx(page), `${path} ${width}`).toBeLessThanOrEqual(0);
    }
  }
});
