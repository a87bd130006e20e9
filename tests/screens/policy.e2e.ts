import { expect, type Page, test } from '@playwright/test';
import { machineFaults, overflowPx } from './machine-faults.ts';
import { signedInAs } from './signed-in.ts';

test.use({ storageState: signedInAs('safety-officer') });

const value = (page: Page, policy: string, label = 'Value') =>
  page.getByRole('group', { name: policy }).getByLabel(label);
const see = (page: Page) => page.getByRole('button', { name: 'See what it changes' });
const save = (page: Page) => page.getByRole('button', { name: 'Save these values' });
const foot = (page: Page) => page.getByRole('region', { name: 'What it changes' });

async function saveValue(page: Page, policy: string, text: string) {
  await value(page, policy).fill(text);
  await see(page).click();
  await save(page).click({ timeout: 30_000 });
  await expect(page).toHaveURL(/\/site\?saved=\d+/);
}

/** So that the tests leave the site as they found it. */
async function putBack(page: Page, policy: string) {
  await page.goto('/site/policy');
  await page.getByRole('button', { name: `Default: ${policy}` }).click();
  await see(page).click();
  await save(page).click({ timeout: 30_000 });
  await expect(page).toHaveURL(/\/site\?saved=\d+/);
}

test('a safety officer sees what a value changes before it is saved, and is written down for it', async ({
  page,
}) => {
  await page.goto('/site');
  await page.getByRole('link', { name: 'Change the policy' }).click();
  await expect(page.getByText('Nothing here can raise a plate or a notice')).toBeVisible();
  const thin = 'Thin: within this of a mass limit';
  await expect(page.getByRole('group', { name: thin })).toContainText('Default: 10 % (common practice)');
  await expect(save(page)).toHaveCount(0);
  await value(page, thin).fill('35');
  await see(page).click();
  await expect(foot(page)).toContainText('10 % becomes 35 %');
  await expect(foot(page)).toContainText(
    /Putting back, checks and dates left out\d[\d\u202f]* of 2\u202f\d{3} change: .*from clear to thin/,
    {
      timeout: 30_000,
    },
  );
  await expect(save(page)).toBeEnabled();

  // what was seen is no longer what would be saved
  await value(page, thin).fill('12');
  await expect(save(page)).toHaveCount(0);
  await see(page).click();
  await save(page).click({ timeout: 30_000 });
  await expect(page).toHaveURL(/\/site\?saved=\d+/);
  await expect(page.getByRole('link', { name: 'See the change, or undo it' })).toBeVisible();
  const row = page.getByRole('table', { name: 'Policy in force' }).getByRole('row', { name: /^Thin/ });
  await expect(row).toContainText('12 %');
  await expect(row).toContainText('Test safety officer');

  await putBack(page, thin);
  await expect(row).toContainText('the same');
});

test('a value that lib/model refuses is told at its field, and nothing can be saved', async ({ page }) => {
  await page.goto('/site/policy');
  const field = value(page, 'Forks support at least');
  await field.fill('1.5');
  await expect(page.getByText('1.5 came, a number of at most 1 was expected.')).toBeVisible();
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await field.fill('most of it');
  await expect(page.getByText(/^Not read: "most of it"/)).toBeVisible();
  await see(page).click();
  await expect(field).toBeFocused();
  await expect(save(page)).toHaveCount(0);
  await expect(foot(page)).toContainText('1 field to be mended first.');
  expect(await machineFaults(page)).toEqual([]);
});

test('six rules stay among those that must be known, and the reason is said', async ({ page }) => {
  await page.goto('/site/policy');
  const rules = page.getByRole('group', { name: 'Unproven when not known' });
  await expect(rules.getByRole('checkbox', { disabled: true })).toHaveCount(6);
  const plate = rules.getByRole('checkbox', { name: 'Capacity plate', exact: true });
  await expect(plate).toBeDisabled();
  await expect(plate).toHaveAccessibleDescription(
    /the truck's capacity plate must be known, whatever the policy/,
  );
  await rules.getByRole('checkbox', { name: 'Turning in the aisle' }).uncheck();
  await see(page).click();
  await expect(foot(page)).toContainText('no longer Turning in the aisle');
});

test('lengths are typed in the shown units', async ({ page }) => {
  await page.goto('/site/policy');
  await page.getByRole('button', { name: 'Show pounds and inches' }).click();
  const sprinklers = value(page, 'Clearance under sprinklers');
  await expect(sprinklers).toHaveValue('35.984'); // 914 mm / 25.4
  await sprinklers.fill('18');
  await page.getByRole('button', { name: 'Show kilograms and millimetres' }).click();
  await expect(foot(page)).toContainText(/914\u202fmm becomes 457\.2\u202fmm/); // 18 x 25.4
});

test('two who set the same value: the later one is told, sees both, and decides', async ({
  page,
  browser,
}) => {
  const margin = 'Margin under the roof';
  await page.goto('/site/policy');
  const other = await browser.newContext({ storageState: signedInAs('safety-officer') });
  const theirs = await other.newPage();
  await theirs.goto('/site/policy');
  await saveValue(theirs, margin, '120');

  await value(page, margin).fill('130');
  await see(page).click();
  await save(page).click({ timeout: 30_000 });
  await expect(foot(page).getByRole('alert').first()).toContainText('Nothing was stored');
  await expect(foot(page)).toContainText(/theirs is 120\u202fmm, yours 130\u202fmm/);
  await page.getByRole('button', { name: 'Save mine all the same' }).click();
  await expect(page).toHaveURL(/\/site\?saved=\d+/);
  await expect(
    page.getByRole('table', { name: 'Policy in force' }).getByRole('row', { name: /^Margin under/ }),
  ).toContainText('130');
  await putBack(page, margin);
  await other.close();
});

test('the policy is changed by keys alone on a phone, and holds no fault that a machine can find', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('/site/policy');
  expect(await overflowPx(page)).toBe(0);
  await value(page, 'Aisle clearance').focus();
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type('250');
  await page.keyboard.press('Enter');
  await expect(foot(page)).toContainText(/Taking down, as of now.* of 2\u202f\d{3}|none of 2\u202f\d{3}/, {
    timeout: 30_000,
  });
  expect(await overflowPx(page)).toBe(0);
  expect(await machineFaults(page)).toEqual([]);
});

test.describe('a planner', () => {
  test.use({ storageState: signedInAs('planner') });

  test('reads the policy and who may change it', async ({ page }) => {
    await page.goto('/site');
    await expect(page.getByText(/Only a safety officer may set policy/)).toBeVisible();
    await expect(page.getByRole('link', { name: 'Change the policy' })).toHaveCount(0);
    expect((await page.goto('/site/policy'))?.status()).toBe(403);
  });
});
