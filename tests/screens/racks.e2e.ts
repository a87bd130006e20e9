import { copyFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, type Page, test } from '@playwright/test';
import { machineFaults, overflowPx } from './machine-faults.ts';

const PICTURE = fileURLToPath(new URL('./output/racks.png', import.meta.url));
const IN_THE_DOCS = fileURLToPath(new URL('../../docs/racks.png', import.meta.url));

const drawing = (page: Page) => page.getByRole('application', { name: /Elevation of run/ });
const counts = (page: Page) => page.getByRole('list', { name: 'Verdicts in this run' });
const working = (page: Page) => page.getByRole('region', { name: /Working at/ });

async function judged(page: Page) {
  await expect(counts(page)).not.toContainText('·', { timeout: 30_000 });
}

/** How many locations of the run have a verdict, as the screen counts them. */
async function countOf(page: Page, verdict: string): Promise<number> {
  const text = await counts(page).getByRole('listitem').filter({ hasText: verdict }).textContent();
  return Number((text ?? '').replace(/\D/g, ''));
}

test('a planner picks a load and a truck, sees where it may go, and opens the working of a place', async ({
  page,
}) => {
  await page.goto('/racks?run=A5-L');
  await judged(page);
  await page.getByRole('radio', { name: 'A load' }).check();
  const field = page.getByRole('combobox', { name: 'Load', exact: true });
  await field.fill('odd-02');
  await page.getByRole('option', { name: /ODD-02/ }).click();
  await expect(field).toHaveValue(/^ODD-02 /);
  await judged(page);
  const withAll = await countOf(page, 'Clear');
  expect(withAll).toBeGreaterThan(0);
  expect(await countOf(page, 'Refuse')).toBeGreaterThan(0);

  await page.getByText('All 14 trucks').click();
  await page.getByRole('checkbox', { name: /RT-1$/ }).check();
  await expect(page).toHaveURL(/truck=RT-1/);
  await judged(page);

  await page.getByLabel('Location', { exact: true }).fill('A5-L-01-2-2');
  await page.getByRole('button', { name: 'Go', exact: true }).click();
  await drawing(page).focus();
  await page.keyboard.press('Enter');
  await expect(working(page)).toContainText('A5-L-01-2-2');
  await expect(working(page)).toContainText('Thin');
  await expect(working(page).getByRole('list', { name: 'The working, rule by rule' })).toContainText(
    'Unit load',
  );

  await working(page).getByRole('link', { name: 'Open the working on its own page' }).click();
  await expect(page).toHaveURL(/\/working\?.*location=A5-L-01-2-2.*truck=RT-1.*load=ODD-02/);
  await expect(page.getByRole('main')).toContainText('Thin');
});

test('a tap on a cell opens its working', async ({ page }) => {
  await page.goto('/racks?run=A5-L&load=ODD-02');
  await judged(page);
  const box = (await drawing(page).boundingBox())!;
  await page.mouse.click(box.x + 150, box.y + box.height / 2);
  await expect(working(page)).toContainText(/A5-L-01-/);
  await expect(page).toHaveURL(/location=A5-L-01-/);
});

test('the same address shows the same view', async ({ page }) => {
  const address = `/racks?location=A5-L-01-2-2&load=ODD-02&operation=place&run=A5-L&figure=spare`;
  await page.goto(address);
  await judged(page);
  await expect(page.getByRole('combobox', { name: 'Load', exact: true })).toHaveValue(/^ODD-02 /);
  await expect(page.getByLabel('Run', { exact: true })).toHaveValue('A5-L');
  await expect(page.getByText(/^A5-L-01-2-2: level 2/)).toBeVisible();
  const shown = new URL(page.url());
  expect([...shown.searchParams].toSorted()).toEqual(
    [...new URL(address, page.url()).searchParams].toSorted(),
  );
});

