import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { open, stop, verdict } from './support/app.ts';
import { barriers } from './support/barriers.ts';
import { drag, type Place, press, takeUp } from './support/draw.ts';
import { guidePicture } from './support/picture.ts';
import { expect, test } from './support/test.ts';

/** The panel's part about the thing in hand. */
const inHand = (page: Page): Locator => page.getByRole('region', { name: 'In hand' });

const undo = (page: Page): Locator => page.getByRole('button', { name: /^Undo/ });

const button = (page: Page, name: string | RegExp): Locator => inHand(page).getByRole('button', { name });

/** Types into a field and leaves it by Enter. */
async function type(field: Locator, text: string): Promise<void> {
  await field.fill(text);
  await field.press('Enter');
}

const field = (page: Page, label: string): Locator => inHand(page).getByLabel(label, { exact: true });

/** Unfolds a part of what is in hand. */
async function unfold(page: Page, title: string): Promise<void> {
  const part = inHand(page).getByRole('group', { name: title, exact: true });
  if ((await part.getAttribute('open')) === null) await part.locator('summary').click();
}

const openList = (page: Page): Promise<void> => page.getByText('Everything drawn, as a list').click();

const table = (page: Page, name: 'Lines' | 'Points'): Locator =>
  page.getByRole('list', { name, exact: true });

/** The values of a row of the table. */
const valuesOf = (page: Page, name: 'Lines' | 'Points', row: string): Locator =>
  table(page, name).getByRole('button', { name: new RegExp(`^${row}, `) });

/** A line by typed ends, in the part of the list that is for it. */
async function typeLine(page: Page, from: Place, to: Place): Promise<void> {
  for (const [name, [x, y]] of [
    ['First end', from],
    ['Second end', to],
  ] as const) {
    const end = page.getByRole('group', { name, exact: true });
    await type(end.getByLabel('From the left'), String(x));
    await type(end.getByLabel('From the top'), String(y));
  }
  await page.getByRole('button', { name: 'Draw this line' }).click();
}

/** The drawing of the first block as it is saved. */
async function savedDrawing(page: Page): Promise<unknown> {
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')]);
  return JSON.parse(readFileSync(await download.path(), 'utf8')).blocks[0].drawing;
}

test('a block is drawn by typed values only', async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: 'Another outline…' }).click();
  const dialog = page.getByRole('dialog', { name: 'Outline of the block' });
  await dialog.getByRole('radio', { name: 'Rectangle' }).check();
  await type(dialog.getByLabel('Width'), '8');
  await type(dialog.getByLabel('Height'), '5 1/2');
  await dialog.getByRole('button', { name: 'Use this outline' }).click();
  await openList(page);
  await typeLine(page, [0, 4], [8, 4]);
  await expect(stop(page, 'Draft')).toContainText('2 patches');

  await table(page, 'Lines').getByRole('button', { name: 'Line 1 8 in' }).click();
  await unfold(page, 'Parallel copies');
  await type(field(page, 'Distance'), '1 1/4');
  await type(field(page, 'How many'), '2');
  await button(page, 'To the top').click();
  await expect(stop(page, 'Draft')).toContainText('4 patches');
  await expect(valuesOf(page, 'Lines', 'Line 2')).toHaveText(['0', '2¾', '8', '2¾']);
  await expect(valuesOf(page, 'Lines', 'Line 3')).toHaveText(['0', '1½', '8', '1½']);

  await page
    .getByRole('list', { name: 'Patches' })
    .getByRole('button', { name: /round 4, 4¾ in/ })
    .click();
  await unfold(page, 'Divide it');
  await type(field(page, 'Equal bands'), '4');
  await field(page, 'Along').selectOption({ label: 'the left, 1½ in' });
  await button(page, 'Divide into 4 bands').click();
  await expect(stop(page, 'Draft')).toContainText('7 patches');
  await expect(verdict(page)).toHaveText(/^Sews on/);
  await expect(valuesOf(page, 'Lines', 'Line 6')).toHaveText(['6', '5½', '6', '4']);
  await table(page, 'Lines').scrollIntoViewIfNeeded();
  await guidePicture(page, 'guide-typed');

  await page
    .getByRole('list', { name: 'Patches' })
    .getByRole('button', { name: /round 7, 4¾ in/ })
    .click();
  await unfold(page, 'Merge it');
  const neighbours = inHand(page)
    .getByRole('group', { name: 'Merge it' })
    .getByRole('button', { name: /^With/ });
  await expect(neighbours).toHaveCount(2);
  await neighbours.last().click();
  await expect(stop(page, 'Draft')).toContainText('6 patches');
});

