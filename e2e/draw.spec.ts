import { goTo, open, stop, verdict } from './support/app.ts';
import { Crosshair, drag, holdEnds, onPage, press, tabToDrawing, takeUp, viewOf } from './support/draw.ts';
import { HOUSE, HOUSE_LINES, measureHouse } from './support/house.ts';
import { guidePicture } from './support/picture.ts';
import { expect, test } from './support/test.ts';

test('a house drawn by mouse sews on one foundation, and its PDF measures true', async ({ page }) => {
  await open(page);
  await takeUp(page, 'New outline');
  for (const corner of [...HOUSE, HOUSE[0]!]) await press(page, corner);
  await expect(page.getByRole('button', { name: 'Block: Block 1 6 × 6 in' })).toBeVisible();
  await takeUp(page, 'Draw lines');
  // Both ways: drawn out, and pressed at each end.
  for (const [from, to] of HOUSE_LINES.slice(0, 2)) await drag(page, from, to);
  for (const [from, to] of HOUSE_LINES.slice(2)) {
    await press(page, from);
    await press(page, to);
  }
  await expect(verdict(page)).toHaveText('Sews on one foundation');
  await expect(stop(page, 'Draft')).toContainText('5 patches');

  await goTo(page, 'Paper');
  await expect(stop(page, 'Paper')).toContainText('1 sheet');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save PDF' }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('Block 1.pdf');
  await measureHouse(download);
});

test('the same house by keyboard alone', async ({ page }) => {
  await open(page);
  await page.keyboard.press('o');
  await tabToDrawing(page);
  const crosshair = new Crosshair(page);
  const middle = [3, 3] as const;
  for (const corner of HOUSE) {
    await crosshair.goTo(corner, middle);
    await page.keyboard.press('Enter');
  }
  await page.keyboard.press('Enter');
  await page.keyboard.press('d');
  for (const [from, to] of HOUSE_LINES) {
    await crosshair.goTo(from, middle);
    await page.keyboard.press('Enter');
    await crosshair.goTo(to, middle);
    await page.keyboard.press('Enter');
  }
  await expect(verdict(page)).toHaveText('Sews on one foundation');
  await expect(stop(page, 'Draft')).toContainText('5 patches');

  await page.keyboard.press('4');
  const save = page.getByRole('button', { name: 'Save PDF' });
  await expect(save).toBeEnabled();
  for (let presses = 0; presses < 60; presses++) {
    if (await save.evaluate((element) => element === document.activeElement)) break;
    await page.keyboard.press('Tab');
  }
  await expect(save).toBeFocused();
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
  await measureHouse(download);
});

test('a sawtooth star, by four turns and a mirror, in six actions', async ({ page }) => {
  await open(page);
  const width = page.getByRole('region', { name: 'Finished size' }).getByLabel('Width');
  let actions = 0;
  const action = async (done: Promise<void>) => {
    await done;
    actions += 1;
  };
  await action(width.fill('8'));
  await action(page.locator('summary', { hasText: 'Repeat' }).click());
  await expect(page.getByRole('button', { name: 'Block: Block 1 8 × 8 in' })).toBeVisible();
  await action(page.getByRole('radio', { name: '4 times' }).check());
  await action(page.getByRole('checkbox', { name: 'Upright' }).check());
  await expect(page.getByText('Each line is drawn 8 times').first()).toBeVisible();
  await action(drag(page, [2, 0], [2, 8]));
  await action(drag(page, [2, 0], [4, 2]));
  expect(actions).toBeLessThanOrEqual(12);
  await expect(stop(page, 'Draft')).toContainText('17 patches');
  await expect(verdict(page)).toHaveText(/^Sews on \d foundations$/);
  await page.mouse.move(0, 0);
  await guidePicture(page, 'guide-star');

  // What is deleted takes its images along: of the star's points nothing is left.
  await takeUp(page, 'Adjust');
  await press(page, [3, 1]);
  await page.keyboard.press('Delete');
  await expect(stop(page, 'Draft')).toContainText('9 patches');
  await page.keyboard.press('Control+z');
  await expect(stop(page, 'Draft')).toContainText('17 patches');
});

test('an end that stops short is found, and its repair is applied and undone', async ({ page }) => {
  await open(page);
  await holdEnds(page);
  await drag(page, [0, 2], [4, 2]);
  await expect(verdict(page)).toContainText('1 error');
  // Said in the unit that the pattern has: (4, 2 in) is (10.16, 5.08 cm).
  await page.getByRole('radio', { name: 'Centimetres' }).check();
  await page.getByRole('button', { name: /^Verdict: / }).click();
  const told = page.getByRole('region', { name: 'Verdict' });
  await expect(told.getByRole('button', { name: /^Error 1: / })).toContainText(
    'A line ends loose at (10.16, 5.08 cm), about 5.1 cm short of the next line.',
  );
  await page.keyboard.press('Escape');
  await page.getByRole('radio', { name: 'Inches' }).check();
  await page.getByRole('button', { name: /^Verdict: / }).click();
  await told
    .getByRole('button', { name: /^Let the line that ends loose at \(4, 2 in\) run on for 2 in, / })
    .click();
  await expect(verdict(page)).toHaveText('Sews on one foundation');
  await page.keyboard.press('Escape');
  await page.keyboard.press('Control+z');
  await expect(verdict(page)).toContainText('1 error');
});

