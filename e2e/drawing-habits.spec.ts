import type { Page } from '@playwright/test';
import { open, stop, verdict } from './support/app.ts';
import { drag, holdEnds, onPage, type Place, press, tabToDrawing, takeUp } from './support/draw.ts';
import { listen, toHear } from './support/spoken.ts';
import { expect, test } from './support/test.ts';

/** The panel's part about the thing in hand. */
const inHand = (page: Page) => page.getByRole('region', { name: 'In hand' });

const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ });

async function pointAt(page: Page, place: Place): Promise<void> {
  const { x, y } = await onPage(page, place);
  await page.mouse.move(x, y, { steps: 3 });
}

const unfold = (page: Page, title: string) => page.locator('summary', { hasText: title }).click();

/** Chooses the one line that passes a place, and reads off its ends. */
async function endsAt(page: Page, place: Place): Promise<string> {
  await takeUp(page, 'Adjust');
  await press(page, place);
  await expect(inHand(page).getByRole('heading', { level: 2 }).first()).toContainText(/^Line/);
  return (await inHand(page).textContent()) ?? '';
}

test('a length and an angle are typed while a line is drawn', async ({ page }) => {
  await open(page);
  await press(page, [0, 4]);
  await pointAt(page, [3, 3]);
  await page.keyboard.type('2 1/2');
  const length = inHand(page).getByLabel('Length');
  await expect(length).toBeFocused();
  await expect(length).toHaveValue('2 1/2');
  await page.keyboard.press('Tab');
  await page.keyboard.type('steep');
  await page.keyboard.press('Enter');
  await expect(inHand(page).getByRole('alert')).toContainText('“steep” is not an angle');
  await page.keyboard.press('Control+a');
  await page.keyboard.type('0');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('application', { name: 'Drawing of the block' })).toBeFocused();
  await expect(undo(page)).toHaveAccessibleName(/Draw a line/);
  // What was typed was for that one line.
  await expect(length).toHaveValue('');
  expect(await endsAt(page, [1.2, 4])).toMatch(/0, 4 in.*2½, 4 in/);
});

test('by keys alone: an end, a length, an angle', async ({ page }) => {
  await open(page);
  await tabToDrawing(page);
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Enter');
  await page.keyboard.type('1.5');
  await page.keyboard.press('Tab');
  await page.keyboard.type('90');
  await page.keyboard.press('Enter');
  expect(await endsAt(page, [3, 2.2])).toMatch(/3, 3 in.*3, 1½ in|3, 1½ in.*3, 3 in/);
});

test('ends run on to the nearest line unless they are held, and lines go on from each other', async ({
  page,
}) => {
  await open(page);
  await drag(page, [0, 3], [4, 3]);
  await expect(stop(page, 'Draft')).toContainText('2 patches');
  await expect(verdict(page)).toHaveText('Sews on one foundation');
  // A third of the way down: it stops at the line.
  await drag(page, [2, 0], [2, 1]);
  await expect(stop(page, 'Draft')).toContainText('3 patches');
  await page.getByRole('checkbox', { name: 'Each line goes on from the last' }).check();
  for (const corner of [
    [0, 5],
    [2, 4],
    [4, 5],
    [6, 4],
  ] as const)
    await press(page, corner);
  await page.keyboard.press('Escape');
  await expect(stop(page, 'Draft')).toContainText('4 patches');
  await page.reload();
  await expect(page.getByRole('checkbox', { name: 'Each line goes on from the last' })).toBeChecked();
});

test('kinds of places are switched off, and stay so after a reload', async ({ page }) => {
  await open(page);
  const kind = (name: string) => page.getByRole('checkbox', { name, exact: true });
  await unfold(page, 'What catches');
  await expect(kind('Middles')).toBeChecked();
  for (const name of ['Middles', 'Grid']) await kind(name).uncheck();
  await page.getByRole('combobox', { name: 'Angle steps' }).selectOption('every 45°');
  await page.reload();
  for (const name of ['Middles', 'Grid']) await expect(kind(name)).not.toBeChecked();
  await expect(page.getByRole('combobox', { name: 'Angle steps' })).toHaveValue('45');
  await expect(verdict(page)).toBeVisible();
  // Nothing pulls to the edge's middle, which is a little farther along.
  await drag(page, [2.93, 0], [2.93, 6]);
  await expect(stop(page, 'Draft')).toContainText('2 patches');
  expect(await endsAt(page, [2.93, 3])).toMatch(/about 2 15\/16, 0 in/);
  await page.getByRole('button', { name: 'Let everything catch' }).click();
  await expect(kind('Grid')).toBeChecked();
});

test('the grid in parts of the block, of any number', async ({ page }) => {
  await listen(page);
  await open(page);
  const grid = page.getByRole('region', { name: 'Grid' });
  await grid.getByLabel('A line every').fill('3/8');
  await grid.getByLabel('A line every').press('Enter');
  await grid.getByRole('radio', { name: 'In parts of the block' }).check();
  await expect(grid.getByRole('textbox', { name: 'Parts' })).toHaveValue('16');
  await grid.getByRole('textbox', { name: 'Parts' }).fill('100');
  await grid.getByRole('textbox', { name: 'Parts' }).press('Enter');
  await expect(grid.getByRole('alert')).toContainText('from 2 to 64');
  await grid.getByRole('textbox', { name: 'Parts' }).fill('5');
  await grid.getByRole('textbox', { name: 'Parts' }).press('Enter');
  await tabToDrawing(page);
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowLeft');
  await toHear(page, /^about 2 13\/32, /);
  await page.reload();
  await expect(grid.getByRole('textbox', { name: 'Parts' })).toHaveValue('5');
});

test('several are framed, taken one by one, nudged, dragged and deleted', async ({ page }) => {
  await open(page);
  await holdEnds(page);
  for (const x of [1, 2, 3]) await drag(page, [x, 1], [x, 5]);
  await takeUp(page, 'Adjust');
  await drag(page, [0.5, 0.5], [2.5, 5.5]);
  const chosen = page.getByRole('region', { name: 'In hand' });
  await expect(chosen).toContainText('2 lines');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Shift+ArrowRight');
  await expect(undo(page)).toHaveAccessibleName(/Move several parts/);
  await page.keyboard.down('Shift');
  await press(page, [3, 3]);
  await page.keyboard.up('Shift');
  await expect(chosen).toContainText('3 lines');
  await drag(page, [3, 3], [4, 3]);
  expect(await endsAt(page, [4, 3])).toMatch(/4, 1 in.*4, 5 in/);
  await page.keyboard.press('Control+a');
  await expect(chosen).toContainText('3 lines');
  await page.keyboard.press('Delete');
  await expect(stop(page, 'Draft')).toContainText('1 patch');
  // The drag, the nudges (one step), three lines: all there again.
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  expect(await endsAt(page, [1, 3])).toMatch(/1, 1 in.*1, 5 in/);
});

test('what is chosen with the keyboard is nudged once the crosshair is away', async ({ page }) => {
  await listen(page);
  await open(page);
  await drag(page, [3, 0], [3, 6]);
  await page.keyboard.press('a');
  await tabToDrawing(page);
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Enter');
  await expect(inHand(page)).toContainText('Line 1');
  await page.keyboard.press('Escape');
  await page.keyboard.press('ArrowLeft');
  await toHear(page, /^½ in to the left/);
  await expect(inHand(page)).toContainText('2½, 0 in');
  await page.keyboard.press('ArrowUp');
  await expect(page.getByText('The line would only slide along itself').first()).toBeVisible();
});
