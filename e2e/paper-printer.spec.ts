import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { stop } from './support/app.ts';
import { printing, takeToPaper } from './support/paper.ts';
import { type DrawnPage, readPdf, type Spot } from './support/pdf.ts';
import { expect, test } from './support/test.ts';

const POINTS = 72;
/** 0.01 mm in points. */
const WITHIN = (0.01 / 25.4) * POINTS;

async function measurePrinter(page: Page): Promise<void> {
  await printing(page).locator('summary', { hasText: 'Printer' }).click();
  await printing(page).getByRole('button', { name: 'Measure the printer…' }).click();
}

const sides = (points: readonly Spot[]): readonly [number, number] => {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
};

/** Closed upright rectangles drawn with the finest line that measure so, points: the check squares. */
const rectangles = (page: DrawnPage, across: number, down: number) =>
  page.paths.filter(({ points, closed, stroked, dashed, width }) => {
    if (!closed || !stroked || dashed || width > 0.6 || points.length !== 4) return false;
    const [wide, high] = sides(points);
    return Math.abs(wide - across) < WITHIN && Math.abs(high - down) < WITHIN;
  });

test('what a printer makes of the check page corrects every page from then on', async ({ page }) => {
  await takeToPaper(page, 'Lantern');
  await measurePrinter(page);
  const dialog = page.getByRole('dialog', { name: 'Measure the printer' });
  const [check] = await Promise.all([
    page.waitForEvent('download'),
    dialog.getByRole('button', { name: 'Save the check page' }).click(),
  ]);
  const [checkPage] = readPdf(readFileSync(await check.path()));
  expect(rectangles(checkPage!, POINTS, POINTS)).toHaveLength(1);

  await dialog.getByLabel('Square of 1 in, across').fill('0.973 in');
  await dialog.getByLabel('Square of 1 in, down').fill('0.989');
  await expect(dialog.getByRole('status')).toContainText('It prints 97.3 % across and 98.9 % down.');
  await dialog.getByRole('button', { name: 'Keep the printer' }).click();
  await expect(dialog.getByRole('status')).toContainText('The printer has no name');
  await dialog.getByLabel('Name of the printer').fill('Galley');
  await dialog.getByRole('button', { name: 'Keep the printer' }).click();
  await expect(dialog).toHaveCount(0);

  await page.reload();
  await expect(page.getByLabel('Pages are made for')).toHaveValue('Galley');
  const save = printing(page).getByRole('button', { name: 'Save PDF' });
  await expect(save).toBeEnabled();
  const [file] = await Promise.all([page.waitForEvent('download'), save.click()]);
  const [first] = readPdf(readFileSync(await file.path()));
  // What this printer makes 0.973 of across and 0.989 of down comes out as an inch, and as 50 mm.
  expect(rectangles(first!, POINTS / 0.973, POINTS / 0.989)).toHaveLength(1);
  const fifty = (50 / 25.4) * POINTS;
  expect(rectangles(first!, fifty / 0.973, fifty / 0.989)).toHaveLength(1);
  expect(first!.text.replace(/\s+/g, ' ')).toMatch(
    /Corrected for Galley, which prints 97\.3 % across and 98\.9 %/,
  );

  const forget = printing(page).getByRole('button', { name: 'Forget this one' });
  await forget.click();
  await expect(page.getByLabel('Pages are made for')).toHaveCount(0);
  await page.getByRole('button', { name: 'Put back' }).click();
  await expect(page.getByLabel('Pages are made for')).toHaveValue('Galley');
  await forget.click();
  await expect(page.getByLabel('Pages are made for')).toHaveCount(0);
});

test('measures that cannot be are refused in a sentence, and no printer is kept', async ({ page }) => {
  await takeToPaper(page, 'Lantern');
  await measurePrinter(page);
  const dialog = page.getByRole('dialog', { name: 'Measure the printer' });
  await dialog.getByLabel('Name of the printer').fill('Galley');
  await dialog.getByLabel('Square of 1 in, down').fill('1');
  for (const [typed, says] of [
    ['0', /0 in is no measure of the square of 1 in/],
    ['5 in', /5 in is no measure of the square of 1 in/],
    ['0.8', /The page came out at 80 %.*“fit to page”/],
    ['wide', /“wide” is not a length/],
  ] as const) {
    await dialog.getByLabel('Square of 1 in, across').fill(typed);
    await dialog.getByRole('button', { name: 'Keep the printer' }).click();
    await expect(dialog.getByRole('status')).toHaveText(says);
  }
  await page.keyboard.press('Escape');
  await expect(page.getByLabel('Pages are made for')).toHaveCount(0);
});

