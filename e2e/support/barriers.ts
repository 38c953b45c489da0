import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/** axe-core's findings that would keep someone out. */
export async function barriers(page: Page): Promise<readonly string[]> {
  // In one go: the other mode opens a page of its own to put together what frames of other computers say; there are none.
  const axe = new AxeBuilder({ page }).setLegacyMode(true).options({ resultTypes: ['violations'] });
  const { violations } = await axe.analyze();
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html.slice(0, 160)}`));
}
