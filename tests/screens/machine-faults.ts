import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/**
 * Whatever axe finds wrong on the page as it stands, of any weight: the rule, and the first place that breaks it.
 * Every screen is held to none.
 */
export async function machineFaults(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
}

/** How far the page is wider than its window, px: above 0 it must be scrolled sideways. */
export async function overflowPx(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
}
