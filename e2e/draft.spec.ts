import type { Locator, Page } from '@playwright/test';
import { goTo, open, stop, verdict } from './support/app.ts';
import { drag, onPage, type Place, press, tabToDrawing, takeUp, viewOf } from './support/draw.ts';
import { listen, toHear } from './support/spoken.ts';
import { expect, test } from './support/test.ts';

/** The panel's part about the thing in hand. */
const inHand = (page: Page) => page.getByRole('region', { name: 'In hand' });

const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ });

/** Presses down at one place and moves to another, and keeps the button down. */
async function holdAt(page: Page, from: Place, to: Place): Promise<void> {
  const [start, end] = [await onPage(page, from), await onPage(page, to)];
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await page.mouse.move(end.x, end.y, { steps: 6 });
}

/** A line across at 2 in, and one from its middle down to the lower edge. */
async function drawTee(page: Page): Promise<void> {
  await drag(page, [0, 2], [6, 2]);
  await drag(page, [3, 2], [3, 6]);
  await expect(stop(page, 'Draft')).toContainText('3 patches');
}

test('an end that is dragged moves its line; one that lies on a line goes with it', async ({ page }) => {
  await open(page);
  await drawTee(page);
  await takeUp(page, 'Adjust');
  await drag(page, [0, 2], [0, 4]);
  await press(page, [3, 3]);
  await expect(inHand(page)).toContainText('On line 1');
  await expect(inHand(page).getByLabel('From the top')).toHaveValue('3 in');
  await expect(verdict(page)).toHaveText('Sews on one foundation');
});

test('Escape takes back what is being done, at every step', async ({ page }) => {
  await open(page);
  await press(page, [0, 3]);
  await page.keyboard.press('Escape');
  await press(page, [6, 3]);
  await page.keyboard.press('Escape');
  await holdAt(page, [0, 1], [6, 1]);
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await takeUp(page, 'Adjust');
  await holdAt(page, [0, 0], [1, 1]);
  await expect(inHand(page).getByLabel('From the left')).toHaveValue('1 in');
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await takeUp(page, 'New outline');
  for (const corner of [
    [0, 0],
    [6, 0],
    [6, 6],
  ] as const)
    await press(page, corner);
  for (let corners = 3; corners > 0; corners--) await page.keyboard.press('Escape');
  await expect(undo(page)).toBeDisabled();
  await expect(stop(page, 'Draft')).toContainText('1 patch');
});

test('a point is moved without a drag, by mouse and by keys', async ({ page }) => {
  await open(page);
  await drag(page, [3, 0], [3, 6]);
  await takeUp(page, 'Adjust');
  await press(page, [3, 0]);
  await page.getByRole('button', { name: 'Move it' }).click();
  await press(page, [1, 0]);
  await expect(inHand(page).getByLabel('From the left')).toHaveValue('1 in');
  await page.getByRole('button', { name: 'Move it' }).press('Enter');
  for (let i = 0; i < 2; i++) await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Enter');
  await expect(inHand(page).getByLabel('From the left')).toHaveValue('2 in');
  await page.keyboard.press('Delete');
  await expect(stop(page, 'Draft')).toContainText('1 patch');
});

test('places are typed exactly, and a line is drawn by its ends', async ({ page }) => {
  await open(page);
  await page.getByText('Everything drawn, as a list').click();
  const first = page.getByRole('group', { name: 'First end' });
  const second = page.getByRole('group', { name: 'Second end' });
  await first.getByLabel('From the left').fill('2 3/8');
  await second.getByLabel('From the left').fill('60.325 mm');
  await second.getByLabel('From the top').fill('6');
  await page.getByRole('button', { name: 'Draw this line' }).click();
  await expect(verdict(page)).toHaveText('Sews on one foundation');

  const points = page.getByRole('list', { name: 'Points', exact: true });
  await expect(points.getByRole('button', { name: 'End 1, from the left: 2⅜' })).toBeVisible();
  await points.getByRole('button', { name: 'End 1', exact: true }).click();
  await inHand(page).getByLabel('From the left').fill('somewhere');
  await inHand(page).getByLabel('From the left').press('Enter');
  await expect(inHand(page).getByRole('alert')).toContainText('“somewhere” is not a length');
  await inHand(page).getByLabel('From the left').fill('1');
  await inHand(page).getByLabel('From the left').press('Enter');
  await expect(points.getByRole('button', { name: 'End 1, from the left: 1' })).toBeVisible();
});

test('the crosshair says what it is on, goes from place to place, and lets the Tab key out', async ({
  page,
}) => {
  await listen(page);
  await open(page);
  await toHear(page, /^Sews on one foundation/);
  await tabToDrawing(page);
  await page.keyboard.press('ArrowUp');
  await toHear(page, /^3, 3 in, middle of the block/);
  await page.keyboard.press('Shift+Tab');
  await toHear(page, /^0, 3 in, middle of the edge/);
  await page.keyboard.press('Enter');
  await expect(page.getByText('One end is down.').first()).toBeVisible();
  await page.keyboard.press('Shift+ArrowRight');
  await toHear(page, /^1\/32, 3 in/);
  for (let places = 0; places < 8; places++) await page.keyboard.press('Tab');
  await expect(page.getByRole('application', { name: 'Drawing of the block' })).not.toBeFocused();
});

