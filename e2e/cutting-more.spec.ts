import type { Page } from '@playwright/test';
import { barriers } from './support/barriers.ts';
import { goToCutting, openCutting } from './support/cutting.ts';
import { expect, test } from './support/test.ts';

/** What is looked at before cutting: a piece with a size of one's own, dark under light, layers, other sizes. */

const canvas = (page: Page) => page.getByTestId('cloth');

/** The share of the canvas in the colour of what is wrong, as it is by day. */
const wrongPixels = (page: Page): Promise<number> =>
  canvas(page).evaluate((holder) => {
    let count = 0;
    for (const layer of holder.querySelectorAll('canvas')) {
      const { data } = layer.getContext('2d')!.getImageData(0, 0, layer.width, layer.height);
      for (let i = 0; i < data.length; i += 4)
        if (data[i] === 0xae && data[i + 1] === 0x2a && data[i + 2] === 0x1e && data[i + 3] === 0xff) count++;
    }
    return count;
  });

test('a size that is too small is said so, and what stays bare is drawn', async ({ page }) => {
  await openCutting(page);
  await page.getByRole('button', { name: 'A1', exact: true }).click();
  const piece = page.getByRole('region', { name: 'The piece for A1' });
  await expect(piece.getByRole('status')).toContainText(/It still covers .* % of it is trimmed off/);
  await expect(piece).not.toContainText('as it is laid down');
  expect(await wrongPixels(page)).toBe(0);

  const height = piece.getByRole('textbox', { name: 'Height' });
  await height.fill('1 1/2');
  await height.press('Enter');
  await expect(piece.getByRole('status')).toContainText('Too small: 5 × 1½ in');
  // Painted in the next frame.
  await expect.poll(() => wrongPixels(page)).toBeGreaterThan(500);

  await piece.getByRole('button', { name: 'The size that was worked out' }).click();
  await expect(piece.getByRole('status')).toContainText('It still covers');
  await expect.poll(() => wrongPixels(page)).toBe(0);

  await page.getByRole('button', { name: 'A2', exact: true }).click();
  await expect(page.getByRole('region', { name: 'The piece for A2' })).toContainText(
    'Dotted: the piece as it is laid down, right side down',
  );
});

test('dark under light is listed and marked, and an order that avoids some is taken in one step', async ({
  page,
}) => {
  await openCutting(page);
  const part = page.getByRole('group', { name: 'Dark under light' });
  const places = part.getByRole('list', { name: 'Where dark shows through' }).getByRole('listitem');
  await expect(places).toHaveText([
    'A3 (Sea mist) over A2 (Harbour blue)',
    'B2 (Lamp yellow) over B1 (Brick)',
    'B3 (Sea mist) over B1 (Brick)',
    'B4 (Sea mist) over B1 (Brick)',
  ]);
  const before = await canvas(page).screenshot();
  await places.first().locator('p').focus();
  await expect.poll(async () => before.equals(await canvas(page).screenshot())).toBe(false);

  await expect(part).toContainText('Section B can be sewn so that only 2 of 3 are left.');
  await part.getByRole('button', { name: 'Sew in that order' }).click();
  await expect(places).toHaveCount(3);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(places).toHaveCount(4);
});

test('layers are counted for the pressing that is chosen, and shown on the block', async ({ page }) => {
  await openCutting(page);
  const part = page.getByRole('group', { name: 'Layers and pressing' });
  const before = await canvas(page).screenshot();
  await part.getByRole('button', { name: 'Count the layers' }).click();
  await expect(part.getByRole('status')).toHaveText(
    'At most 7 layers of fabric, at 4 places; paper is not counted.',
  );
  await expect(part.getByRole('list', { name: 'The thickest places' })).toContainText('7 layers where A1');
  await expect.poll(async () => before.equals(await canvas(page).screenshot())).toBe(false);
  await expect(part).toContainText('unplug it after use');

  // Pressed open, each side of the join has only its own allowance under it.
  await part.getByRole('radio', { name: 'Open' }).first().press('Space');
  await expect(part.getByRole('status')).not.toHaveText(/^At most 7 layers of fabric, at 4 places/);
  await expect(part.getByRole('status')).toHaveText(/^At most \d layers/);
  await part.getByRole('radio', { name: 'To one side' }).press('Space');

  // A single join is the pattern's: undone, done again, and there after a reload.
  await part.getByText('The join', { exact: true }).click();
  const under = part.getByRole('group', { name: 'A to B, pressed' });
  await under.getByRole('radio', { name: 'Under B' }).press('Space');
  await page.keyboard.press('Control+z');
  await expect(under.getByRole('radio', { name: 'Under A' })).toBeChecked();
  await page.keyboard.press('Control+Shift+z');
  await expect(under.getByRole('radio', { name: 'Under B' })).toBeChecked();
  await page.reload();
  await goToCutting(page);
  await part.getByText('The join', { exact: true }).click();
  await expect(under.getByRole('radio', { name: 'Under B' })).toBeChecked();
  await part.getByRole('button', { name: 'All as usual' }).click();
  await expect(under.getByRole('radio', { name: 'Under A' })).toBeChecked();
});

test('what other sizes need is told in words and as a table', async ({ page }) => {
  await openCutting(page, 'Lantern');
  const part = page.getByRole('group', { name: 'Other sizes of the block' });
  await part.getByRole('button', { name: 'Compare with other sizes' }).click();
  await expect(part).toContainText('4¾ in needs ⅛ yd more than 4½ in.');
  await part.getByText('As a table').click();
  await expect(part.getByRole('row', { name: '6 in ⅞ yd, as it is now' })).toBeVisible();
  await expect(part.getByRole('row')).toHaveCount(18);
});

test('in centimetres sizes are rounded up to what a metric ruler has, and a choice for it leaves the other alone', async ({
  page,
}) => {
  await openCutting(page, 'Lantern');
  const step = page.getByRole('textbox', { name: 'Round sizes up to' });
  await expect(step).toHaveValue('¼ in');
  const sizes = page.getByRole('cell', { name: / × .* (cm|in)/ });
  await expect(sizes.filter({ hasText: /^[^c]* in/ }).first()).toBeVisible();
  await page.keyboard.press('u');
  await expect(step).toHaveValue('0.5 cm');
  await expect(sizes.filter({ hasNotText: /^\d+(\.5)? × \d+(\.5)? cm/ })).toHaveCount(0);
  await step.fill('1cm');
  await step.press('Enter');
  await expect(sizes.filter({ hasNotText: /^\d+ × \d+ cm/ })).toHaveCount(0);
  await page.getByRole('radio', { name: 'Inches' }).check();
  await expect(step).toHaveValue('¼ in');
});

for (const colorScheme of ['light', 'dark'] as const)
  test.describe(`${colorScheme} colours`, () => {
    test.use({ colorScheme });

    test('all of it unfolded has no serious barrier', async ({ page }) => {
      await openCutting(page);
      await page.getByRole('button', { name: 'A1', exact: true }).click();
      await page.getByRole('button', { name: 'Count the layers' }).click();
      await page.getByRole('button', { name: 'Compare with other sizes' }).click();
      await page.getByText('As a table').click();
      await page.getByText('The join', { exact: true }).click();
      await expect(page.getByRole('group', { name: 'A to B, pressed' })).toBeVisible();
      expect(await barriers(page)).toEqual([]);
    });
  });
