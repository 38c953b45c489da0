import type { Page } from '@playwright/test';
import { drop, open, openBlock, verdict } from './support/app.ts';
import { drag, onPage, press, tabToDrawing, takeUp, viewOf } from './support/draw.ts';
import { listen, toHear } from './support/spoken.ts';
import { expect, test } from './support/test.ts';

const viewButton = (page: Page) => page.getByRole('button', { name: /^View: / });

async function choose(page: Page, name: string): Promise<void> {
  await viewButton(page).click();
  await page.getByRole('radio', { name, exact: name.includes('×') }).check();
  await page.keyboard.press('Escape');
}

/** What the pattern file would hold: the ends of the pattern's first line, to a millionth of an inch. */
async function savedSplit(page: Page): Promise<readonly (readonly [number, number])[]> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')]);
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
  const { points, splits } = JSON.parse(Buffer.concat(chunks).toString()).blocks[0].drawing;
  const ends = [splits[0].from, splits[0].to].map((id: string) => {
    const { x, y } = points[id];
    return [Math.round(x * 1e6) / 1e6, Math.round(y * 1e6) / 1e6] as const;
  });
  return ends.sort((a, b) => a[1] - b[1]);
}

/** The colour of the still layer at a place of the block (or beside it), as `#rrggbb`. */
async function colourAt(page: Page, place: readonly [number, number]): Promise<string> {
  const at = await onPage(page, place);
  return page
    .getByTestId('draft-canvas')
    .locator('canvas')
    .first()
    .evaluate((canvas, { x, y }) => {
      const element = canvas as HTMLCanvasElement;
      const box = element.getBoundingClientRect();
      const density = element.width / box.width;
      const [r, g, b] = element
        .getContext('2d')!
        .getImageData(Math.round((x - box.left) * density), Math.round((y - box.top) * density), 1, 1).data;
      return `#${[r, g, b].map((part) => part!.toString(16).padStart(2, '0')).join('')}`;
    }, at);
}

/** How many of the still layer's pixels in a box of the block's inches are as dark as a line. */
async function darkIn(page: Page, from: readonly [number, number], to: readonly [number, number]) {
  const [a, b] = [await onPage(page, from), await onPage(page, to)];
  return page
    .getByTestId('draft-canvas')
    .locator('canvas')
    .first()
    .evaluate(
      (canvas, { a, b }) => {
        const element = canvas as HTMLCanvasElement;
        const box = element.getBoundingClientRect();
        const density = element.width / box.width;
        const [x, y] = [(Math.min(a.x, b.x) - box.left) * density, (Math.min(a.y, b.y) - box.top) * density];
        const { data } = element
          .getContext('2d')!
          .getImageData(x, y, Math.abs(b.x - a.x) * density, Math.abs(b.y - a.y) * density);
        let dark = 0;
        for (let i = 0; i < data.length; i += 4) if (data[i]! < 110 && data[i + 3]! > 200) dark += 1;
        return dark;
      },
      { a, b },
    );
}

test.describe('views of the drawing', () => {
  test('on the printed side left and right are exchanged, and what is drawn there goes where it is seen', async ({
    page,
  }) => {
    await open(page);
    await page.keyboard.press('v');
    await expect(viewButton(page)).toHaveText('View: Printed side');
    const { flip } = await viewOf(page);
    expect(flip).toBe(-1);
    const [left, right] = [await onPage(page, [1, 3]), await onPage(page, [5, 3])];
    expect(left.x).toBeGreaterThan(right.x);
    await drag(page, [1, 0], [1, 6]);
    await expect(verdict(page)).toHaveText('Sews on one foundation');
    expect(await savedSplit(page)).toEqual([
      [1, 0],
      [1, 6],
    ]);
  });

  test('there, arrows move the crosshair where they point on the screen', async ({ page }) => {
    await listen(page);
    await open(page);
    await page.keyboard.press('v');
    await tabToDrawing(page);
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowLeft');
    // To the left on the screen is to the right on the front.
    await toHear(page, /^3½, 3 in/);
  });

  test('the view is chosen in words, kept over a reload, and goes round by a key', async ({ page }) => {
    await open(page, '?demo');
    await choose(page, 'Lines only');
    await expect(viewButton(page)).toHaveText('View: Lines only');
    await page.reload();
    await expect(verdict(page)).toBeVisible();
    await expect(viewButton(page)).toHaveText('View: Lines only');
    await page.keyboard.press('v');
    await expect(viewButton(page)).toHaveText('View: Fabrics');
    await page.keyboard.press('v');
    await expect(viewButton(page)).toHaveText('View: Front');
  });
});

