import type { Locator, Page } from '@playwright/test';
import { goTo, open, openBlock } from './app.ts';
import { expect } from './test.ts';

/** Goes to what is cut at the Cloth station; the chart's tables, once there is one. */
export async function goToCutting(page: Page): Promise<Locator> {
  await goTo(page, 'Cloth');
  await page.getByRole('radio', { name: 'Cut and buy' }).press('Space');
  const tables = page.getByRole('table', { name: /^Cut from / });
  await expect(tables.first()).toBeVisible();
  return tables;
}

/** Opens the demo, and in it a block, at what is cut for it. */
export async function openCutting(page: Page, block?: string): Promise<Locator> {
  await open(page, '?demo');
  if (block !== undefined) await openBlock(page, block);
  return goToCutting(page);
}
