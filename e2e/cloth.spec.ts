import type { Page } from '@playwright/test';
import { drop, goTo, open, untilKept } from './support/app.ts';
import { barriers } from './support/barriers.ts';
import { drag, type Place } from './support/draw.ts';
import { png } from './support/pictures.ts';
import { expect, test } from './support/test.ts';

const canvas = (page: Page) => page.getByRole('application', { name: 'The block in its fabrics' });

const patches = (page: Page) => page.getByRole('list', { name: 'Patches' }).getByRole('button');

/** The patches' fabrics, in the order of the list. */
const worn = (page: Page): Promise<string[]> => patches(page).allInnerTexts();

async function takeFabric(page: Page, name: string): Promise<void> {
  await page.getByRole('group', { name: 'Fabric at hand' }).getByRole('radio', { name }).check();
}

/** Where a place of the block is on the page. */
async function onPage(page: Page, [x, y]: Place): Promise<{ x: number; y: number }> {
  const [scale, left, top] = (await canvas(page).getAttribute('data-view'))!.split(' ').map(Number);
  const box = (await canvas(page).boundingBox())!;
  return { x: box.x + left! + x * scale!, y: box.y + top! + y * scale! };
}

/** Red, green and blue of the block's fabrics at a place. */
async function colourAt(page: Page, place: Place): Promise<readonly number[]> {
  const at = await onPage(page, place);
  return canvas(page)
    .locator('canvas')
    .first()
    .evaluate((element, { x, y }) => {
      const shown = element as HTMLCanvasElement;
      const box = shown.getBoundingClientRect();
      const density = shown.width / box.width;
      const context = shown.getContext('2d')!;
      return [
        ...context.getImageData(
          Math.round((x - box.left) * density),
          Math.round((y - box.top) * density),
          1,
          1,
        ).data,
      ].slice(0, 3);
    }, at);
}

/** Half blue (left), half sand. */
const STRIPES = png(40, 40, (x) => (x < 20 ? [0x20, 0x40, 0xa0] : [0xe0, 0xd0, 0xb0]));

/** Eight triangles round the middle of a 4 in square. */
const PINWHEEL = `<svg xmlns="http://www.w3.org/2000/svg" width="4in" height="4in" viewBox="0 0 4 4">
  <rect width="4" height="4"/><path d="M2 0V4M0 2H4M0 0L4 4M4 0L0 4"/></svg>`;

test('patches are painted by a drag, in one step, and by keys', async ({ page }) => {
  await open(page, '?demo');
  await goTo(page, 'Cloth');
  const before = await worn(page);
  expect(before.some((text) => text.includes('Brick'))).toBe(true);
  await takeFabric(page, 'Brick');
  // The sky on either side of the mast.
  const [from, to] = [await onPage(page, [1, 1]), await onPage(page, [7, 1])];
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 12 });
  await page.mouse.up();
  const count = (texts: readonly string[]) => texts.filter((text) => text.includes('Brick')).length;
  await expect.poll(async () => count(await worn(page))).toBe(count(before) + 2);
  // Brick, as the demo has it: #b5563e.
  await expect.poll(() => colourAt(page, [1, 1])).toEqual([0xb5, 0x56, 0x3e]);
  await page.keyboard.press('Control+z');
  await expect.poll(() => worn(page)).toEqual(before);

  await page.getByRole('group', { name: 'Fabric at hand' }).getByRole('radio', { name: 'Brick' }).focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await patches(page).first().focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(patches(page).nth(1)).toContainText('Slate');
  await expect(patches(page).nth(1)).toBeFocused();
});

test('one press paints all patches that are alike, as far as the brush reaches', async ({ page }) => {
  await open(page);
  await drop(page, [{ name: 'pinwheel.svg', text: PINWHEEL }]);
  await goTo(page, 'Cloth');
  await expect(patches(page)).toHaveCount(8);
  const dark = async (fabric: string) => (await worn(page)).filter((text) => text.includes(fabric)).length;
  for (const [reach, fabric, painted] of [
    [/^Turned/, 'Brick', 4],
    [/^Mirrored/, 'Slate', 8],
    [/^One/, 'Sailcloth', 1],
    [/^Same shape/, 'Sea mist', 8],
  ] as const) {
    await takeFabric(page, fabric);
    await page.getByRole('radio', { name: reach }).check();
    const { x, y } = await onPage(page, [1.5, 0.5]);
    await page.mouse.click(x, y);
    await expect.poll(() => dark(fabric), `${reach}`).toBe(painted);
  }
});

