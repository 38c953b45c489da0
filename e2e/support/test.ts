import { test as base, type Page } from '@playwright/test';

export { expect } from '@playwright/test';

/**
 * Watches two promises of the program: it makes no errors on the page, and it asks nothing of any other computer.
 *
 * @returns a list that grows by one line for each breach
 */
export function watchPage(page: Page, ownAddress: string): readonly string[] {
  const breaches: string[] = [];
  page.on('pageerror', (error) => breaches.push(`error on the page: ${error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error') breaches.push(`error in the console: ${message.text()}`);
  });
  page.on('request', (request) => {
    const url = request.url();
    const own = url.startsWith(ownAddress) || url.startsWith('data:') || url.startsWith('blob:');
    if (!own) breaches.push(`a request to another computer: ${url}`);
  });
  return breaches;
}

/** Playwright's `test` with {@link watchPage} over every page: a breach fails the test, whatever else it found. */
export const test = base.extend({
  page: async ({ page, baseURL }, use) => {
    if (baseURL === undefined) throw new Error('playwright.config.ts gives no baseURL');
    const breaches = watchPage(page, baseURL);
    await use(page);
    if (breaches.length > 0) throw new Error(breaches.join('\n'));
  },
});
