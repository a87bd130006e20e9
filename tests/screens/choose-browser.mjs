import { existsSync } from 'node:fs';
import { chromium } from '@playwright/test';

/** Where Debian's package puts it. */
const DEBIAN_CHROMIUM = '/usr/bin/chromium';

/** Which Chromium the browser tests use: CHROMIUM_PATH, else the system's, else Playwright's own. None: throws with what to do. */
export function chooseBrowser(env = process.env) {
  if (env.CHROMIUM_PATH) {
    if (existsSync(env.CHROMIUM_PATH)) return env.CHROMIUM_PATH;
    throw new Error(`CHROMIUM_PATH is ${env.CHROMIUM_PATH}, and there is no such file.`);
  }
  const found = [DEBIAN_CHROMIUM, chromium.executablePath()].find((path) => existsSync(path));
  if (found !== undefined) return found;
  throw new Error(
    'The browser tests need Chromium: apt-get install -y chromium, or npx playwright install chromium, or set CHROMIUM_PATH.',
  );
}
