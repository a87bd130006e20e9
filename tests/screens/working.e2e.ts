import { expect, test } from '@playwright/test';
import { machineFaults, overflowPx } from './machine-faults.ts';

// The demo: TILE-004 is 31 tiles of 24 kg on a 25 kg pallet, 769 kg, calculated from its items.
const LIFT = '/working?location=A1-L-02-2-2&truck=CB-2&load=TILE-004&operation=place&asOf=not-judged';

test('one lift is shown with its verdict, its margin, and every rule with where its numbers came from', async ({
  page,
}) => {
  await page.goto(LIFT);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('A1-L-02-2-2 with CB-2');
  const answer = page.getByRole('region', { name: 'The answer' });
  await expect(answer).toContainText('Clear');
  await expect(answer).toContainText('Assessed mass');
  await expect(answer).toContainText('769');
  const working = page.getByRole('list', { name: 'The working, rule by rule' });
  const rules = working.locator('li[data-rule]');
  await expect(rules.first()).toContainText('This decides');
  const capacity = working.locator('li[data-rule="plate-capacity"]');
  await expect(capacity).toContainText('Does the plate prove this mass');
  await capacity.getByText('Where the numbers came from').click();
  await expect(capacity.getByText('Capacity plate, CB-2: line 2', { exact: false }).first()).toBeVisible();
  await expect(page.getByText(/rules? (is|are) not asked of this lift/)).toBeVisible();
  await expect(page.getByRole('complementary', { name: 'The person at the truck decides' })).toContainText(
    'govern',
  );
});

test('the mass is added up from the items and the pallet', async ({ page }) => {
  await page.goto(LIFT);
  const sum = page.getByRole('table', { name: 'How the assessed mass comes about' });
  await expect(sum.getByRole('row', { name: /floor tile, 31 × 24/ })).toContainText('744');
  await expect(sum.getByRole('row', { name: /Pallet PT-TILE/ })).toContainText('25');
  await expect(sum.getByRole('row', { name: /^Assessed/ })).toContainText('769');
});

test('the chart says in words what it draws, and the plate stands beside it as a table', async ({ page }) => {
  await page.goto(LIFT);
  const chart = page.getByRole('img', { name: /Load chart of/ }).first();
  await expect(chart).toBeVisible();
  await expect(chart.locator('desc')).toContainText('This lift: 769');
  const plate = page.getByRole('table', { name: /Mast vertical, forks/ });
  await expect(plate.getByText('used here')).toHaveCount(1);
});

test('with a load centre beyond the plate nothing is granted, and the estimate is told apart from the verdict', async ({
  page,
}) => {
  await page.goto('/working?location=A1-L-02-0-2&truck=CB-2&load=ODD-09&operation=place&asOf=not-judged');
  const answer = page.getByRole('region', { name: 'The answer' });
  await expect(answer.getByText(/^(Unproven|Refuse)$/)).toBeVisible();
  const estimates = page.getByRole('region', { name: 'Estimates: advice, never clearance' });
  await expect(estimates).toContainText('An estimate is not a rating');
  // 2750 kg at 800 mm carried at 1200 mm: 2750 x 800 / 1200 = 1833.3, rounded down
  await expect(estimates).toContainText('about 1\u202f833\u202fkg');
});

test('all origins open with one key press, and other trucks are a step away', async ({ page }) => {
  await page.goto(LIFT);
  const open = page.getByRole('button', { name: 'Open where every number came from' });
  await open.focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Fold where the numbers came from' })).toBeFocused();
  await expect(
    page
      .locator('li[data-rule="lift-height"]')
      .getByText('Truck facts, CB-2: largest lift', { exact: false }),
  ).toBeVisible();
  await page.getByRole('list', { name: 'Other trucks, best first' }).getByRole('link').first().click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('A1-L-02-2-2');
  await expect(page).toHaveURL(/location=A1-L-02-2-2/);
  await expect(page).not.toHaveURL(/truck=CB-2(&|$)/);
});

