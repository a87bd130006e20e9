import { expect, type Page, test } from '@playwright/test';
import type { Site } from '../../lib/model/site.ts';
import { machineFaults, overflowPx } from './machine-faults.ts';
import { signedInAs } from './signed-in.ts';

test.use({ storageState: signedInAs('administrator') });

async function readIn(page: Page, name: string, text: string) {
  await page.getByLabel('Site file (JSON)').setInputFiles({
    name,
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
  await page.getByRole('button', { name: 'Read it in' }).click();
}

async function downloaded(page: Page): Promise<string> {
  const response = await page.request.get('/site/file');
  return response.text();
}

test('a site file that is wrong is refused line by line and changes nothing', async ({ page }) => {
  await page.goto('/site');
  const before = await downloaded(page);
  const site = JSON.parse(before) as Site;
  site.loads[0]!.depthMm = -5;
  site.stock[0]!.location = 'nowhere';
  await readIn(page, 'wrong.json', JSON.stringify(site));
  await expect(page.getByText('wrong.json: 2 faults.')).toBeVisible();
  const faults = page.getByRole('table', { name: 'Faults in the file' });
  await expect(faults).toContainText('$.loads[0].depthMm');
  await expect(faults).toContainText('a number above 0');
  await expect(faults).toContainText('$.stock[0].location');
  expect(await downloaded(page)).toBe(before);
});

test('a site file read in is the site, and the change log says who did it', async ({ page }) => {
  await page.goto('/site');
  const before = await downloaded(page);
  const site = JSON.parse(before) as Site;
  site.site.policy = { ...site.site.policy, thinPercent: 15 };
  await readIn(page, 'site.json', JSON.stringify(site));
  await expect(page.getByText(/was read in from site\.json/)).toBeVisible();
  const policy = page.getByRole('table', { name: 'Policy in force' }).getByRole('row', { name: /^Thin/ });
  await expect(policy).toContainText('15 %');
  await expect(policy).toContainText('10 %');
  await expect(policy).toContainText('Test administrator (administrator)');
  await expect(page.getByRole('table', { name: 'Last changes to the site' })).toContainText(
    'Test administrator (administrator)',
  );

  await readIn(page, 'before.json', before);
  await expect(page.getByText(/was read in from before\.json/)).toBeVisible();
  expect(await downloaded(page)).toBe(before);
});

test('the site screen fits a phone and holds no fault that a machine can find', async ({ page }) => {
  await page.goto('/site');
  for (const width of [1280, 390]) {
    await page.setViewportSize({ width, height: 844 });
    expect(await overflowPx(page)).toBe(0);
    expect(await machineFaults(page)).toEqual([]);
  }
});
