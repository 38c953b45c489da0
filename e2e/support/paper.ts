import { expect, type Locator, type Page } from '@playwright/test';
import { goTo, open, openBlock } from './app.ts';

/** The Paper station's panel. */
export const printing = (page: Page): Locator => page.getByRole('region', { name: 'Printing' });

/** Takes a block of the demo to the Paper station, and waits for its sheets. */
export async function takeToPaper(page: Page, block: string): Promise<void> {
  await open(page, '?demo');
  await openBlock(page, block);
  await goTo(page, 'Paper');
  await expect(printing(page).getByRole('button', { name: 'Save PDF' })).toBeEnabled();
}