test('two colourways are compared, and a reload keeps them', async ({ page }) => {
  await open(page, '?demo');
  await goTo(page, 'Cloth');
  const first = await worn(page);
  await page.getByRole('button', { name: 'Another colourway' }).click();
  await page.getByRole('button', { name: 'Rename Colourway 2' }).click();
  await page.getByRole('dialog').getByRole('textbox', { name: 'Name' }).fill('By night');
  await page.keyboard.press('Enter');
  const ways = page.getByRole('group', { name: 'Colourway in hand' });
  await expect(ways.getByRole('radio', { name: 'By night' })).toBeChecked();
  const pictures = () => ways.locator('svg').evaluateAll((all) => all.map((one) => one.innerHTML));
  expect(new Set(await pictures()).size).toBe(1);

  await page.getByLabel('Swap', { exact: true }).and(page.locator('select')).selectOption('Sea mist');
  await page.getByLabel('with', { exact: true }).selectOption('Slate');
  await page.getByRole('button', { name: 'Swap', exact: true }).click();
  const swapped = first.map((text) =>
    text.includes('Sea mist') ? text.replace('Sea mist', 'Slate') : text.replace('Slate', 'Sea mist'),
  );
  expect(swapped).not.toEqual(first);
  expect(await worn(page)).toEqual(swapped);
  expect(new Set(await pictures()).size).toBe(2);
  await ways.getByRole('radio', { name: 'Colourway 1' }).check();
  expect(await worn(page)).toEqual(first);
  expect(await barriers(page), 'colourways').toEqual([]);

  await page.goto('./');
  await goTo(page, 'Cloth');
  await ways.getByRole('radio', { name: 'By night' }).check();
  await expect.poll(() => worn(page)).toEqual(swapped);
  // The one in hand is in hand again: what is cut is for that one.
  await untilKept(page);
  await page.reload();
  await expect(ways.getByRole('radio', { name: 'By night' })).toBeChecked();
  expect(await worn(page)).toEqual(swapped);
  await page.getByRole('button', { name: 'Shuffle the fabrics' }).click();
  expect(await worn(page)).not.toEqual(swapped);
  await page.keyboard.press('Control+z');
  expect(await worn(page)).toEqual(swapped);

  await page.getByRole('button', { name: 'Remove By night' }).click();
  await expect(page.getByRole('button', { name: 'Another colourway' })).toBeVisible();
  expect(await worn(page)).toEqual(first);
  await page.getByRole('button', { name: 'Undo', exact: true }).last().click();
  await expect(ways.getByRole('radio')).toHaveCount(2);
});

test('neighbours that look alike are named, and greys show why', async ({ page }) => {
  await open(page, '?demo');
  await goTo(page, 'Cloth');
  await page.getByRole('button', { name: 'Palettes…' }).click();
  await page.getByRole('radio', { name: 'Lamplight' }).check();
  expect(await barriers(page), 'palettes').toEqual([]);
  await page.getByRole('button', { name: 'Add as new fabrics' }).click();
  // Amber is as light as the sky's sea mist.
  await takeFabric(page, 'Amber');
  const { x, y } = await onPage(page, [1, 1]);
  await page.mouse.click(x, y);
  const pair = page.getByRole('list', { name: 'Fabrics alike in lightness' }).getByRole('note');
  await expect(pair).toContainText('Amber beside Sea mist');
  await page.getByRole('checkbox', { name: 'Show the fabrics in greys' }).check();
  await expect
    .poll(async () => new Set(await colourAt(page, [1, 1])).size, 'red, green and blue are one')
    .toBe(1);
  expect(await barriers(page), 'light and dark').toEqual([]);
});

test('a fabric’s photo fills its patches at its scale, and a palette is drawn from a picture', async ({
  page,
}) => {
  await open(page, '?demo');
  await goTo(page, 'Cloth');
  const file = { name: 'stripes.png', mimeType: 'image/png', buffer: STRIPES };
  await page.getByRole('button', { name: 'Change the fabrics…' }).click();
  await page.getByRole('button', { name: 'More about Sea mist' }).click();
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'A photo of it…' }).click(),
  ]);
  await chooser.setFiles(file);
  const across = page.getByRole('textbox', { name: 'The photo shows, across' });
  await across.fill('2');
  await across.press('Enter');
  await page.getByRole('combobox', { name: 'How its pieces lie' }).selectOption({ index: 2 });
  expect(await barriers(page), 'fabric, all of it').toEqual([]);
  await page.getByRole('button', { name: 'Done', exact: true }).click();
  // 2 in across: an inch of each colour, from the block's left edge.
  await expect.poll(() => colourAt(page, [0.5, 0.5])).toEqual([0x20, 0x40, 0xa0]);
  await expect.poll(() => colourAt(page, [1.5, 0.5])).toEqual([0xe0, 0xd0, 0xb0]);
  await expect.poll(() => colourAt(page, [2.5, 0.5])).toEqual([0x20, 0x40, 0xa0]);

  await page.getByRole('button', { name: 'Palettes…' }).click();
  const [second] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Draw one from a picture…' }).click(),
  ]);
  await second.setFiles(file);
  await expect(page.getByRole('radio', { name: 'stripes' })).toBeChecked();
  await page.getByRole('button', { name: 'Add as new fabrics' }).click();
  await expect(page.getByRole('group', { name: 'Fabric at hand' }).getByRole('radio')).toHaveCount(9);
});

test('light and dark are not judged before two fabrics are chosen', async ({ page }) => {
  await open(page);
  await drag(page, [0, 3], [6, 3]);
  await goTo(page, 'Cloth');
  const part = page.getByRole('group', { name: 'Light and dark' });
  await expect(part).toContainText('Choose fabrics first');
  await expect(part).not.toContainText('told apart');
  await takeFabric(page, 'Sailcloth');
  await patches(page).nth(0).press('Enter');
  await expect(part).toContainText('Choose fabrics first');
  await takeFabric(page, 'Slate');
  await patches(page).nth(1).press('Enter');
  await expect(part).toContainText('All fabrics that lie side by side are told apart');
  expect(await barriers(page)).toEqual([]);
});
