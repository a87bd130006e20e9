import { expect, test } from '@playwright/test';

test('the front page opens, names the program and leaves no error in the console', async ({ page }) => {
  const errors: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(`${message.text()} ${message.location().url}`);
  });
  page.on('pageerror', (error) => errors.push(error.message));
  await page.goto('/');
  await expect(page).toHaveTitle(/Tinewise/);
  await expect(page.getByRole('main')).toBeVisible();
  await expect(page.getByRole('link', { name: 'Tinewise' })).toBeVisible();
  expect(errors).toEqual([]);
});

test('a fresh database shows the demo site by its name', async ({ page }) => {
  await page.goto('/site');
  await expect(page.getByRole('main')).toContainText('Tamblewick Quay Depot');
});
