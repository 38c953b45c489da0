import { expect, type Locator, type Page } from '@playwright/test';

/** The ways of a person through the application, by the names that everything has on the screen. */

export type Station = 'Draft' | 'Order' | 'Cloth' | 'Paper';

const path = (page: Page): Locator => page.getByRole('navigation', { name: 'Stations' });

export const stop = (page: Page, station: Station): Locator =>
  path(page).getByRole('button', { name: new RegExp(`^${station}`) });

/** Goes to a station and waits until it shows. */
export async function goTo(page: Page, station: Station): Promise<void> {
  await stop(page, station).click();
  await shown(page.getByRole('main', { name: station }));
}

/** Waits for a station's screen, which is loaded when it is first gone to. */
const shown = (main: Locator): Promise<void> => expect(main.locator(':scope > *').first()).toBeVisible();

/** The verdict's short sentence, once it is about what is drawn. */
export const verdict = (page: Page): Locator => page.locator('[data-testid=verdict][data-stale=false]');

/** Opens the page and waits until the open block has been studied. */
export async function open(page: Page, address = ''): Promise<void> {
  await page.goto(address);
  await shown(page.getByRole('main'));
  await expect(verdict(page)).toBeVisible();
}

/** Waits until the browser keeps what is shown: a page that is left within the same moment may not come to it. */
export async function untilKept(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^Seamwright/ }).click();
  await expect(page.getByText('Kept in this browser.')).toBeVisible();
  await page.keyboard.press('Escape');
}

/** Opens the list of blocks and takes one. */
export async function openBlock(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: /^Block: / }).click();
  const blocks = page.getByRole('list', { name: 'Blocks', exact: true });
  await blocks.getByRole('button', { name: new RegExp(`^${name}`) }).click();
  await expect(page.getByRole('button', { name: `Block: ${name}` })).toBeVisible();
  await expect(verdict(page)).toBeVisible();
}

/** Gives the page files as if they were dropped on it. */
export async function drop(
  page: Page,
  files: readonly { name: string; text: string; type?: string }[],
): Promise<void> {
  const transfer = await page.evaluateHandle((given) => {
    const data = new DataTransfer();
    for (const { name, text, type } of given) data.items.add(new File([text], name, { type: type ?? '' }));
    return data;
  }, files);
  await page.dispatchEvent('body', 'dragover', { dataTransfer: transfer });
  await page.dispatchEvent('body', 'drop', { dataTransfer: transfer });
}

/** The file chooser's way: the menu, then the file. */
export async function choose(
  page: Page,
  file: { name: string; mimeType: string; buffer: Buffer },
): Promise<void> {
  await page.getByRole('button', { name: /^Seamwright/ }).click();
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: /^Open a pattern file/ }).click(),
  ]);
  await chooser.setFiles(file);
}

/** The sentence that says what could not be done. */
export const problem = (page: Page): Locator => page.getByRole('alert').filter({ hasText: /\S/ });
