import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, type Locator, type Page } from '@playwright/test';

/**
 * Takes a picture for the guide. It is written to `docs/images/NAME.png` only when the pictures are being renewed
 * (`npm run pictures`); otherwise the guide's picture has to be there already, and stays as it is.
 */
export async function guidePicture(of: Page | Locator, name: string): Promise<void> {
  const path = fileURLToPath(new URL(`../../docs/images/${name}.png`, import.meta.url));
  if (process.env.SEAMWRIGHT_PICTURES === 'renew') {
    // Rows of long lists are laid out in the frame after they come into sight.
    const page = 'keyboard' in of ? of : of.page();
    await page.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
    );
    await of.screenshot({ path, animations: 'disabled', caret: 'hide', scale: 'css' });
  }
  expect(existsSync(path), `docs/images/${name}.png is missing: “npm run pictures” makes it`).toBe(true);
}