test('an address with faults names each, with what came and what was expected', async ({ page }) => {
  await page.goto('/working?location=A1-L-99-9-9&truck=CB-2&mass=heavy&depth=1200&width=800&height=1000');
  const refused = page.getByRole('alert').filter({ hasText: 'cannot be judged' });
  await expect(refused).toContainText('Location: "A1-L-99-9-9" came');
  await expect(refused).toContainText('Mass: "heavy" came, a number was expected');
  await expect(page.getByRole('link', { name: 'Ask in the form' })).toBeVisible();
});

test('without a truck all of them are offered', async ({ page }) => {
  await page.goto('/working?location=A1-L-02-2-2&load=TILE-004&asOf=not-judged');
  await expect(page.getByRole('list', { name: 'Trucks, best first' }).getByRole('listitem')).toHaveCount(14);
});

test('shows pounds and inches where they were chosen', async ({ page }) => {
  await page.goto(LIFT);
  await page.getByRole('button', { name: 'Show pounds and inches' }).click();
  await expect(page.getByRole('region', { name: 'The answer' })).toContainText('1\u202f696\u202flb'); // 769 kg rounded up
  await page.getByRole('button', { name: 'Show kilograms and millimetres' }).click();
  await expect(page.getByRole('region', { name: 'The answer' })).toContainText('769\u202fkg');
});

test('has no serious fault for people who hear or tab it, and fits a phone', async ({ page }) => {
  await page.goto(LIFT);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('A1-L-02-2-2 with CB-2');
  expect(await machineFaults(page)).toEqual([]);
  await page.setViewportSize({ width: 390, height: 844 });
  expect(await overflowPx(page)).toBeLessThanOrEqual(0);
  await expect(
    page.getByRole('region', { name: 'The answer' }).getByText('Clear', { exact: true }),
  ).toBeInViewport();
  expect(await machineFaults(page)).toEqual([]);
});

test('prints every origin, opened or not, and no buttons', async ({ page }) => {
  await page.goto(LIFT);
  await page.emulateMedia({ media: 'print' });
  await expect(
    page
      .locator('li[data-rule="lift-height"]')
      .getByText('Truck facts, CB-2: largest lift', { exact: false }),
  ).toBeVisible();
  await expect(page.getByRole('button', { name: 'Print' })).toBeHidden();
});

test.describe('the lift as data', () => {
  test('answers with every step and where its numbers came from', async ({ request }) => {
    const response = await request.get(
      '/api/lift?location=A1-L-02-2-2&truck=CB-2&load=TILE-004&asOf=not-judged',
    );
    expect(response.status()).toBe(200);
    const answer = await response.json();
    expect(answer).toMatchObject({
      location: 'A1-L-02-2-2',
      truck: 'CB-2',
      load: 'TILE-004',
      assessedKg: 769,
    });
    expect(answer.steps).toHaveLength(22);
    const capacity = answer.steps.find(({ rule }: { rule: string }) => rule === 'plate-capacity');
    expect(capacity).toMatchObject({ outcome: 'pass', need: 769, have: 3250, unit: 'kg' });
    expect(capacity.haveFrom[0]).toMatchObject({ of: 'plate', subject: 'CB-2', value: 3250 });
  });

  test('refuses with 400, naming what came and what was expected', async ({ request }) => {
    const response = await request.get('/api/lift?location=A1-L-02-2-2&load=TILE-04&asOf=yesterday');
    expect(response.status()).toBe(400);
    const { refused } = await response.json();
    expect(refused.map(({ path }: { path: string }) => path).sort()).toEqual(['$.asOf', '$.load', '$.truck']);
    const load = refused.find(({ path }: { path: string }) => path === '$.load');
    expect(load).toMatchObject({ came: '"TILE-04"', expected: { is: 'id-in' } });
  });
});
