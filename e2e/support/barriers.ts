import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/** axe-core's findings that would keep someone out. */
export async function barriers(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html.slice(0, 160)}`));
}
