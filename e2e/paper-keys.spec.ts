import type { Page } from '@playwright/test';
import { goTo, open } from './support/app.ts';
import { holdBetweenFiles, printing, takeToPaper } from './support/paper.ts';
import { expect, test } from './support/test.ts';

/** Paper by keyboard alone: whatever is pressed may be gone or at work afterwards, and the keyboard is never left at nothing. */

const button = (page: Page, name: string | RegExp) => printing(page).getByRole('button', { name });
const heading = (page: Page) => printing(page).getByRole('heading', { name: /^\d+ sheets? of Letter/ });
const said = (page: Page, text: string) => page.getByRole('status').filter({ hasText: text });
const station = (page: Page) => page.getByRole('main', { name: 'Paper' });

/** Until the sheets are there. */
const toBeSaved = (page: Page) => expect(button(page, 'Save PDF')).toBeEnabled();

/** Types into a field what it is to hold. */
async function type(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByLabel(label, { exact: true }).first();
  await field.fill(text);
  await field.press('Enter');
}

test('several prints are put on a sheet, and the heading tells of how many it takes', async ({ page }) => {
  await takeToPaper(page, 'Lighthouse');
  await type(page, 'Finished width', '2');
  await type(page, 'Blocks', '24');
  await button(page, 'Save paper: several on a sheet').press('Enter');
  await expect(heading(page)).toBeFocused();
  await expect(printing(page)).toContainText(/could (not )?hold the prints/);
  await expect(heading(page)).toBeFocused();
});

/** Takes up the search for fewer sheets of the lighthouse in six sizes, which takes tens of seconds. */
async function lookLonger(page: Page) {
  await takeToPaper(page, 'Lighthouse');
  await type(page, 'Finished width', '2');
  await button(page, /^Add 3/).press('Enter');
  await expect(page.getByRole('group', { name: 'Size 6' }).getByLabel('Finished width')).toBeFocused();
  await expect(heading(page)).toHaveText(/^1\d sheets/);
  await toBeSaved(page);
  const found = (await heading(page).textContent())!;
  await printing(page).locator('summary', { hasText: 'On the sheets' }).press('Enter');
  const longer = page.getByRole('checkbox', { name: 'Look longer for fewer sheets' });
  await longer.press('Space');
  await expect(longer).toBeChecked();
  await expect(button(page, 'Save PDF')).toHaveCount(0);
  return { longer, found };
}

test('the search for fewer sheets is cancelled, and those found at once are there', async ({ page }) => {
  const { longer, found } = await lookLonger(page);
  await button(page, 'Cancel').press('Enter');
  await expect(longer).not.toBeChecked();
  await expect(heading(page)).toBeFocused();
  await expect(said(page, 'Looking longer for fewer sheets was cancelled and switched off.')).toBeVisible();
  await expect(heading(page)).toHaveText(found);
  await toBeSaved(page);

  // Where other sheets are asked for meanwhile, these come.
  await longer.press('Space');
  await expect(button(page, 'Cancel')).toBeVisible();
  await page.getByRole('checkbox', { name: 'Keep foundations upright' }).press('Space');
  await button(page, 'Cancel').press('Enter');
  await expect(longer).not.toBeChecked();
  await toBeSaved(page);
  await expect(heading(page)).toBeFocused();
});

test('a visit that begins with the search for fewer sheets has some when that is cancelled', async ({
  page,
}) => {
  const { longer, found } = await lookLonger(page);
  await page.reload();
  await button(page, 'Cancel').press('Enter');
  await expect(longer).not.toBeChecked();
  await expect(station(page)).toBeFocused();
  await toBeSaved(page);
  await expect(heading(page)).toHaveText(found);
  await page.reload();
  await toBeSaved(page);
  await expect(longer).not.toBeChecked();
});

test('after laying out was cancelled, the keyboard is where it is asked for after all', async ({ page }) => {
  let letThrough = () => {};
  const through = new Promise<void>((resolve) => {
    letThrough = resolve;
  });
  // As over a slow line.
  await page.route(/\/later-[^/]*\.js$/, async (route) => {
    await through;
    await route.continue().catch(() => undefined);
  });
  await open(page, '?demo');
  await goTo(page, 'Paper');
  await button(page, 'Cancel').press('Enter');
  const after = page.getByRole('button', { name: 'Lay them out' });
  await expect(after).toBeFocused();
  letThrough();
  await page.keyboard.press('Enter');
  await expect(station(page)).toBeFocused();
  await expect(button(page, 'Save PDF')).toBeEnabled();
});

