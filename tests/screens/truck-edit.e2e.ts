import { crc32, deflateSync } from 'node:zlib';
import { expect, type Page, test } from '@playwright/test';
import { machineFaults, overflowPx } from './machine-faults.ts';
import { signedInAs } from './signed-in.ts';

test.use({ storageState: signedInAs('safety-officer') });

const THIN = '\u202f';

/** Adds a truck with a plate of two lines and goes to its page. */
async function addTruck(page: Page, id: string): Promise<void> {
  await page.goto('/trucks/new?copy=CB-2');
  await page.getByLabel('Id', { exact: true }).fill(id);
  await page.getByRole('button', { name: 'Add the truck' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText(id);
}

async function deleteTruck(page: Page, id: string): Promise<void> {
  await page.goto(`/trucks/${id}/edit`);
  await page.getByText(`Delete truck ${id}`).first().click();
  await page.getByRole('button', { name: `Delete truck ${id}` }).click();
  await expect(page).toHaveURL(/\/trucks\?gone=\d+/);
}

test('a plate is entered with the keyboard alone, and its chart drawn as it is typed', async ({ page }) => {
  await page.goto('/trucks/new');
  await page.getByLabel('Id', { exact: true }).focus();
  const keys = page.keyboard;
  await keys.type('KB-1');
  await keys.press('Tab');
  await keys.type('Entered by keys');
  await keys.press('Tab');
  await keys.type('Counter');
  await keys.press('Tab');
  await keys.type('Electric');
  const grid = page.getByRole('table', { name: 'Mast vertical, forks' });
  await grid.getByLabel('Load centre, column 1').focus();
  await keys.type('500');
  await keys.press('ArrowRight');
  await keys.type('600');
  await keys.press('ArrowDown'); // the first row, under 600
  await keys.press('ArrowLeft');
  await keys.press('ArrowLeft');
  await keys.type('4500');
  await keys.press('Tab');
  await keys.type('1500');
  await keys.press('Tab');
  await keys.type('1300');
  for (const line of ['3000 1800 1600', '2000 2000 ']) {
    await keys.press('Enter');
    await keys.press('ArrowLeft');
    await keys.press('ArrowLeft');
    const [height, first, second] = line.split(' ');
    await keys.type(height!);
    await keys.press('ArrowRight');
    await keys.type(first!);
    await keys.press('ArrowRight');
    await keys.type(second!);
  }
  const chart = page.getByRole('img', { name: /Load chart/ }).first();
  await expect(chart.locator('desc')).toContainText(`2${THIN}000${THIN}kg up to 2${THIN}000${THIN}mm`);
  // the last row: Enter adds one
  await keys.press('Enter');
  await expect(grid.getByLabel('Lift height, row 4')).toBeFocused();
  await page.getByLabel('Largest lift').focus();
  await keys.type('4500');
  await page.getByLabel('Reaches').focus();
  await keys.type('the front');
  await keys.press('Enter'); // a select keeps Enter for itself
  await page.getByRole('button', { name: 'Add the truck' }).focus();
  await keys.press('Enter');
  await expect(page).toHaveURL(/\/trucks\/KB-1\?saved=\d+/);
  const plate = page.getByRole('table', { name: /Mast vertical, forks/ });
  await expect(plate.getByRole('row', { name: /^2.000.mm/ })).toContainText('not stated');
  await expect(plate.getByRole('row', { name: /^4.500.mm/ })).toContainText(`1${THIN}300${THIN}kg`);
  await page.getByRole('link', { name: 'See the change, or undo it' }).click();
  await page.getByRole('button', { name: 'Undo this change' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('put back');
  expect((await page.goto('/trucks/KB-1'))?.status()).toBe(404);
});

test('a block is pasted from a spreadsheet, headings and all', async ({ page }) => {
  await page.goto('/trucks/new');
  const grid = page.getByRole('table', { name: 'Mast vertical, forks' });
  const cell = grid.getByLabel('Capacity at row 1, column 1');
  await cell.focus();
  await cell.evaluate((input) => {
    const data = new DataTransfer();
    data.setData('text/plain', 'lift\t500\t600\t700\n5000\t1000\t900\t-\n3000\t1600\t1,4\t1200\n');
    input.dispatchEvent(
      new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
    );
  });
  await expect(grid.getByLabel('Load centre, column 3')).toHaveValue('700');
  await expect(grid.getByLabel('Lift height, row 2')).toHaveValue('3000');
  await expect(grid.getByLabel('Capacity at lift height 5000, load centre 700')).toHaveValue('');
  const unread = grid.getByLabel('Capacity at lift height 3000, load centre 600');
  await expect(unread).toHaveValue('1,4');
  await expect(unread).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByText(/Row 2, column 2: Not read: the comma/)).toBeVisible();
});

test('bad input is told at its field with what came and what was expected, and nothing is lost', async ({
  page,
}) => {
  await page.goto('/trucks/new');
  await page.getByLabel('Name', { exact: true }).fill('Half a truck');
  await page.getByLabel('Largest lift').fill('0');
  await page.getByLabel('One fork arm carries').fill('1000');
  await expect(page.getByText('0 came, a number above 0 was expected.')).toBeVisible();
  await expect(page.getByText(/a number beside armCapacityKg/)).toBeVisible();
  await page.getByRole('button', { name: 'Add the truck' }).click();
  await expect(page.getByText(/fields to be mended first/)).toBeVisible();
  await expect(page.locator(':focus')).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Half a truck');
});

test('an id that is taken is refused by the server at its field, and the form stands', async ({ page }) => {
  await page.goto('/trucks/new?copy=CB-2');
  await expect(page.getByLabel('Id', { exact: true })).toHaveValue('');
  await page.getByLabel('Id', { exact: true }).fill('CB-2');
  await page.getByLabel('Name', { exact: true }).fill('The second of its id');
  await page.getByRole('button', { name: 'Add the truck' }).click();
  await expect(page.getByText(/an id that is not used yet/).first()).toBeVisible();
  await expect(page.getByLabel('Name', { exact: true })).toHaveValue('The second of its id');
});

test('a server that does not answer loses nothing', async ({ page, context }) => {
  await page.goto('/trucks/CB-1/edit');
  await page.getByLabel('Name', { exact: true }).fill('Typed before the line broke');
  await context.setOffline(true);
  await page.getByRole('button', { name: 'Save the truck' }).click();
  await expect(page.getByText(/The server did not answer/)).toBeVisible();
  await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Typed before the line broke');
  await context.setOffline(false);
});

test('advice comes while typing and keeps nobody from saving', async ({ page }) => {
  await page.goto('/trucks/CB-2/edit');
  const grid = page.getByRole('table', { name: 'Mast vertical, forks' });
  await grid.getByLabel('Capacity at lift height 6000, load centre 500').fill('9000');
  const advice = page.getByRole('complementary', { name: 'Look at these once more' });
  await expect(advice).toContainText('proves more further up');
  await page.getByLabel('Largest lift').fill('7000');
  await expect(advice).toContainText('nothing is proven above');
  await page.getByLabel('Attachment fitted').fill('paper clamp');
  await expect(advice).toContainText('the plate has no line for what is fitted');
  await page.getByLabel('Outside turning radius').fill('');
  await page.getByLabel('Load distance').fill('');
  await page.getByLabel('Inside offset').fill('');
  await expect(advice).toContainText('no aisle is proven wide enough');
  await expect(page.getByRole('button', { name: 'Save the truck' })).toBeEnabled();
});

test('figures that are not touched stay as they were to the last bit, whatever the units shown', async ({
  page,
}) => {
  await addTruck(page, 'UNITS-1');
  const truckOf = async () => {
    const site = (await (await page.request.get('/site/file')).json()) as { trucks: { id: string }[] };
    return site.trucks.find(({ id }) => id === 'UNITS-1')!;
  };
  const before = await truckOf();
  await page.goto('/trucks/UNITS-1/edit');
  await page.getByRole('button', { name: 'Show pounds and inches' }).click();
  const grid = page.getByRole('table', { name: 'Mast vertical, forks' });
  await expect(grid.getByLabel('Load centre, column 1')).toHaveValue('19.685');
  await page.getByLabel('Name', { exact: true }).fill('In pounds');
  await page.getByRole('button', { name: 'Save the truck' }).click();
  await expect(page).toHaveURL(/saved=/);
  expect(await truckOf()).toEqual({ ...before, name: 'In pounds' });
  await page.getByRole('button', { name: 'Show kilograms and millimetres' }).click();
  await deleteTruck(page, 'UNITS-1');
});

test('two people at one truck: the later one decides field by field', async ({ page, context }) => {
  await addTruck(page, 'TWO-1');
  const other = await context.newPage();
  await page.goto('/trucks/TWO-1/edit');
  await other.goto('/trucks/TWO-1/edit');
  await other.getByLabel('Name', { exact: true }).fill('Named by the other');
  await other.getByLabel('Mast height, lowered').fill('2222');
  await other.getByRole('button', { name: 'Save the truck' }).click();
  await expect(other).toHaveURL(/saved=/);
  await page.getByLabel('Name', { exact: true }).fill('Named here');
  await page.getByLabel('Largest lift').fill('6100');
  await page.getByRole('button', { name: 'Save the truck' }).click();
  const conflict = page.getByRole('alert').filter({ hasText: 'Somebody else has changed this truck' });
  await expect(conflict).toBeFocused();
  await expect(conflict.getByRole('heading')).toBeInViewport();
  await expect(conflict.getByRole('button', { name: 'Put these into the form' })).toBeDisabled();
  await expect(conflict.getByText('1 still to be decided')).toBeVisible();
  expect(await machineFaults(page)).toEqual([]);
  await conflict.getByLabel(/Yours: name: .* became Named here/).check();
  await conflict.getByRole('button', { name: 'Put these into the form' }).click();
  await expect(page.getByLabel('Mast height, lowered')).toHaveValue('2222');
  await expect(page.getByLabel('Largest lift')).toHaveValue('6100');
  await page.getByRole('button', { name: 'Save the truck' }).click();
  await expect(page).toHaveURL(/saved=/);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Named here');
  // and one that is taken away meanwhile
  await page.goto('/trucks/TWO-1/edit');
  await deleteTruck(other, 'TWO-1');
  await page.getByLabel('Name', { exact: true }).fill('Still wanted');
  await page.getByRole('button', { name: 'Save the truck' }).click();
  await expect(page.getByText(/has been taken away/)).toBeVisible();
  await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Still wanted');
});

test('the photo of the plate is judged by its bytes, kept, shown and taken away', async ({
  page,
  request,
}) => {
  await addTruck(page, 'PHOTO-1');
  await page.goto('/trucks/PHOTO-1/edit');
  const choose = page.getByLabel('Take or choose a photo');
  await choose.setInputFiles({
    name: 'plate.jpg',
    mimeType: 'image/jpeg',
    buffer: Buffer.from('<svg onload=alert(1)>'),
  });
  await expect(page.getByText(/This is no JPEG, PNG or WebP picture/)).toBeVisible();
  await choose.setInputFiles({ name: 'plate.png', mimeType: 'image/png', buffer: grey() });
  await expect(page.getByRole('img', { name: 'The capacity plate on the truck' })).toBeVisible();
  await page.getByRole('button', { name: 'Save the truck' }).click();
  await expect(page).toHaveURL(/saved=/);
  const picture = page.getByRole('img', { name: 'The capacity plate on the truck' });
  await picture.scrollIntoViewIfNeeded();
  await expect.poll(() => picture.evaluate((image: HTMLImageElement) => image.naturalWidth)).toBe(16);
  const answer = await request.get((await picture.getAttribute('src'))!);
  expect(answer.headers()).toMatchObject({
    'content-type': 'image/png',
    'x-content-type-options': 'nosniff',
    'cache-control': 'private, max-age=31536000, immutable',
  });
  expect((await answer.body()).includes('GPS')).toBe(false);
  await page.goto('/trucks/PHOTO-1/edit');
  await page.getByRole('button', { name: 'Take the photo away' }).click();
  await page.getByRole('button', { name: 'Save the truck' }).click();
  await expect(page).toHaveURL(/saved=/);
  await expect(picture).toHaveCount(0);
  await page.getByRole('link', { name: 'See the change, or undo it' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText(
    'Photo of the plate of truck PHOTO-1 removed',
  );
  await deleteTruck(page, 'PHOTO-1');
});

test('is for those who may: others read who that is, and the server refuses them', async ({
  browser,
  baseURL,
}) => {
  const planner = await browser.newContext({ baseURL: baseURL!, storageState: signedInAs('planner') });
  const page = await planner.newPage();
  await page.goto('/trucks/CB-2');
  await expect(page.getByRole('link', { name: 'Change it' })).toHaveCount(0);
  expect((await page.goto('/trucks/CB-2/edit'))?.status()).toBe(403);
  expect((await page.goto('/trucks/new'))?.status()).toBe(403);
  await planner.close();
});

test('has no serious fault for people who hear or tab it, and fits a phone', async ({ page }) => {
  for (const path of ['/trucks/CB-2/edit', '/trucks/new']) {
    for (const width of [1440, 390]) {
      await page.setViewportSize({ width, height: 844 });
      await page.goto(path);
      await expect(page.getByRole('heading', { name: 'Capacity plate' })).toBeVisible();
      expect(await machineFaults(page), `${path} ${width}`).toEqual([]);
      expect(await overflowPx(page), `${path} ${width}`).toBeLessThanOrEqual(0);
    }
  }
});

/** A grey square of 16 x 16 as a PNG, with a text that says where it was taken. */
function grey(): Buffer {
  const chunk = (name: string, body: Buffer) => {
    const named = Buffer.concat([Buffer.from(name), body]);
    const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
    length.writeUInt32BE(body.length);
    check.writeUInt32BE(crc32(named));
    return Buffer.concat([length, named, check]);
  };
  const header = Buffer.from([0, 0, 0, 16, 0, 0, 0, 16, 8, 0, 0, 0, 0]);
  const rows = Buffer.concat(Array.from({ length: 16 }, () => Buffer.from([0, ...Array(16).fill(128)])));
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', header),
    chunk('tEXt', Buffer.from('Location\0GPS 52 N')),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}