test.describe('fabrics', () => {
  test('a patch is cut from a fabric, keeps it while lines move, and undo takes it off', async ({ page }) => {
    await open(page);
    await choose(page, 'Fabrics');
    await drag(page, [3, 0], [3, 6]);
    await expect(verdict(page)).toHaveText('Sews on one foundation');
    const bare = await colourAt(page, [1, 1.1]);
    await takeUp(page, 'Adjust');
    await press(page, [1.2, 1.2]);
    await page.getByRole('radio', { name: 'Harbour blue' }).check();
    await expect.poll(() => colourAt(page, [1.2, 1.3])).toBe('#28547d');
    await drag(page, [3, 0], [4, 0]);
    await expect(verdict(page)).toHaveText('Sews on one foundation');
    await expect.poll(() => colourAt(page, [3.2, 0.7])).toBe('#28547d');
    expect(await colourAt(page, [5.2, 1.3])).not.toBe('#28547d');
    await page.reload();
    await expect(verdict(page)).toBeVisible();
    await expect.poll(() => colourAt(page, [3.2, 0.7])).toBe('#28547d');
    await page.keyboard.press('Control+z');
    await page.getByRole('button', { name: 'Undo: Cut from Harbour blue' }).click();
    await expect.poll(() => colourAt(page, [1, 1.1])).toBe(bare);
  });

  test('several patches are chosen with Shift and cut from one fabric in one step', async ({ page }) => {
    await open(page, '?demo');
    await choose(page, 'Fabrics');
    await takeUp(page, 'Adjust');
    await press(page, [4, 6.1]);
    await page.keyboard.down('Shift');
    await press(page, [1.1, 1.1]);
    await press(page, [7.1, 1.1]);
    await page.keyboard.up('Shift');
    const inHand = page.getByRole('region', { name: 'In hand' });
    await expect(inHand.getByRole('heading', { name: '3 patches' })).toBeVisible();
    await expect(inHand).toContainText('They are cut from different fabrics.');
    await inHand.getByRole('radio', { name: 'Lamp yellow' }).check();
    for (const place of [
      [4.1, 6.1],
      [1.1, 1.3],
      [7.1, 1.3],
    ] as const)
      await expect.poll(() => colourAt(page, place)).toBe('#e9b949');
    await page.keyboard.press('Control+z');
    await expect.poll(() => colourAt(page, [4.1, 6.1])).toBe('#b5563e');
    await expect.poll(() => colourAt(page, [1.1, 1.3])).not.toBe('#e9b949');
  });

  test('of the pattern are named, coloured, added and removed', async ({ page }) => {
    await open(page, '?demo');
    await choose(page, 'Fabrics');
    await expect.poll(() => colourAt(page, [4.1, 6.1])).toBe('#b5563e');
    await viewButton(page).click();
    await page.getByRole('button', { name: 'Fabrics of the pattern…' }).click();
    const dialog = page.getByRole('dialog', { name: 'Fabrics of the pattern' });
    await dialog.getByLabel('Colour of Brick').fill('#7a2430');
    await dialog.getByLabel('Name of Brick').fill('');
    await expect(dialog.getByRole('alert')).toContainText('A fabric needs a name');
    await dialog.getByLabel('Name of Brick').fill('Old brick');
    await page.keyboard.press('Enter');
    await dialog.getByRole('button', { name: 'Add', exact: true }).click();
    await expect(dialog.getByRole('alert')).toContainText('A fabric needs a name');
    await dialog.getByLabel('New fabric', { exact: true }).fill('Rope');
    await page.keyboard.press('Enter');
    await expect(dialog.getByRole('listitem')).toHaveCount(7);
    await dialog.getByRole('button', { name: 'Remove Slate' }).click();
    await dialog.getByRole('button', { name: 'Done' }).click();
    await expect.poll(() => colourAt(page, [4.1, 6.1])).toBe('#7a2430');
    await expect(page.getByText('Removed the fabric “Slate”.')).toBeVisible();
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect.poll(() => colourAt(page, [4.1, 7.9])).toBe('#2c3138');
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
    await expect.poll(() => colourAt(page, [4.1, 6.1])).toBe('#b5563e');
  });
});

