import { expect, test } from '@playwright/test';
import { machineFaults, overflowPx } from './machine-faults.ts';

test('a planner works out a case typed in, and then lets it be carried closer to the body', async ({
  page,
}) => {
  await page.goto('/hand-pick');
  await page.getByLabel('Height the pallet stands on, without a location').fill('0.45 m');
  await page.getByLabel('Mass of one case').fill('14');
  await page.getByLabel('Hands ahead of the ankles (H)').fill('500');
  await page.getByLabel('Grip above what the pallet stands on').fill('300');
  await page.getByLabel('Hands above the floor at the far end').fill('750');
  await page.getByLabel('Twist of the trunk, degrees (A)').fill('0');
  await page.getByLabel('Lifts a minute').fill('0.2');
  await page.getByLabel('For how many hours').fill('1');
  await page.getByLabel('Hold on the case').selectOption('good');
  await page.getByRole('button', { name: 'Work it out' }).click();

  // 23 kg x 25/50 = 11.5 kg; 14/11.5 = 1.2174, shown rounded up
  const answer = page.getByRole('region', { name: 'The answer' });
  await expect(answer).toContainText('Above the limit');
  await expect(answer).toContainText('11.5');
  await expect(answer).toContainText('1.22');
  expect(await machineFaults(page)).toEqual([]);

  await page.getByLabel('Hands ahead of the ankles (H)').fill('250 mm');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await expect(answer).toContainText('Within the limit');
  await expect(answer).toContainText('0.61');
});

test('a switch to pounds and inches leaves the question as it was', async ({ page }) => {
  const query =
    'beam-top=450&mass=14&hands-out=500&grip=300&put-down=750&twist=0&rate=0.2&hours=1&hold=good&units=metric';
  await page.goto(`/hand-pick?${query}`);
  await page.getByRole('button', { name: 'Show pounds and inches' }).click();
  const answer = page.getByRole('region', { name: 'The answer' });
  await expect(answer).toContainText('lb');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await expect(answer).toContainText('1.22');
  await page.getByRole('button', { name: 'Show kilograms and millimetres' }).click();
  await expect(answer).toContainText('11.5');
});

test('what cannot be read is named and nothing is judged in its place', async ({ page }) => {
  await page.goto('/hand-pick?beam-top=450&mass=heavy');
  await expect(page.getByRole('main').getByRole('alert')).toContainText('heavy');
  await expect(page.getByRole('region', { name: 'The answer' })).toHaveCount(0);
});

test('a pick face of the list opens with the levels of its bay ranked', async ({ page }) => {
  await page.goto('/hand-pick');
  const list = page.getByRole('region', { name: 'Pick faces that ask most of a person' });
  const first = list.getByRole('link').first();
  const location = (await first.textContent()) ?? '';
  await first.click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText(location);
  await expect(page.getByRole('region', { name: 'The best level for this case' })).toContainText('(here)');
});

test('an inspector has a bent upright classed, on a phone', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('/rack-advice');
  await page.getByLabel('What is bent').selectOption('upright-cross-aisle');
  await page.getByLabel('Gap under a 1000 mm straight edge laid on the hollow side').fill('4');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await expect(page.getByRole('heading', { name: /^Amber/ })).toBeVisible();
  await page.getByLabel('Length of the bend, if shorter than 1000 mm').fill('500');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await expect(page.getByRole('heading', { name: /^Red/ })).toBeVisible();
  expect(await overflowPx(page)).toBe(0);
  expect(await machineFaults(page)).toEqual([]);
});

test('a shift lead holds a worn heel and a stretched chain against the limits', async ({ page }) => {
  await page.goto('/wear');
  await page.getByLabel('Heel thickness when new').fill('50');
  await page.getByLabel('Heel thickness now, thinnest').fill('45');
  await page.getByLabel('Pitch').fill('1 in');
  await page.getByLabel('Pins counted').fill('13');
  await page.getByLabel('Length over these pins, under load').fill('12.375 in');
  await page.getByRole('button', { name: 'Hold against the limits' }).click();
  await expect(page.getByRole('region', { name: 'Fork arms' })).toContainText('Withdraw');
  await expect(page.getByRole('region', { name: 'Lift chain' })).toContainText(
    'take the truck out of service',
  );
  expect(await machineFaults(page)).toEqual([]);
});