test('a list of finished sizes is printed in one go, and stays after a reload', async ({ page }) => {
  await takeToPaper(page, 'Lantern');
  const rows = page.getByRole('group', { name: /^Size/ });
  await expect(rows).toHaveCount(1);
  await printing(page).getByRole('button', { name: 'Add 3, 4½, 6, 9 and 12 in' }).click();
  await expect(rows).toHaveCount(5);
  await page.getByRole('button', { name: 'Take size 2 off' }).click();
  await expect(rows).toHaveCount(4);
  await expect(
    page.getByRole('status').filter({ hasText: 'The size of 4½ in is off the list.' }),
  ).toBeVisible();
  await page.getByRole('button', { name: 'Put back' }).click();
  await expect(rows).toHaveCount(5);
  await expect(page.getByRole('group', { name: 'Size 2' }).getByLabel('Finished width')).toHaveValue('4½ in');
  await page.getByRole('button', { name: 'Only as drawn' }).click();
  await expect(rows).toHaveCount(1);
  await page.getByRole('button', { name: 'Put back' }).click();
  await expect(rows).toHaveCount(5);
  await page.getByRole('button', { name: 'Take size 5 off' }).click();
  await page.getByRole('button', { name: 'Take size 4 off' }).click();
  const first = page.getByRole('group', { name: 'Size 1' });
  await first.getByLabel('Blocks').fill('0');
  await first.getByLabel('Blocks').press('Enter');
  await expect(first).toContainText('Print for one block at least, or take the size off.');
  await first.getByLabel('Blocks').press('Escape');
  const mirrored = first.getByLabel('Mirrored');
  await mirrored.fill('2');
  await mirrored.press('Enter');
  await printing(page).locator('summary', { hasText: 'What to print' }).click();
  const list = printing(page).getByRole('table');
  await expect(list.getByRole('row').filter({ hasText: 'mirrored' })).toHaveCount(1);
  for (const width of ['3 in', '4½ in', '6 in'])
    await expect(list.getByRole('row').filter({ hasText: width }).first()).toBeVisible();
  await list
    .getByRole('button', { name: /show page 1$/ })
    .first()
    .click();
  await expect(page.locator('figure#sheet-1')).toBeFocused();

  await page.reload();
  await expect(rows).toHaveCount(3);
  await expect(mirrored).toHaveValue('2');
});

test('a paper of one’s own that is too small says so, and there is nothing to save', async ({ page }) => {
  await takeToPaper(page, 'Lantern');
  await page.getByRole('combobox', { name: 'Paper', exact: true }).selectOption('A size of my own');
  for (const name of ['Paper width', 'Paper height']) {
    await page.getByLabel(name).fill('4');
    await page.getByLabel(name).press('Enter');
  }
  await expect(page.getByRole('region', { name: 'Sheets' })).toContainText(
    'Only 3½ × 3½ in of the sheet can be printed on',
  );
  await expect(page.getByRole('button', { name: 'Save PDF' })).toHaveCount(0);
  await expect(stop(page, 'Paper')).toContainText('no sheets yet');

  // A sheet that is large enough, of which the margins leave nothing.
  await page.getByRole('combobox', { name: 'Paper', exact: true }).selectOption('letter');
  await printing(page).locator('summary', { hasText: 'Printer' }).click();
  for (const edge of ['Left', 'Right']) {
    await printing(page).getByLabel(edge, { exact: true }).fill('4');
    await printing(page).getByLabel(edge, { exact: true }).press('Enter');
  }
  await expect(page.getByRole('region', { name: 'Sheets' })).toContainText(/margins/);
  for (const edge of ['Left', 'Right']) {
    await printing(page).getByLabel(edge, { exact: true }).fill('1/4');
    await printing(page).getByLabel(edge, { exact: true }).press('Enter');
  }
  await expect(page.getByRole('button', { name: 'Save PDF' })).toBeEnabled();

  await page.getByRole('combobox', { name: 'Paper', exact: true }).selectOption('A size of my own');
  await page.getByLabel('Paper width').fill('12');
  await page.getByLabel('Paper width').press('Enter');
  await page.getByLabel('Paper height').fill('14 1/2');
  await page.getByLabel('Paper height').press('Enter');
  await expect(page.getByRole('heading', { name: /sheets? of 12 × 14½ in/ })).toBeVisible();
});
