import { expect, type Page, test } from '@playwright/test';
import { machineFaults, overflowPx } from './machine-faults.ts';
import { signedInAs } from './signed-in.ts';

const elevation = (page: Page) => page.getByRole('img', { name: /Elevation of run/ });
const reckoned = (page: Page) => page.getByText('Reckoned before anything is saved');

/** Ticks what must be seen, saves, and waits for the word that it is done. */
async function save(page: Page, button: string) {
  await expect(reckoned(page)).toBeVisible();
  for (const tick of await page.getByRole('region', { name: /^Save/ }).getByRole('checkbox').all())
    await tick.check();
  await page.getByRole('button', { name: button }).click();
  await expect(page.getByText(/Saved as revision \d+/)).toBeVisible({ timeout: 30_000 });
}

async function undoSave(page: Page) {
  await page.getByRole('button', { name: 'Undo this save' }).click();
  await expect(page.getByText(/^Undone: everything is as it was/)).toBeVisible({ timeout: 30_000 });
}

/** Where the lowest beam of the run stands, once the page has the newest facts. */
async function expectLevelNow(page: Page, words: RegExp) {
  await expect(async () => {
    await page.getByLabel('Change', { exact: true }).selectOption('move-beam');
    await expect(page.getByText(words)).toBeVisible({ timeout: 1000 });
  }).toPass({ timeout: 20_000 });
}

async function tabTo(page: Page, name: string) {
  const label = () =>
    page.evaluate(() => {
      const at = document.activeElement as HTMLInputElement | null;
      return (
        at?.labels?.[0]?.textContent?.trim() ??
        at?.getAttribute('aria-label') ??
        at?.textContent?.trim() ??
        ''
      );
    });
  for (let presses = 0; presses < 80; presses += 1) {
    await page.keyboard.press('Tab');
    if ((await label()).startsWith(name)) return;
  }
  throw new Error(`${name} is not reached by Tab`);
}