test.describe('copies in a grid', () => {
  test('show how edges meet, and follow a line while it is dragged', async ({ page }) => {
    await open(page);
    await drag(page, [3, 0], [3, 6]);
    await expect(verdict(page)).toHaveText('Sews on one foundation');
    await page.keyboard.press('m');
    await expect(viewButton(page)).toHaveText('View: Front, 3 × 3');
    // In the copy to the left, where its line would come.
    const stretch = [
      [-2.3, 1],
      [-1.7, 2],
    ] as const;
    await expect.poll(() => darkIn(page, ...stretch)).toBe(0);
    await takeUp(page, 'Adjust');
    const [end, there] = [await onPage(page, [3, 0]), await onPage(page, [4, 0])];
    await page.mouse.move(end.x, end.y);
    await page.mouse.down();
    await page.mouse.move((end.x + there.x) / 2, end.y, { steps: 3 });
    await page.mouse.move(there.x, there.y, { steps: 3 });
    // The button is still down.
    await expect.poll(() => darkIn(page, [-2.4, 0.5], [-2, 2])).toBeGreaterThan(10);
    await page.mouse.up();
    await expect(page.getByRole('button', { name: /^Undo: / })).toHaveAccessibleName(/Move/);
    await page.keyboard.press('m');
    await expect(viewButton(page)).toHaveText('View: Front');
  });

  test('lie turned and mirrored', async ({ page }) => {
    await open(page, '?demo');
    await choose(page, 'Fabrics');
    await choose(page, '2 × 2');
    const slate = '#2c3138';
    // The deep sea lies along the lower edge of the boat.
    await expect.poll(() => colourAt(page, [12, 7.9])).toBe(slate);
    await expect.poll(() => colourAt(page, [4, 15.9])).toBe(slate);
    await choose(page, 'Mirrored across and down');
    await expect.poll(() => colourAt(page, [4, 8.3])).toBe(slate);
    await expect.poll(() => colourAt(page, [12, 7.9])).toBe(slate);
    await choose(page, 'Every other a quarter turn');
    await expect.poll(() => colourAt(page, [8.3, 4])).toBe(slate);
    await choose(page, 'Turned round in fours');
    await expect.poll(() => colourAt(page, [12, 8.3])).toBe(slate);
  });

  test('of a block that is no square, or no rectangle, are explained', async ({ page }) => {
    await open(page, '?demo');
    await openBlock(page, 'Lighthouse');
    await viewButton(page).click();
    await page.getByRole('radio', { name: '3 × 3' }).check();
    await page.getByRole('radio', { name: 'Turned round in fours' }).check();
    await expect(page.getByText('copies have half turns instead of quarter turns')).toBeVisible();
    await page.keyboard.press('Escape');
    await drop(page, [
      {
        name: 'Kite.svg',
        text: '<svg xmlns="http://www.w3.org/2000/svg" width="6in" height="6in" viewBox="0 0 6 6"><path d="M3 0L6 2 3 6 0 2Z"/></svg>',
      },
    ]);
    await expect(page.getByRole('button', { name: /^Block: Kite/ })).toBeVisible();
    await viewButton(page).click();
    await expect(page.getByText('do not meet along their edges')).toBeVisible();
  });
});

test.describe('what was done', () => {
  const steps = (page: Page) => page.getByRole('list', { name: 'Steps, the earliest first' });
  const openSteps = (page: Page) => page.getByRole('button', { name: 'What was done, step by step' }).click();

  test('is listed by name, and one goes to any step by mouse and by keys', async ({ page }) => {
    await open(page);
    await openSteps(page);
    await expect(page.getByText('Nothing is done yet.')).toBeVisible();
    await page.keyboard.press('Escape');
    await drag(page, [3, 0], [3, 6]);
    await drag(page, [0, 2], [6, 2]);
    await takeUp(page, 'Adjust');
    await drag(page, [3, 0], [4, 0]);
    await openSteps(page);
    const rows = steps(page).getByRole('button');
    // However far it was dragged: one step.
    await expect(rows).toHaveCount(4);
    await expect(rows.nth(3)).toHaveAttribute('aria-current', 'step');
    await rows.nth(1).click();
    await expect(rows.nth(1)).toHaveAttribute('aria-current', 'step');
    await expect(rows.nth(2)).toContainText('undone');
    await expect(page.getByRole('button', { name: /^Redo: / })).toBeEnabled();
    await rows.nth(1).focus();
    await page.keyboard.press('End');
    await page.keyboard.press('Enter');
    await expect(rows.nth(3)).toHaveAttribute('aria-current', 'step');
    await page.keyboard.press('Home');
    await page.keyboard.press('Enter');
    await expect(rows.first()).toHaveAttribute('aria-current', 'step');
    await page.keyboard.press('Escape');
    await expect(verdict(page)).toHaveText('Sews on one foundation: a single patch');
  });

  test('is there after a reload, fifty steps of it, and leads back to the first of them', async ({
    page,
  }) => {
    await open(page);
    for (let block = 0; block < 52; block++) {
      await page.getByRole('button', { name: /^Block: / }).click();
      await page.getByRole('button', { name: 'New block', exact: true }).click();
    }
    await page.reload();
    await expect(verdict(page)).toBeVisible();
    await openSteps(page);
    await expect(steps(page).getByRole('button')).toHaveCount(51);
    await steps(page).getByRole('button').first().click();
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: /^Block: / }).click();
    // Two of the steps were too long ago.
    await expect(page.getByRole('list', { name: 'Blocks', exact: true }).getByRole('listitem')).toHaveCount(
      3,
    );
  });
});