test('a typed load is read in pounds and inches, and the facts stay metric', async ({ page }) => {
  await page.goto('/racks?run=A5-L');
  await judged(page);
  await page.getByRole('button', { name: 'Show pounds and inches' }).click();
  await expect(page.getByRole('button', { name: 'Show pounds and inches' })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
  await page.getByRole('radio', { name: 'Typed in' }).check();
  await page.getByLabel('Gross mass').fill('2000');
  // 2000 lb = 907.18474 kg, exact by definition of the international pound (0.45359237 kg)
  await expect(page).toHaveURL(/mass=907\.18474/);
  await page.getByLabel('Height', { exact: false }).fill('very tall');
  await expect(page.getByText('Not read. Write a number above 0')).toBeVisible();
  await expect(page.getByText('still those for the last load that could be read')).toBeVisible();
  await page.getByRole('button', { name: 'Show kilograms and millimetres' }).click();
});

test('keys alone lead from the question to a working and back', async ({ page }) => {
  await page.goto('/racks?run=A5-L&load=ODD-02');
  await judged(page);
  await page.keyboard.press('Tab');
  await expect(page.getByRole('link', { name: 'Skip to the content' })).toBeFocused();
  await page.keyboard.press('Enter');
  for (let presses = 0; presses < 60; presses++) {
    if (await drawing(page).evaluate((element) => element === document.activeElement)) break;
    await page.keyboard.press('Tab');
  }
  await expect(drawing(page)).toBeFocused();
  await page.keyboard.press('ArrowRight');
  const said = page.getByText(/^A5-L-01-0-1: level 0/);
  await expect(said).toBeVisible();
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowRight');
  await expect(page.getByText(/^A5-L-01-2-2: level 2/)).toBeVisible();
  await page.keyboard.press('r');
  await expect(page.getByText(/rear row/).first()).toBeVisible();
  await page.keyboard.press('r');
  await page.keyboard.press('Enter');
  await expect(working(page)).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(working(page)).toHaveCount(0);
  await expect(drawing(page)).toBeFocused();
});

test('the table answers the same question: filtered, sorted, and taken away as CSV', async ({ page }) => {
  await page.goto('/racks?run=A5-L&load=ODD-02&view=table');
  await judged(page);
  const clear = await countOf(page, 'Clear');
  for (const kept of ['Thin', 'Unproven', 'Refuse', 'Nothing asked'])
    await page.getByRole('checkbox', { name: kept, exact: true }).uncheck();
  await expect(page.getByText(`${clear} locations`)).toBeVisible();
  await page.getByRole('button', { name: 'Location', exact: true }).click();
  await page.getByRole('button', { name: 'Location', exact: true }).click();
  await expect(page.getByRole('columnheader', { name: /Location/ })).toHaveAttribute(
    'aria-sort',
    'descending',
  );

  const downloaded = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Download CSV' }).click();
  const stream = await (await downloaded).createReadStream();
  const chunks: Buffer[] = [];
  for await (const chunk of stream) chunks.push(chunk as Buffer);
  const lines = Buffer.concat(chunks).toString('utf8').split('\r\n');
  expect(lines).toHaveLength(clear + 1);
  expect(lines.slice(1).every((line) => line.includes(',clear,'))).toBe(true);

  await page
    .getByRole('table')
    .getByRole('button', { name: /^A5-L-/ })
    .first()
    .click();
  await expect(working(page)).toContainText('Clear');
});

test('all of the racks is within a thumb on a phone', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('/racks?run=A5-L&load=ODD-02');
  await judged(page);
  const question = page.getByText(/Put away ODD-02/).filter({ visible: true });
  await expect(page.getByText('Which load')).toBeHidden();
  await question.click();
  await expect(page.getByText('Which load')).toBeVisible();
  await question.click();
  await drawing(page).scrollIntoViewIfNeeded();
  const box = (await drawing(page).boundingBox())!;
  await page.mouse.click(box.x + 110, box.y + 60);
  await expect(working(page)).toBeVisible();
  expect(await overflowPx(page)).toBe(0);
  const small = await page.evaluate(() =>
    [...document.querySelectorAll('button, select, input, nav a')]
      // a box to tick is as large as the label that it stands in
      .map((element) =>
        element.matches('[type=checkbox]') ? (element.closest('label') ?? element) : element,
      )
      .map((element) => ({
        is: element.outerHTML.slice(0, 60),
        height: element.getBoundingClientRect().height,
      }))
      .filter(({ height }) => height > 0 && height < 44),
  );
  expect(small).toEqual([]);
  expect(await machineFaults(page)).toEqual([]);
});

test('the racks hold no fault that a machine can find', async ({ page }) => {
  await page.goto('/racks?run=A5-L&location=A5-L-01-2-2&load=ODD-02');
  await judged(page);
  await drawing(page).focus();
  await page.keyboard.press('Enter');
  await expect(working(page)).toBeVisible();
  expect(await machineFaults(page)).toEqual([]);
  await page.getByRole('button', { name: 'Table' }).click();
  expect(await machineFaults(page)).toEqual([]);
});

test('a name the site does not have is refused with the nearest it has', async ({ page }) => {
  await page.goto('/racks?run=A5-L&load=ODD-2');
  await expect(page.getByRole('main').getByRole('alert')).toContainText('did you mean "ODD-0');
});

test('work can be stopped, and asked for again', async ({ page, context }) => {
  // the worker's script is held back, so that the answer is long in coming
  let letGo = () => {};
  const held = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  await context.route(/worker/, async (route) => {
    await held;
    await route.continue();
  });
  await page.goto('/racks?run=A5-L&load=ODD-02');
  await page.getByRole('button', { name: 'Stop' }).click();
  await expect(page.getByText('What is shown may not answer what is asked.')).toBeVisible();
  letGo();
  await page.getByRole('button', { name: 'Ask again' }).click();
  await judged(page);
  expect(await countOf(page, 'Clear')).toBeGreaterThan(0);
});

test('what cannot be asked shows no answers of an earlier question', async ({ page }) => {
  await page.goto('/racks?run=A5-L&load=ODD-02');
  await judged(page);
  await page.goto('/racks?run=A5-L&load=ODD-02&operator=nobody');
  await expect(page.getByRole('main').getByRole('alert')).toContainText('nobody');
  await expect(counts(page)).toContainText('·');
});

test('the picture of the racks for the front page of the documentation', async ({ page }) => {
  await page.setViewportSize({ width: 1440, height: 880 });
  await page.goto('/racks?run=A6-L&operation=place&asOf=not-judged&location=A6-L-04-6-2');
  await judged(page);
  for (const verdict of ['Clear', 'Thin', 'Refuse']) expect(await countOf(page, verdict)).toBeGreaterThan(0);
  await drawing(page).focus();
  await page.keyboard.press('Enter');
  await expect(working(page)).toBeVisible();
  await page.screenshot({ path: PICTURE });
  if (process.env.RENEW_PICTURE === '1') copyFileSync(PICTURE, IN_THE_DOCS);
});