test('lines are trimmed, cut, joined, extended and mirrored by buttons, and undo leads back to the very beginning', async ({
  page,
}) => {
  await open(page);
  await drag(page, [0, 2], [6, 2]);
  await drag(page, [2, 0], [2, 6]);
  await drag(page, [4, 0], [4, 6]);
  await expect(stop(page, 'Draft')).toContainText('6 patches');
  const first = await savedDrawing(page);
  const steps = [
    'Trim a line',
    'Trim a line',
    'Extend a line',
    'Cut a line',
    'Join two lines',
    'Mirrored copy',
  ];

  await takeUp(page, 'Adjust');
  await press(page, [1, 2]);
  await unfold(page, 'Trim, cut, extend');
  await button(page, 'Trim away from 0, 2 in to 2, 2 in').click();
  await button(page, 'Trim away from 4, 2 in to 6, 2 in').click();
  await expect(inHand(page)).toContainText('1 stretch');
  await button(page, /^Extend at .* 4, 2 in/).click();
  await button(page, 'Cut at 4, 2 in').click();
  await press(page, [3, 2]);
  await button(page, /^Join with line/).click();
  await expect(inHand(page).getByRole('list', { name: 'Along the line' })).toContainText('6, 2 in');
  await unfold(page, 'Mirror, turn, move');
  await inHand(page).getByRole('radio', { name: 'A copy of it' }).check();
  await button(page, 'Mirror top to bottom').click();
  await expect(stop(page, 'Draft')).toContainText('7 patches');

  for (const step of [...steps].reverse()) {
    await expect(undo(page)).toHaveAccessibleName(new RegExp(step));
    await undo(page).click();
  }
  expect(await savedDrawing(page)).toEqual(first);
});

test('several things are mirrored, turned, moved, copied, joined and deleted together', async ({ page }) => {
  await open(page);
  await drag(page, [3, 0], [3, 6]);
  await drag(page, [0, 1], [3, 1]);
  await drag(page, [3, 1], [6, 1]);
  await takeUp(page, 'Adjust');
  await press(page, [1, 1]);
  await page.keyboard.down('Shift');
  await press(page, [5, 1]);
  await page.keyboard.up('Shift');
  await expect(inHand(page).getByRole('heading', { name: '2 lines' })).toBeVisible();
  await type(field(page, 'Down'), '1/2');
  await type(field(page, 'To the right'), '0');
  await button(page, 'Move by these lengths').click();
  await openList(page);
  await expect(valuesOf(page, 'Lines', 'Line 2')).toHaveText(['0', '1½', '3', '1½']);

  await inHand(page).getByRole('radio', { name: 'A copy of the lines' }).check();
  await button(page, 'Turn to the right').click();
  await expect(valuesOf(page, 'Lines', 'Line 4')).toHaveText(['4½', '0', '4½', '3']);
  await type(field(page, 'Axis at an angle'), '0');
  await button(page, 'Mirror across it').click();
  await expect(stop(page, 'Draft')).toContainText('9 patches');
  await button(page, 'Join them').click();
  await expect(inHand(page).getByRole('heading', { name: 'Line 2' })).toBeVisible();
  await expect(valuesOf(page, 'Lines', 'Line 2')).toHaveText(['0', '1½', '6', '1½']);

  await press(page, [3, 0.7]);
  await page.keyboard.down('Shift');
  await press(page, [0.6, 1.5]);
  await page.keyboard.up('Shift');
  await button(page, 'Delete them').click();
  await expect(inHand(page).getByRole('heading', { name: 'Adjust' })).toBeVisible();
});

test('a point gets lines at an angle and square to others, and slides along its line', async ({ page }) => {
  await open(page);
  await drag(page, [0, 2], [6, 2]);
  await drag(page, [2, 2], [2, 6]);
  await takeUp(page, 'Adjust');
  await press(page, [2, 2]);
  await unfold(page, 'Draw a line from it');
  await type(field(page, 'Angle'), '45°');
  await button(page, 'Draw at this angle').click();
  await expect(stop(page, 'Draft')).toContainText('4 patches');
  await field(page, 'Square to').selectOption({ label: 'Edge 2, 6 in' });
  await expect(field(page, 'Square to').locator('option')).not.toHaveCount(0);
  await field(page, 'Square to').selectOption({ label: 'Edge 1, 6 in' });
  await button(page, 'Draw square to it').click();
  await expect(stop(page, 'Draft')).toContainText('5 patches');
  await unfold(page, 'Slide it along a line');
  await field(page, 'Along').selectOption({ label: 'Line 1, 6 in' });
  await type(field(page, 'By'), '3/8');
  await button(page, 'To the right').click();
  await expect(field(page, 'From the left')).toHaveValue('2⅜ in');
  await expect(field(page, 'From the top')).toHaveValue('2 in');
});