test('undo is the pattern’s, where a field holds nothing that is not taken yet', async ({ page }) => {
  await open(page);
  const width = page.getByRole('region', { name: 'Finished size' }).getByLabel('Width');
  const block = (size: string) => page.getByRole('button', { name: `Block: Block 1 ${size}` });
  for (const key of ['Enter', 'Tab']) {
    await width.fill('10');
    await width.press(key);
    await expect(block('10 × 10 in')).toBeVisible();
    await expect(page.locator('input:focus')).toHaveCount(1);
    await page.keyboard.press('Control+z');
    await expect(block('6 × 6 in')).toBeVisible();
    await expect(width).toHaveValue('6 in');
  }
  await page.keyboard.press('Control+y');
  await expect(block('10 × 10 in')).toBeVisible();
  // What is typed and not taken yet is the field's to undo.
  await width.fill('12');
  await page.keyboard.press('Control+z');
  await width.press('Escape');
  await expect(block('10 × 10 in')).toBeVisible();
  await expect(width).toHaveValue('10 in');
  await page.keyboard.press('Control+z');
  await expect(block('6 × 6 in')).toBeVisible();
});

test('sizes take what people type, and refuse the rest beside the field', async ({ page }) => {
  await open(page, '?demo');
  await goTo(page, 'Paper');
  const width = page.getByLabel('Finished width');
  for (const [typed, shown] of [
    ['4 1/2', '4½ in'],
    ['4.25', '4¼ in'],
    ['10cm', '3.937 in'],
    ['6"', '6 in'],
  ] as const) {
    await width.fill(typed);
    await width.press('Enter');
    await expect(width).toHaveValue(shown);
  }
  for (const [typed, says] of [
    ['0', /too small/],
    ['-3', /less than nothing/],
    ['wide', /not a length/],
    ['130', /too large/],
  ] as const) {
    await width.fill(typed);
    await width.press('Enter');
    await expect(width).toHaveAttribute('aria-invalid', 'true');
    await expect(page.getByRole('alert').filter({ hasText: says })).toBeVisible();
  }
  await width.press('Escape');
  await expect(width).toHaveValue('6 in');
  await expect(stop(page, 'Paper')).toContainText('sheet');
});

test('the wheel zooms about the pointer, and the keys zoom, move and fit', async ({ page }) => {
  await open(page);
  const fitting = await viewOf(page);
  const corner = await onPage(page, [6, 6]);
  await page.mouse.move(corner.x, corner.y);
  await page.mouse.wheel(0, -400);
  await expect.poll(async () => (await viewOf(page)).scale).toBeGreaterThan(fitting.scale * 1.9);
  const after = await onPage(page, [6, 6]);
  expect(Math.hypot(after.x - corner.x, after.y - corner.y)).toBeLessThan(1);
  await tabToDrawing(page);
  await page.keyboard.press('+');
  expect((await viewOf(page)).scale).toBeGreaterThan(fitting.scale * 2.4);
  await page.keyboard.press('0');
  expect(await viewOf(page)).toEqual(fitting);
});

test('the space bar moves the drawing, and draws again though it was lifted over another window', async ({
  page,
}) => {
  await open(page);
  const fitting = await viewOf(page);
  await page.getByRole('application', { name: 'Drawing of the block' }).focus();
  await page.keyboard.down('Space');
  const [from, to] = [await onPage(page, [2, 3]), await onPage(page, [3, 3])];
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 4 });
  await page.mouse.up();
  await expect.poll(async () => (await viewOf(page)).left - fitting.left).toBeCloseTo(fitting.scale, 3);
  expect((await viewOf(page)).top).toBeCloseTo(fitting.top, 3);
  await page.evaluate(() => window.dispatchEvent(new Event('blur')));
  await drag(page, [2, 0], [2, 6]);
  await expect(stop(page, 'Draft')).toContainText('2 patches');
});

test('a block that cannot be sewn has no sheets, and Paper says why and leads back', async ({ page }) => {
  await open(page);
  await holdEnds(page);
  // Four lines that chase each other round the middle: each ends on the next.
  for (const [from, to] of [
    [
      [2, 0],
      [2, 4],
    ],
    [
      [0, 4],
      [4, 4],
    ],
    [
      [4, 6],
      [4, 2],
    ],
    [
      [6, 2],
      [2, 2],
    ],
  ] as const)
    await drag(page, from, to);
  await expect(verdict(page)).toHaveText('Cannot be sewn with straight seams · 1 error');
  await expect(stop(page, 'Draft')).toContainText('5 patches');
  await goTo(page, 'Paper');
  await expect(page.getByRole('heading', { name: 'No sheets yet' })).toBeVisible();
  await expect(page.getByRole('list', { name: 'Findings' })).toContainText('hold each other');
  await expect(page.getByRole('button', { name: 'Save PDF' })).toHaveCount(0);
  await page.getByRole('button', { name: 'Go to the drawing' }).click();
  await expect(page.getByRole('main', { name: 'Draft' })).toBeVisible();
});

test('the words for beginners come back with the empty block, though a press on Undo took what was typed first', async ({
  page,
}) => {
  await open(page);
  const words = page.getByRole('heading', { name: 'Here is an empty block' });
  await page.getByRole('region', { name: 'Finished size' }).getByLabel('Width').fill('8');
  // Nothing can be undone until the press has taken the width.
  const box = (await page.getByRole('button', { name: 'Undo', exact: true }).boundingBox())!;
  await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
  await expect(page.getByRole('button', { name: 'Redo: Change the size' })).toBeVisible();
  await expect(words).toBeVisible();
});

test('the drawing stays where it is when the first line is drawn and the words for beginners go', async ({
  page,
}) => {
  await open(page);
  const words = page.getByRole('heading', { name: 'Here is an empty block' });
  await expect(words).toBeVisible();
  const before = [await viewOf(page), await onPage(page, [6, 6])];
  await drag(page, [0, 3], [6, 3]);
  await expect(stop(page, 'Draft')).toContainText('2 patches');
  await expect(words).toHaveCount(0);
  expect([await viewOf(page), await onPage(page, [6, 6])]).toEqual(before);
});
