import { expect, type Page, test } from '@playwright/test';
import { machineFaults, overflowPx } from './machine-faults.ts';
import { SIGNED_OUT, signedInAs } from './signed-in.ts';

/** Whatever the browser refuses for the content policy, and whatever it complains of in the console. */
async function watch(page: Page): Promise<() => Promise<string[]>> {
  const seen: string[] = [];
  await page.exposeFunction('noteViolation', (text: string) => seen.push(text));
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      const note = (globalThis as unknown as { noteViolation: (text: string) => void }).noteViolation;
      note(`${event.violatedDirective}: ${event.blockedURI} ${event.sourceFile}:${event.lineNumber}`);
    });
  });
  page.on('console', (message) => {
    if (/content security policy/i.test(message.text())) seen.push(message.text());
  });
  page.on('pageerror', (error) => seen.push(error.message));
  return async () => {
    await page.waitForLoadState('networkidle');
    return seen;
  };
}

const SCREENS = [
  '/',
  '/racks?run=A5-L',
  '/racks?run=A5-L&view=table',
  '/racks?run=A5-L&location=A5-L-01-2-2&load=ODD-02',
  '/which-truck?load=ODD-12&location=A1-L-01-1-1',
  '/working?load=ODD-12&location=A1-L-01-1-1&truck=CB-2',
  '/trucks',
  '/trucks/CB-2',
  '/loads',
  '/loads/ODD-12',
  '/site',
  '/changes',
  '/changes/1',
  '/import',
  '/export',
  '/hand-pick',
  '/rack-advice',
  '/wear',
  '/people',
  '/account',
  '/nowhere-at-all',
];

const ENTRY_SCREENS = [
  ['planner', '/loads/new'],
  ['planner', '/loads/ODD-12/edit'],
  ['planner', '/import'],
  ['planner', '/rack-shape'],
  ['planner', '/rack-shape/A5-L'],
  ['safety-officer', '/trucks/new'],
  ['safety-officer', '/trucks/CB-2/edit'],
] as const;

for (const [role, address] of ENTRY_SCREENS) {
  test.describe(`as a ${role}`, () => {
    test.use({ storageState: signedInAs(role) });
    test(`${address} asks for nothing that the content policy forbids`, async ({ page }) => {
      const violations = await watch(page);
      expect((await page.goto(address))?.status()).toBe(200);
      expect(await violations()).toEqual([]);
    });
  });
}

test.describe('as an administrator', () => {
  test.use({ storageState: signedInAs('administrator') });
  for (const address of SCREENS) {
    test(`${address} asks for nothing that the content policy forbids`, async ({ page }) => {
      const violations = await watch(page);
      await page.goto(address);
      expect(await violations()).toEqual([]);
    });
  }

  test('the racks are judged by the worker and drawn', async ({ page }) => {
    const violations = await watch(page);
    const worker = page.waitForEvent('worker');
    await page.goto('/racks?run=A5-L');
    await worker;
    const counts = page.getByRole('list', { name: 'Verdicts in this run' });
    await expect(counts).not.toContainText('·', { timeout: 30_000 });
    expect(await violations()).toEqual([]);
  });

  test('an inline script without the nonce does not run', async ({ page }) => {
    await page.goto('/account');
    const ran = await page.evaluate(() => {
      const script = document.createElement('script');
      script.textContent = 'globalThis.broughtIn = true';
      const holder = document.createElement('div');
      holder.innerHTML = '<img src="x" onerror="globalThis.broughtIn = true">';
      document.body.append(holder);
      const frame = document.createElement('div');
      frame.setAttribute('onclick', 'globalThis.broughtIn = true');
      document.body.append(frame);
      frame.click();
      return new Promise((done) => {
        setTimeout(() => done((globalThis as { broughtIn?: boolean }).broughtIn ?? false), 500);
      });
    });
    expect(ran).toBe(false);
  });
});

test.describe('signed out', () => {
  test.use({ storageState: SIGNED_OUT });
  for (const address of ['/sign-in', '/first-start', '/set-password?link=x']) {
    test(`${address} keeps to the content policy, fits a phone and can be heard`, async ({ page }) => {
      const violations = await watch(page);
      await page.goto(address);
      for (const width of [1280, 390]) {
        await page.setViewportSize({ width, height: 844 });
        expect(await overflowPx(page)).toBe(0);
        expect(await machineFaults(page)).toEqual([]);
      }
      expect(await violations()).toEqual([]);
    });
  }
});

test.describe('people and account', () => {
  test.use({ storageState: signedInAs('administrator') });
  for (const address of ['/people', '/account']) {
    test(`${address} fits a phone and holds no fault that a machine can find`, async ({ page }) => {
      await page.goto(address);
      for (const width of [1280, 390]) {
        await page.setViewportSize({ width, height: 844 });
        expect(await overflowPx(page)).toBe(0);
        expect(await machineFaults(page)).toEqual([]);
      }
    });
  }
});