test('a planner describes a run, sees its labels and its frame rating, saves it and undoes that', async ({
  page,
}) => {
  await page.goto('/rack-shape');
  await expect(elevation(page)).toHaveAccessibleName(/6 bays, 7 frames, 2 beam levels, 54 locations/, {
    timeout: 30_000,
  });
  await page.getByLabel('Run', { exact: true }).fill('A1-Z');
  await page.getByLabel('Side in labels').fill('Z');
  await page.getByLabel('Bays', { exact: true }).fill('4');
  await page.getByLabel('Count bays by').selectOption('2');
  await page.getByLabel('Positions on the floor').fill('2');
  await expect(elevation(page)).toHaveAccessibleName(/A1-Z: 4 bays, 5 frames, 2 beam levels, 32 locations/);
  await expect(page.getByText('A1-Z-01-0-1, A1-Z-01-0-2, A1-Z-01-1-1')).toBeVisible();
  await expect(page.getByText('A1-Z-07-2-1, A1-Z-07-2-2, A1-Z-07-2-3')).toBeVisible();
  // UF-90 of the demo: 7500 kg up to a gap of 1500 mm, 6000 kg up to 2000 mm, nothing beyond
  await expect(page.getByText(/5 frames of type UF-90.*largest gap 1.500.mm: rated 7.500.kg/)).toBeVisible();
  const top = page.getByRole('group', { name: 'Level 1' }).getByLabel('Beam top');
  await top.fill('2,4 m');
  await expect(page.getByText(/largest gap 2.400.mm: no rating applies/)).toBeVisible();
  await top.fill('1,500');
  await expect(page.getByText('This comma may mean a thousand or a decimal')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Save the run' })).toBeDisabled();
  await top.fill('3100');
  await expect(
    page.getByText(/No opening is left: the underside of this beam must be above 3.100.mm/),
  ).toBeVisible();
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(top).toHaveValue(/^1.?500$/);
  await page.getByRole('button', { name: 'Redo' }).click();
  await expect(top).toHaveValue(/^3.?100$/);
  await page.keyboard.press('Control+z');
  await expect(top).toHaveValue(/^1.?500$/);
  await save(page, 'Save the run');
  await expect(page).toHaveURL(/\/rack-shape\/A1-Z\?saved=/);
  await expect(page.getByRole('heading', { name: 'Run A1-Z' })).toBeVisible();
  await undoSave(page);
  await expect(page.getByText('There is no run A1-Z')).toBeVisible();
});

test('labels that stand elsewhere in the site are refused by name', async ({ page }) => {
  await page.goto('/rack-shape');
  await page.getByLabel('Side in labels').fill('L');
  await expect(page.getByText(/A1-L-01-0-1 stands in run A1-L already, and \d+ more/)).toBeVisible();
  await page.getByLabel('Pattern').fill('{aisle}-Z-{bays}');
  await expect(page.getByText('{bays} is not a part of a label; did you mean {bay}?')).toBeVisible();
});

test('a beam is moved: what it comes to is shown before, saved with its warnings, and undone', async ({
  page,
}) => {
  await page.goto('/rack-shape/A2-L');
  await page.getByLabel('Change', { exact: true }).selectOption('move-beam');
  await page.getByLabel('New beam top').fill('2700');
  await expect(page.getByText('Drawn and reckoned as if it were in the list.')).toBeVisible();
  await expect(reckoned(page)).toBeVisible();
  const steel = page.getByRole('region', { name: 'Steel before and after' });
  await expect(steel).toContainText('Opening on level 1');
  await expect(steel).toContainText(/Largest gap, bays A2-L-01 to A2-L-14/);
  await expect(
    page.getByText(/\d+ rules? that a standing pallet kept|Everything that stands there/),
  ).toBeVisible();
  await expect(page.getByRole('list', { name: 'Verdicts before and after' })).toBeVisible();
  const lifts = page.getByRole('list', { name: 'Lifts that change, worst first' });
  await lifts.getByRole('button', { name: 'Working after the change' }).first().click();
  await expect(page.getByRole('list', { name: 'The working, rule by rule' })).toBeVisible();
  await expect(lifts.getByRole('link', { name: 'Working as it is now' }).first()).toHaveAttribute(
    'href',
    /\/working\?location=A2-L-/,
  );
  await expect(page.getByRole('button', { name: 'Save the changes' })).toBeDisabled();
  await page.getByRole('button', { name: 'Add to the changes' }).click();
  await expect(page.getByRole('list', { name: 'Changes to be saved' })).toContainText(
    /Beam level 1 of all bays to 2.700.mm/,
  );
  await expect(page.getByText('A load notice printed before this change no longer holds')).toBeVisible();
  expect(await machineFaults(page)).toEqual([]);
  await save(page, 'Save the changes');
  await expectLevelNow(page, /now 2.700.mm/);
  await undoSave(page);
  await expectLevelNow(page, /now 1.900.mm/);
});

test('new ids take the stock along, and a bay that goes takes only pallets that were named', async ({
  page,
}) => {
  await page.goto('/rack-shape/A2-L');
  await page.getByLabel('Change', { exact: true }).selectOption('renumber');
  await page.getByLabel('Run', { exact: true }).fill('A2-W');
  await page.getByLabel('Side in labels').fill('W');
  await page.getByRole('button', { name: 'Add to the changes' }).click();
  await expect(page.getByText('No lift changes its verdict.')).toBeVisible({ timeout: 30_000 });
  await save(page, 'Save the changes');
  await expect(page).toHaveURL(/\/rack-shape\/A2-W\?saved=/);
  await page.getByLabel('Change', { exact: true }).selectOption('remove-bays');
  await expect(page.getByLabel('From bay')).toHaveValue('13');
  await page.getByRole('button', { name: 'Add to the changes' }).click();
  const saving = page.getByRole('region', { name: 'Save the changes' });
  await expect(saving.getByText(/5 pallets whose locations go/)).toBeVisible();
  await page.getByRole('button', { name: 'Drop change 1' }).click();
  await undoSave(page);
  await expect(page.getByText('There is no run A2-W')).toBeVisible();
  await page.goto('/rack-shape/A2-L');
  await expect(elevation(page)).toHaveAccessibleName(/14 bays/);
});

test('somebody else was faster: both changes are shown, and mine are made on theirs', async ({
  page,
  context,
}) => {
  const raise = async (on: Page, level: string, top: string) => {
    await on.goto('/rack-shape/A3-R');
    await on.getByLabel('Change', { exact: true }).selectOption('move-beam');
    await on.getByLabel('Level', { exact: true }).selectOption(level);
    await on.getByLabel('New beam top').fill(top);
    await on.getByRole('button', { name: 'Add to the changes' }).click();
    await expect(on.getByRole('list', { name: 'Changes to be saved' })).toBeVisible();
  };
  await raise(page, '1', '1555');
  const other = await context.newPage();
  await raise(other, '2', '3155');
  await save(other, 'Save the changes');
  await expect(reckoned(page)).toBeVisible();
  for (const tick of await page.getByRole('region', { name: /^Save/ }).getByRole('checkbox').all())
    await tick.check();
  await page.getByRole('button', { name: 'Save the changes' }).click();
  const conflict = page.getByRole('alert').filter({ hasText: 'Somebody else has changed this run' });
  await expect(conflict).toContainText(/became 3.155.mm/);
  await expect(conflict).toContainText(/Beam level 1 of all bays to 1.555.mm/);
  await page.getByRole('button', { name: 'Make my changes on theirs, and look again' }).click();
  await expect(conflict).toHaveCount(0);
  await expect(page.getByRole('list', { name: 'Changes to be saved' })).toContainText(/1.555.mm/);
  await save(page, 'Save the changes');
  await undoSave(page);
  await other.getByRole('button', { name: 'Undo this save' }).click();
  await expect(other.getByText(/^Undone/)).toBeVisible();
});

test('keys alone move a beam and save it', async ({ page }) => {
  await page.goto('/rack-shape/A4-L');
  await expect(elevation(page)).toBeVisible({ timeout: 30_000 });
  await tabTo(page, 'Change');
  await page.keyboard.press('ArrowDown');
  await expect(page.getByLabel('New beam top')).toBeVisible();
  await tabTo(page, 'New beam top');
  const now = await page.getByText(/^now /).textContent();
  await page.keyboard.type(String(Number(now!.replace(/\D/g, '')) + 50));
  await expect(page.getByText('Drawn and reckoned as if it were in the list.')).toBeVisible();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('list', { name: 'Changes to be saved' })).toBeVisible();
  await page.keyboard.press('Control+z');
  await expect(page.getByText('No change is in the list yet.')).toBeVisible();
  await page.keyboard.press('Control+y');
  await expect(page.getByRole('list', { name: 'Changes to be saved' })).toBeVisible();
  await expect(reckoned(page)).toBeVisible();
  await tabTo(page, 'I have seen what this change comes to');
  await page.keyboard.press('Space');
  await expect(page.getByRole('button', { name: 'Save the changes' })).toBeEnabled();
  await tabTo(page, 'Save the changes');
  await page.keyboard.press('Enter');
  await expect(page.getByText(/Saved as revision \d+/)).toBeVisible({ timeout: 30_000 });
  await undoSave(page);
});