test('a note stays with its patch while the lines round it move', async ({ page }) => {
  await open(page);
  await drawTee(page);
  await takeUp(page, 'Adjust');
  await press(page, [1.25, 4.25]);
  await inHand(page).getByLabel('Note').fill('door');
  await drag(page, [0, 2], [0, 1]);
  await drag(page, [3, 6], [2, 6]);
  await press(page, [0.75, 4.25]);
  await expect(inHand(page).getByLabel('Note')).toHaveValue('door');
});

test('another outline by its shape and size; what no block can be is said beside it', async ({ page }) => {
  await open(page);
  await drag(page, [3, 0], [3, 6]);
  await page.getByRole('button', { name: 'Another outline…' }).click();
  const dialog = page.getByRole('dialog', { name: 'Outline of the block' });
  const side = dialog.getByRole('textbox', { name: 'Side' });
  for (const [typed, says] of [
    ['0', 'too small'],
    ['-4', 'less than nothing'],
    ['121', 'too large'],
    ['six', 'not a length'],
  ] as const) {
    await side.fill(typed);
    await side.press('Enter');
    await expect(dialog.getByRole('alert')).toContainText(says);
  }
  await dialog.getByRole('radio', { name: 'Hexagon' }).check();
  await side.fill('100');
  await side.press('Enter');
  await expect(dialog.getByText('The width is 200 in')).toBeVisible();
  await expect(dialog.getByRole('button', { name: 'Use this outline' })).toBeDisabled();
  await side.fill('3');
  await side.press('Enter');
  await dialog.getByRole('button', { name: 'Use this outline' }).click();
  await expect(page.getByRole('button', { name: /^Block: Block 1 6 × 5\.196/ })).toBeVisible();
  await undo(page).click();
  await expect(page.getByRole('button', { name: 'Block: Block 1 6 × 6 in' })).toBeVisible();
});

test('an outline that would cross itself is refused in a sentence, and stays as it was', async ({ page }) => {
  await open(page);
  await takeUp(page, 'Adjust');
  await holdAt(page, [0, 0], [6.5, 3]);
  await expect(page.getByText(/crosses itself/).first()).toBeVisible();
  await page.mouse.up();
  await expect(undo(page)).toBeDisabled();
});

test('nothing jumps while a corner is moved', async ({ page }) => {
  await open(page);
  await takeUp(page, 'Adjust');
  await drag(page, [0, 0], [0, 0.5]);
  // With the first change the invitation goes, and the canvas takes its place: that once, the view fits itself anew.
  await expect(page.getByText(/Here is an empty block/)).toBeHidden();
  let before = await viewOf(page);
  await expect(async () => {
    const earlier = before;
    await page.waitForTimeout(100);
    before = await viewOf(page);
    expect(before).toEqual(earlier);
  }).toPass();
  await drag(page, [6, 0], [6, 1]);
  expect(await viewOf(page)).toEqual(before);
});

test('who takes up drawing lets go of what was chosen, and may press through the words on the canvas', async ({
  page,
}) => {
  await open(page);
  await drag(page, [0, 2], [6, 2]);
  await takeUp(page, 'Adjust');
  await press(page, [2, 2]);
  const panel = page.getByRole('complementary', { name: 'About the drawing' });
  await expect(panel.getByRole('heading', { name: 'Line 1' })).toBeVisible();
  await takeUp(page, 'Draw lines');
  await expect(panel.getByRole('checkbox', { name: 'Ends stay where they are put' })).toBeVisible();
  await takeUp(page, 'Adjust');
  // An outline that would cross itself is refused in words, which lie over the drawing's foot.
  await drag(page, [0, 0], [7, 3]);
  await expect(page.getByText('The shape crosses itself').first()).toBeVisible();
  await press(page, [6, 6.05]);
  await expect(panel.getByRole('heading', { name: 'Corner 3' })).toBeVisible();
});

// A page of 1280 × 800 at 200 %, and a telephone on its side.
for (const [width, height] of [
  [640, 400],
  [844, 390],
] as const)
  test(`a window of ${width} × ${height} leaves room to draw in, and nothing of it lies over the rest`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await open(page);
    // 6 in of block. Half of the window’s height, at 200 %, is what its bars leave.
    expect(6 * (await viewOf(page)).scale).toBeGreaterThan(height / 4);
    await drag(page, [0, 3], [6, 3]);
    await expect(stop(page, 'Draft')).toContainText('2 patches');
    const boxOf = async (thing: Locator) => (await thing.boundingBox())!;
    // With one end of a line down, what is said covers nothing of the block.
    await press(page, [1, 1]);
    const said = await boxOf(page.getByText('One end is down').locator('..'));
    expect(said.y).toBeGreaterThanOrEqual((await onPage(page, [0, 6])).y);
    await page.keyboard.press('Escape');
    const tool = await boxOf(page.locator('label', { hasText: 'New outline' }));
    const view = await boxOf(page.getByRole('button', { name: 'View: Front' }));
    const panel = await boxOf(page.getByRole('complementary', { name: 'About the drawing' }));
    expect(tool.x + tool.width).toBeLessThanOrEqual(view.x);
    expect(view.x + view.width).toBeLessThanOrEqual(panel.x);
    for (const station of ['Order', 'Cloth'] as const) {
      await goTo(page, station);
      const drawn = await boxOf(page.getByRole('application').first());
      expect(drawn.height, station).toBeGreaterThan(height / 3);
    }
  });
