import { drop, goTo, open, verdict } from './support/app.ts';
import { press, takeUp } from './support/draw.ts';
import { inHand, nameAt, part, pressPatch } from './support/order.ts';
import { expect, test } from './support/test.ts';

/** Three strips side by side: any of them can be the first, and after the outer ones the middle one must follow. */
const STRIPS = `<svg xmlns="http://www.w3.org/2000/svg" width="6in" height="6in" viewBox="0 0 6 6">
  <title>Strips</title><rect width="6" height="6"/><path d="M2 0V6M4 0V6"/></svg>`;
const LEFT = [1, 3] as const;
const MIDDLE = [3, 3] as const;
const RIGHT = [5, 3] as const;

/** Four strips, one above the other, the lowest cut in two. */
const LADDER = `<svg xmlns="http://www.w3.org/2000/svg" width="6in" height="8in" viewBox="0 0 6 8">
  <title>Ladder</title><rect width="6" height="8"/><path d="M0 2H6M0 4H6M0 6H6"/></svg>`;

test('a patch is pinned first, another before a third, and the plan follows', async ({ page }) => {
  await open(page);
  await drop(page, [{ name: 'strips.svg', text: STRIPS }]);
  await goTo(page, 'Order');

  await pressPatch(page, MIDDLE);
  await inHand(page).getByRole('button', { name: 'Sew first' }).click();
  await expect(inHand(page).getByRole('heading')).toHaveText('A1');
  await expect(inHand(page).getByRole('button', { name: 'Sew first' })).toHaveAttribute(
    'aria-pressed',
    'true',
  );

  // The plan is the one that stays.
  await expect(page.getByRole('table', { name: 'Ways to sew the block' })).toHaveAttribute(
    'aria-busy',
    'false',
  );
  // From the middle both ways are open; the later of the two is pinned to be the earlier.
  const later = (await nameAt(page, LEFT)) === 'A3' ? LEFT : RIGHT;
  const earlier = later === LEFT ? RIGHT : LEFT;
  expect(await nameAt(page, earlier)).toBe('A2');
  await pressPatch(page, later);
  await pressPatch(page, earlier, 'Shift');
  await expect(inHand(page).getByRole('heading')).toHaveText('A3 and A2');
  await inHand(page).getByRole('button', { name: 'A3 before A2' }).click();

  const pins = page.getByRole('list', { name: 'Pins', exact: true });
  await expect(pins.getByRole('listitem')).toHaveText([
    'A1 is the first patch of its section.',
    'A2 comes before A3, where both are in one section.',
  ]);
  await expect.poll(() => nameAt(page, later)).toBe('A2');
  await expect.poll(() => nameAt(page, earlier)).toBe('A3');

  // What was pinned is undone like any other edit.
  await page.keyboard.press('Control+z');
  await expect(pins.getByRole('listitem')).toHaveCount(1);
  await expect.poll(() => nameAt(page, later)).toBe('A3');
});

test('pins that contradict each other are named, and removing one mends it', async ({ page }) => {
  await open(page);
  await drop(page, [{ name: 'strips.svg', text: STRIPS }]);
  await goTo(page, 'Order');
  for (const place of [LEFT, RIGHT]) {
    await pressPatch(page, place);
    await inHand(page).getByRole('button', { name: 'Sew first' }).click();
  }
  // Two first patches take two sections; that they stay together cannot be.
  await expect(verdict(page)).toHaveText('Sews on 2 foundations');
  await pressPatch(page, LEFT);
  await pressPatch(page, RIGHT, 'Shift');
  await inHand(page).getByRole('button', { name: 'Keep in one section' }).click();
  await expect(verdict(page)).toHaveText('Sews on one foundation · 3 pins cannot hold together');

  const clash = page.getByRole('list', { name: 'Pins that cannot hold' });
  await expect(clash.getByRole('listitem')).toHaveCount(3);
  await expect(part(page, 'Pins')).toContainText('These 3 pins cannot hold together');
  await clash
    .getByRole('button', { name: /is the first patch of its section$/ })
    .first()
    .click();
  await expect(verdict(page)).toHaveText('Sews on one foundation');
  await expect(clash).toHaveCount(0);
  await expect(page.getByRole('list', { name: 'Pins', exact: true }).getByRole('listitem')).toHaveCount(2);
});