test('a phone holds the whole editor, and a machine finds no fault with it', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  for (const address of ['/rack-shape', '/rack-shape/A2-L']) {
    await page.goto(address);
    await expect(elevation(page)).toBeVisible({ timeout: 30_000 });
    expect(await overflowPx(page)).toBe(0);
    const small = await page.evaluate(() =>
      [
        ...document.querySelectorAll(
          'main button, main select, main input:not([type=checkbox]), main summary',
        ),
      ]
        .filter((element) => (element as HTMLElement).offsetParent !== null)
        .map((element) => ({
          is: element.outerHTML.slice(0, 80),
          height: element.getBoundingClientRect().height,
        }))
        .filter(({ height }) => height < 44),
    );
    expect(small).toEqual([]);
    expect(await machineFaults(page)).toEqual([]);
  }
  await page.getByLabel('Change', { exact: true }).selectOption('move-beam');
  const field = page.getByLabel('New beam top');
  await field.fill('2050');
  await field.scrollIntoViewIfNeeded();
  await expect(elevation(page)).toBeInViewport();
  await expect(field).toBeInViewport();
});

test('the same figures are typed in pounds and inches', async ({ page }) => {
  await page.goto('/rack-shape');
  await expect(elevation(page)).toBeVisible({ timeout: 30_000 });
  await page.getByRole('button', { name: 'Show pounds and inches' }).click();
  const top = page.getByRole('group', { name: 'Level 2' }).getByLabel('Beam top');
  await expect(top).toHaveValue('118.2');
  // 120 in = 3048 mm, exact by definition of the international inch (25.4 mm)
  await top.fill('120');
  await page.getByRole('button', { name: 'Show kilograms and millimetres' }).click();
  await expect(top).toHaveValue(/^3.?048$/);
});

test.describe('somebody who inspects', () => {
  test.use({ storageState: signedInAs('safety-officer') });

  test('marks steel, and is offered nothing else', async ({ page }) => {
    await page.goto('/rack-shape');
    await expect(page.getByRole('button', { name: 'Save the run' })).toHaveCount(0);
    await page.goto('/rack-shape/A2-R');
    const kinds = page.getByLabel('Change', { exact: true });
    await expect(kinds.getByRole('option')).toHaveCount(3);
    await kinds.selectOption('frame-condition');
    await page.getByLabel('To frame').selectOption('0');
    await page.getByLabel('Condition').selectOption('red');
    await page.getByRole('button', { name: 'Add to the changes' }).click();
    await save(page, 'Save the changes');
    await undoSave(page);
  });
});
