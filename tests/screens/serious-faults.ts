import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/** What axe finds serious or critical on the page as it stands: the rule, and the first place that breaks it. */
export async function seriousFaults(page: Page): Promise<[rule: string, place: string | undefined][]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => [id, nodes[0]?.html]);
}

/** How far the page is wider than its window, px: above 0 it must be scrolled sideways. */
export async function overflowPx(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
}