test('the table of lines is walked and changed by keys alone', async ({ page }) => {
  await open(page);
  await drag(page, [0, 2], [6, 2]);
  await drag(page, [2, 0], [2, 2]);
  await openList(page);
  const lines = table(page, 'Lines');
  await lines.getByRole('button', { name: 'Line 1 6 in' }).focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  // Simply typing begins.
  await page.keyboard.type('3 1/8');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.type('4');
  await page.keyboard.press('Enter');
  await expect(valuesOf(page, 'Lines', 'Line 1')).toHaveText(['0', '3⅛', '6', '4']);
  await expect(lines.getByRole('button', { name: 'Line 1, second end, from the top: 4' })).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await page.keyboard.type('far');
  await page.keyboard.press('Enter');
  await expect(lines.getByRole('alert')).toContainText('“far” is not a length');
  await page.keyboard.press('Escape');
  await expect(lines.getByRole('alert')).toBeHidden();

  // A corner that would make the outline cross itself: the table says so, and the corner stays.
  const points = table(page, 'Points');
  await points.getByRole('button', { name: 'Corner 1, from the left: 0' }).click();
  await page.keyboard.type('7');
  await page.keyboard.press('Enter');
  await expect(points.getByRole('alert')).toContainText(/crosses itself/);
  await page.keyboard.press('Escape');
  await expect(valuesOf(page, 'Points', 'Corner 1')).toHaveText(['0', '0']);
});

test('rubbish in any field is answered by a sentence beside it, and nothing is lost', async ({ page }) => {
  await open(page);
  await drag(page, [0, 2], [6, 2]);
  await drag(page, [2, 0], [2, 6]);
  const first = await savedDrawing(page);
  await openList(page);
  await takeUp(page, 'Adjust');
  const things: readonly (readonly [Place, readonly string[], number])[] = [
    [[4, 2], ['Trim, cut, extend', 'Parallel copies', 'Mirror, turn, move'], 8],
    [[2, 0], ['Draw a line from it', 'Slide it along a line'], 4],
    [[4, 4.2], ['Divide it', 'Merge it'], 2],
  ];
  for (const [place, parts, count] of things) {
    await press(page, place);
    for (const part of parts) await unfold(page, part);
    expect(await barriers(page), parts.join()).toEqual([]);
    const fields = inHand(page).getByRole('textbox').and(page.locator(':not([maxlength])'));
    await expect(fields).toHaveCount(count);
    for (const one of await fields.all()) {
      const value = await one.inputValue();
      await type(one, 'rubbish');
      await expect(one).toHaveAttribute('aria-invalid', 'true');
      await expect(inHand(page).getByRole('alert')).toHaveText(/^[“A-Z].*\.$/);
      await one.press('Escape');
      await expect(one).toHaveValue(value);
    }
  }
  // What stands beside a field that holds rubbish does not act on the value that was there before.
  await press(page, [4, 2]);
  await type(field(page, 'Distance'), 'rubbish');
  await button(page, 'To the bottom').click();
  await expect(field(page, 'Distance')).toBeFocused();
  expect(await savedDrawing(page)).toEqual(first);
});

test('octagon, kite and wedge of a circle are outlines by their own sizes', async ({ page }) => {
  await open(page);
  const choose = async (shape: string, sizes: readonly (readonly [string, string])[], size: RegExp) => {
    await page.getByRole('button', { name: 'Another outline…' }).click();
    const dialog = page.getByRole('dialog', { name: 'Outline of the block' });
    await dialog.getByRole('radio', { name: shape }).check();
    for (const [label, typed] of sizes) await type(dialog.getByLabel(label, { exact: true }), typed);
    await dialog.getByRole('button', { name: 'Use this outline' }).click();
    await expect(page.getByRole('button', { name: size })).toBeVisible();
  };
  await choose('Octagon', [['Width', '15.24cm']], /^Block: Block 1 6 × 6 in/);
  await choose(
    'Kite',
    [
      ['Width', '4'],
      ['Height', '7 1/2'],
      ['Shoulder', '2'],
    ],
    /^Block: Block 1 4 × 7½ in/,
  );
  await choose(
    'Wedge of a circle',
    [
      ['Radius', '10'],
      ['Wedges in the circle', '6'],
      ['Inner radius', '0'],
    ],
    /^Block: Block 1 10 × 8\.66/,
  );
  await page.getByRole('button', { name: 'Another outline…' }).click();
  const dialog = page.getByRole('dialog', { name: 'Outline of the block' });
  await dialog.getByRole('radio', { name: 'Kite' }).check();
  await type(dialog.getByLabel('Shoulder'), '20');
  await expect(dialog.getByText('The kite is widest at its tip or below')).toBeVisible();
  await expect(dialog.getByRole('button', { name: 'Use this outline' })).toBeDisabled();
});