test('a pin whose patch an edit removed is named, and can be removed', async ({ page }) => {
  await open(page);
  await drop(page, [{ name: 'ladder.svg', text: LADDER }]);
  await goTo(page, 'Order');
  await pressPatch(page, [3, 1]);
  await pressPatch(page, [3, 3], 'Shift');
  await inHand(page)
    .getByRole('button', { name: /^A\d before A\d$/ })
    .first()
    .click();
  await expect(page.getByRole('list', { name: 'Pins', exact: true })).toBeVisible();

  // The line between the two goes, and with it one of them.
  await goTo(page, 'Draft');
  await takeUp(page, 'Adjust');
  await press(page, [3, 2]);
  await page.keyboard.press('Delete');
  await expect(verdict(page)).toHaveText('Sews on one foundation · 1 pin lost');
  await goTo(page, 'Order');
  const lost = page.getByRole('list', { name: 'Lost pins' });
  // Of the two the older goes on, whichever of them that is.
  await expect(lost).toContainText(/a patch that is gone/i);
  await lost.getByRole('button', { name: /^Remove/ }).click();
  await expect(lost).toHaveCount(0);
  await expect(verdict(page)).toHaveText('Sews on one foundation');

  // Undone twice, the pin is back, and so is its patch.
  await page.keyboard.press('Control+z');
  await expect(lost).toBeVisible();
  await page.keyboard.press('Control+z');
  await expect(lost).toHaveCount(0);
  await expect(page.getByRole('list', { name: 'Pins', exact: true }).getByRole('listitem')).toHaveCount(1);
});

test('by keys alone: a new section at a seam, and a letter for it', async ({ page }) => {
  await open(page);
  await drop(page, [{ name: 'ladder.svg', text: LADDER }]);
  await goTo(page, 'Order');
  await page.getByRole('list', { name: 'Piecing order of section A' }).getByRole('button').first().focus();
  await page.keyboard.press('ArrowDown');
  await expect(inHand(page).getByRole('heading')).toHaveText('A2');

  // P leads to the pins of what is in hand.
  await page.keyboard.press('p');
  await expect(inHand(page).getByRole('button', { name: 'Sew first' })).toBeFocused();
  for (let i = 0; i < 3; i++) await page.keyboard.press('Tab');
  await expect(inHand(page).getByRole('button', { name: 'New section at…' })).toBeFocused();
  await page.keyboard.press('Enter');
  const seams = page.getByRole('list', { name: 'Start a new section at the seam of A2 with' });
  await expect(seams.getByRole('button')).toHaveCount(2);
  await expect(seams.getByRole('button').first()).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(verdict(page)).toHaveText('Sews on 2 foundations');
  await expect(page.getByRole('list', { name: 'Pins', exact: true })).toContainText(
    'A new section starts at the seam',
  );

  await page.keyboard.press('p');
  for (let i = 0; i < 4; i++) await page.keyboard.press('Tab');
  await expect(inHand(page).getByRole('button', { name: 'Letter…' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('textbox', { name: /^Call the section of/ })).toBeFocused();
  await page.keyboard.type('k');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Section K' })).toBeVisible();
});

test('pins and the choice are there after a reload', async ({ page }) => {
  await open(page);
  await drop(page, [{ name: 'ladder.svg', text: LADDER }]);
  await goTo(page, 'Order');
  await pressPatch(page, [3, 5]);
  await inHand(page).getByRole('button', { name: 'Sew first' }).click();
  const most = page.getByLabel('Most patches in a small section');
  await most.fill('2');
  await most.press('Enter');
  await page.getByRole('radio', { name: 'Small sections' }).check();
  await expect(verdict(page)).toHaveText('Sews on 2 foundations');
  await page.reload();
  await expect(page.getByRole('radio', { name: 'Small sections' })).toBeChecked();
  await expect(page.getByLabel('Most patches in a small section')).toHaveValue('2');
  await expect(verdict(page)).toHaveText('Sews on 2 foundations');
  await expect(page.getByRole('list', { name: 'Pins', exact: true })).toContainText(
    'is the first patch of its section',
  );
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('radio', { name: 'Fewest foundations' })).toBeChecked();
  await expect(verdict(page)).toHaveText('Sews on one foundation');
});
