import { expect, type Page, test } from '@playwright/test';
import { machineFaults, overflowPx } from './machine-faults.ts';

const ranked = (page: Page) => page.getByRole('list', { name: 'All trucks, best first' });

test('a shift lead asks with a phone: the answer stands first, a tap shows the working', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('/which-truck');
  await page.getByLabel('Location', { exact: true }).fill('a1-l-02-2-2');
  await page.getByLabel('Load', { exact: true }).fill('tile-004');
  await page.getByText('When, who drives, racks').click();
  await page.getByLabel('Leave checks, holds and expiry dates out').check();
  await page.getByRole('button', { name: 'Which truck?' }).click();
  await expect(
    page.getByRole('region', { name: 'The answer' }).getByText('Clear', { exact: true }).first(),
  ).toBeInViewport();
  await expect(page.getByRole('heading', { level: 2, name: /^Use / })).toBeInViewport();
  await expect(ranked(page).getByRole('listitem')).toHaveCount(14);
  await page.getByRole('link', { name: 'See the working' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('A1-L-02-2-2');
});

test('clear trucks come before the others, those that could lift most first, each with its one reason', async ({
  page,
}) => {
  await page.goto('/which-truck?location=A1-L-02-2-2&load=TILE-004&asOf=not-judged');
  const lines = await ranked(page).getByRole('listitem').allInnerTexts();
  const order = ['Clear', 'Thin', 'Unproven', 'Refuse'];
  const verdicts = lines.map((line) => order.findIndex((word) => line.includes(word)));
  expect(verdicts).toEqual([...verdicts].sort((a, b) => a - b));
  expect(verdicts[0]).toBe(0);
  const clear = lines.filter((line) => line.includes('Clear'));
  const most = clear.map((line) => Number(/most\s+([\d\u202f]+)/.exec(line)?.[1]?.replaceAll('\u202f', '')));
  expect(most).toEqual([...most].sort((a, b) => b - a));
  // a clear one says what is left and by whose limit, the others which rule decided
  for (const line of lines)
    expect(line).toMatch(line.includes('Clear') ? / at most here: [a-z ,]+\. .+\./ : /[A-Z][a-z ,]+: .+\./s);
});

test('locations and loads are suggested while typing', async ({ page }) => {
  await page.goto('/which-truck');
  await page.getByLabel('Location', { exact: true }).pressSequentially('A1-L-02');
  await expect(page.locator('datalist option[value="A1-L-02-2-2"]')).toHaveCount(1);
  await page.getByLabel('Load', { exact: true }).pressSequentially('floor');
  await expect(page.locator('datalist option', { hasText: 'floor tile' }).first()).toBeAttached();
});

test('a fault stands at its field, and nothing that was typed is lost', async ({ page }) => {
  await page.goto('/which-truck');
  await page.getByLabel('Location', { exact: true }).fill('A1-L-2-2-2');
  await page.getByText('Or type the load in').click();
  await page.getByLabel(/Gross mass/).fill('about a ton');
  await page.getByLabel(/Depth along the forks/).fill('1.2 m');
  await page.getByLabel(/^Width/).fill('800');
  await page.getByRole('button', { name: 'Which truck?' }).click();
  await expect(page.getByLabel('Location', { exact: true })).toHaveValue('A1-L-2-2-2');
  await expect(page.getByLabel('Location', { exact: true })).toHaveAccessibleDescription(
    /did you mean "A1-L-02-2-2"/,
  );
  await expect(page.getByLabel(/Gross mass/)).toHaveValue('about a ton');
  await expect(page.getByLabel(/Gross mass/)).toHaveAccessibleDescription(
    /"about a ton" came, a mass above 0/,
  );
  await expect(page.getByLabel(/Depth along the forks/)).toHaveValue('1.2 m');
  await expect(page.getByLabel(/^Height/)).toHaveAccessibleDescription(/nothing came/);
  expect(await machineFaults(page)).toEqual([]);
  await page.getByLabel('Location', { exact: true }).fill('A1-L-02-2-2');
  await page.getByLabel(/Gross mass/).fill('900');
  await page.getByLabel(/^Height/).fill('1000');
  await page.getByRole('button', { name: 'Which truck?' }).click();
  await expect(ranked(page)).toBeVisible();
  await expect(page.getByRole('region', { name: 'The answer' })).toContainText('990\u202fkg assessed'); // declared: 900 and 10 %
});

test('taking down without a load asks about what stands there', async ({ page }) => {
  await page.goto('/which-truck');
  await page.getByLabel('Location', { exact: true }).fill('A1-L-02-2-1');
  await page.getByText('Take down').click();
  await page.getByRole('button', { name: 'Which truck?' }).click();
  await expect(page.getByRole('region', { name: 'The answer' })).toContainText('Taking down STONE-014');
});

test('a bare number is read in the units that are shown', async ({ page, context, baseURL }) => {
  await context.addCookies([{ name: 'units', value: 'lb-in', url: baseURL ?? '' }]);
  await page.goto('/which-truck');
  await page.getByLabel('Location', { exact: true }).fill('A1-L-02-2-2');
  await page.getByText('Or type the load in').click();
  await page.getByLabel(/Gross mass/).fill('1000');
  await page.getByLabel(/Depth along the forks/).fill('48');
  await page.getByLabel(/^Width/).fill('40');
  await page.getByLabel(/^Height/).fill('40');
  await page.getByLabel('The mass is').selectOption('weighed');
  await page.getByRole('button', { name: 'Which truck?' }).click();
  await expect(page.getByRole('region', { name: 'The answer' })).toContainText('1\u202f000\u202flb assessed');
});

test('works with the keyboard alone', async ({ page }) => {
  await page.goto('/which-truck');
  await page.getByLabel('Location', { exact: true }).focus();
  await page.keyboard.type('A1-L-02-2-1');
  await page.keyboard.press('Tab');
  await page.keyboard.press('ArrowRight'); // from put away to take down
  await page.keyboard.press('Enter');
  await expect(page.getByRole('region', { name: 'The answer' })).toContainText('Taking down');
});

test.describe('without scripts', () => {
  test.use({ javaScriptEnabled: false });
  test('the form still asks and answers', async ({ page }) => {
    await page.goto('/which-truck');
    await page.getByLabel('Location', { exact: true }).fill('A1-L-02-2-2');
    await page.getByLabel('Load', { exact: true }).fill('TILE-004');
    await page.getByRole('button', { name: 'Which truck?' }).click();
    await expect(ranked(page).getByRole('listitem')).toHaveCount(14);
  });
});

test('has no serious fault for people who hear or tab it, fits a phone, and its targets fit a glove', async ({
  page,
}) => {
  const asked = '/which-truck?location=A1-L-02-2-2&load=TILE-004&asOf=not-judged';
  for (const path of ['/which-truck', asked]) {
    await page.setViewportSize({ width: 1440, height: 900 });
    await page.goto(path);
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Which truck?');
    expect(await machineFaults(page), path).toEqual([]);
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await overflowPx(page), path).toBeLessThanOrEqual(0);
  }
  for (const link of await ranked(page).getByRole('link').all()) {
    expect((await link.boundingBox())?.height).toBeGreaterThanOrEqual(44);
  }
  expect(
    (await page.getByRole('button', { name: 'Which truck?' }).boundingBox())?.height,
  ).toBeGreaterThanOrEqual(56);
});