test('saving and printing leave the keyboard where it was', async ({ page }) => {
  await page.addInitScript(() => {
    // Headless browsers have no dialog for printing: it is closed at once.
    window.print = () => {
      Object.assign(window.top!, { printed: true });
      window.dispatchEvent(new Event('afterprint'));
    };
  });
  const goOn = await holdBetweenFiles(page);
  await takeToPaper(page, 'Lighthouse');
  const save = button(page, 'Save PDF');
  await Promise.all([page.waitForEvent('download'), save.press('Enter')]);
  await expect(said(page, 'Saved Lighthouse.pdf')).toHaveCount(1);
  await expect(save).toBeEnabled();
  await expect(save).toBeFocused();

  const print = button(page, 'Print…');
  await print.press('Enter');
  await page.waitForFunction(() => (window as { printed?: boolean }).printed);
  await expect(said(page, 'was handed to the browser for printing')).toHaveCount(1);
  await expect(print).toBeFocused();

  const picture = button(page, 'Save PNG…');
  const dialog = page.getByRole('dialog');
  await picture.press('Enter');
  await page.keyboard.press('Escape');
  await expect(picture).toBeFocused();
  await picture.press('Enter');
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    dialog.getByRole('button', { name: 'Save PNG' }).press('Enter'),
  ]);
  await expect(said(page, `Saved ${file.suggestedFilename()}`)).toHaveCount(1);
  await expect(picture).toBeFocused();

  const svg = button(page, /^Save \d+ SVG files/);
  const files: string[] = [];
  page.on('download', (download) => files.push(download.suggestedFilename()));
  await button(page, /^Add 3/).press('Enter');
  await expect(svg).toBeEnabled();
  await svg.press('Enter');
  await expect(page.getByRole('progressbar')).toHaveAttribute('value', '1');
  await expect(svg).toBeDisabled();
  await expect(svg).toBeFocused();
  // What is under way is not begun once more by the same key.
  await page.keyboard.press('Enter');
  await button(page, 'Cancel').press('Enter');
  await goOn();
  await expect(said(page, 'Making the SVG files was cancelled')).toHaveCount(1);
  await expect(heading(page)).toBeFocused();
  expect(new Set(files).size).toBe(files.length);
});

test('a dialog that is asked for again in the moment in which it closes is open', async ({ page }) => {
  await takeToPaper(page, 'Lighthouse');
  const picture = button(page, 'Save PNG…');
  await picture.press('Enter');
  const dialog = page.getByRole('dialog');
  await expect(dialog).toBeVisible();
  // The keyboard is back at the button before the page is told that the dialog was closed.
  await picture.evaluate((element) =>
    element.addEventListener('focus', () => (element as HTMLElement).click(), { once: true }),
  );
  await page.keyboard.press('Escape');
  await expect(picture).not.toBeFocused();
  await expect(dialog.getByRole('button', { name: 'Save PNG' })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
  await expect(picture).toBeFocused();
});

test('a printer is measured, forgotten and put back', async ({ page }) => {
  await takeToPaper(page, 'Lighthouse');
  await printing(page).locator('summary', { hasText: 'Printer' }).press('Enter');
  const measure = button(page, 'Measure the printer…');
  const dialog = page.getByRole('dialog');
  await measure.press('Enter');
  await page.keyboard.press('Escape');
  await expect(measure).toBeFocused();

  await measure.press('Enter');
  const check = dialog.getByRole('button', { name: 'Save the check page' });
  await Promise.all([page.waitForEvent('download'), check.press('Enter')]);
  await expect(check).toBeEnabled();
  await expect(check).toBeFocused();
  await dialog.getByLabel('Square of 1 in, across').fill('0.99');
  await dialog.getByLabel('Square of 1 in, down').fill('0.99');
  await dialog.getByLabel('Name of the printer').fill('Quay');
  await dialog.getByRole('button', { name: 'Keep the printer' }).press('Enter');
  await expect(measure).toBeFocused();

  const forget = button(page, 'Forget this one');
  await forget.press('Enter');
  await expect(measure).toBeFocused();
  await page.getByRole('button', { name: 'Put back' }).press('Enter');
  await expect(station(page)).toBeFocused();
  await forget.press('Enter');
  await page.getByRole('button', { name: 'Dismiss' }).press('Enter');
  await expect(station(page)).toBeFocused();
});
