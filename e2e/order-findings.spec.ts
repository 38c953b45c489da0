import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { drop, goTo, open, verdict } from './support/app.ts';
import { front, inHand, otherPicture, picture, pressPatch, tabTo } from './support/order.ts';
import { listen, toHear } from './support/spoken.ts';
import { expect, test } from './support/test.ts';

/** Four oblongs that chase each other round a square: no straight seams sew it. */
const CYCLE = `<svg xmlns="http://www.w3.org/2000/svg" width="6in" height="6in" viewBox="0 0 3 3">
  <title>Ring</title><rect width="3" height="3"/><path d="M1 0V2M0 2H2M2 1V3M1 1H3"/></svg>`;

/** A strip above two of them. */
const TWO_CYCLES = `<svg xmlns="http://www.w3.org/2000/svg" width="12in" height="8in" viewBox="0 0 6 4">
  <title>Two rings</title><rect width="6" height="4"/>
  <path d="M0 1H6M3 1V4M1 1V3M0 3H2M2 2V4M1 2H3M4 1V3M3 3H5M5 2V4M4 2H6"/></svg>`;

const findings = (page: Page) => page.getByRole('list', { name: 'Findings', exact: true });
const repairs = (page: Page, number: number) =>
  findings(page).getByRole('list', { name: `Repairs of finding ${number}` });

test('an interlocked block is mended by one repair, and undo brings it back', async ({ page }) => {
  await open(page);
  await drop(page, [{ name: 'ring.svg', text: CYCLE }]);
  await goTo(page, 'Order');
  await expect(verdict(page)).toHaveText('Cannot be sewn with straight seams · 1 error');
  await expect(
    findings(page).getByRole('button', { name: /^Error 1: 4 seams chase each other/ }),
  ).toBeVisible();

  // The four seams are alike: each can run on to the edge, 2 in farther. What that costs is said.
  const offered = repairs(page, 1).getByRole('button');
  await expect(offered.first()).toContainText('best');
  await expect(offered.first()).toContainText('Adds 1 patch and 2 in of seam.');

  // Pointed at, the repair is drawn on the block; the pointer gone, it is not.
  const before = await picture(page);
  await offered.first().hover();
  await otherPicture(page, before);
  await page.mouse.move(2, 2);
  await expect.poll(async () => before.equals(await picture(page))).toBe(true);

  await offered.first().click();
  await expect(verdict(page)).toHaveText(/^Sews on (one foundation|2 foundations)$/);
  await expect(findings(page)).toHaveCount(0);
  await page.getByRole('button', { name: /^Undo: Repair: / }).click();
  await expect(verdict(page)).toHaveText('Cannot be sewn with straight seams · 1 error');
  await expect(offered.first()).toBeVisible();
});

test('findings and repairs are gone through by keys alone', async ({ page }) => {
  await open(page);
  await drop(page, [{ name: 'rings.svg', text: TWO_CYCLES }]);
  await goTo(page, 'Order');
  await expect(verdict(page)).toHaveText('Cannot be sewn with straight seams · 2 errors');
  await expect(repairs(page, 2).getByRole('button').first()).toBeVisible();

  const heads = findings(page).getByRole('button', { name: /^Error \d: / });
  const untouched = await picture(page);
  await tabTo(page, heads.first());
  const first = await otherPicture(page, untouched, 'the block shows the first finding');

  // Down through the first one's repairs to the second finding: each shows on the block.
  await page.keyboard.press('ArrowDown');
  await expect(repairs(page, 1).getByRole('button').first()).toBeFocused();
  await otherPicture(page, first, 'the block shows the repair');
  const count = await repairs(page, 1).getByRole('button').count();
  for (let i = 0; i < count; i++) await page.keyboard.press('ArrowDown');
  await expect(heads.nth(1)).toBeFocused();
  await otherPicture(page, first, 'the block shows the second finding');

  // Its best repair; the list keeps the focus, and the other finding is what is left.
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(verdict(page)).toHaveText('Cannot be sewn with straight seams · 1 error');
  await expect(findings(page)).toBeFocused();
  await page.keyboard.press('Tab');
  await expect(heads.first()).toBeFocused();
  await expect(repairs(page, 1).getByRole('button').first()).toBeVisible();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(verdict(page)).toHaveText(/^Sews on \d foundations$/);
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await expect(verdict(page)).toHaveText('Cannot be sewn with straight seams · 2 errors');
});

test('what a repair does is told to those who do not see it', async ({ page }) => {
  await listen(page);
  await open(page);
  await drop(page, [{ name: 'ring.svg', text: CYCLE }]);
  await goTo(page, 'Order');
  await repairs(page, 1).getByRole('button').first().click();
  await toHear(page, /^Repaired: /);
  await toHear(page, /^Sews on \d foundations/);
});

test('repairs are offered and shown at the Draft station, too', async ({ page }) => {
  await open(page);
  await drop(page, [{ name: 'ring.svg', text: CYCLE }]);
  const drawing = page.getByRole('application', { name: 'Drawing of the block' });
  await expect(repairs(page, 1).getByRole('button').first()).toBeVisible();
  const before = await drawing.screenshot();
  await repairs(page, 1).getByRole('button').first().hover();
  await expect.poll(async () => before.equals(await drawing.screenshot())).toBe(false);
  await repairs(page, 1).getByRole('button').first().click();
  await expect(verdict(page)).toHaveText(/^Sews on/);
});

test('allowed partial seams sew the ring, and the joins say what is left open and when it is closed', async ({
  page,
}) => {
  await open(page);
  await drop(page, [{ name: 'ring.svg', text: CYCLE }]);
  await goTo(page, 'Order');
  const partial = page.getByRole('checkbox', { name: /^Allow partial seams/ });
  await expect(partial).toHaveAccessibleName(/they would do here$/);
  await partial.check();
  await expect(verdict(page)).toHaveText(/^Sews with 1 partial seam, on \d foundations/);
  await expect(findings(page)).toHaveCount(0);
  const joins = page.getByRole('list', { name: 'Joins, in working order' });
  await expect(joins.getByRole('listitem').first()).toContainText(
    /^Partial seam: sew [A-Z] to [A-Z] for 1 in only/,
  );
  await expect(joins.getByRole('listitem').last()).toContainText(
    'close the 3 in of seam that step 1 left open',
  );
  await page.reload();
  await expect(verdict(page)).toHaveText(/^Sews with 1 partial seam, on \d foundations/);
  await partial.uncheck();
  await expect(verdict(page)).toHaveText('Cannot be sewn with straight seams · 1 error');
});

/** A line from a corner, 0.8 in up on 6 in: an angle of atan(0.8 / 6) = 7.6°. */
const POINTED = `<svg xmlns="http://www.w3.org/2000/svg" width="6in" height="6in" viewBox="0 0 6 6">
  <title>Pointed</title><rect width="6" height="6"/><path d="M0 6L6 5.2M0 2H6"/></svg>`;

test('cautions say what is hard to sew; how small a patch may be is the maker’s to say', async ({ page }) => {
  await open(page);
  await drop(page, [{ name: 'pointed.svg', text: POINTED }]);
  await goTo(page, 'Order');
  await expect(verdict(page)).toHaveText('Sews on one foundation · 1 caution');
  await expect(
    findings(page).getByRole('button', { name: /^Caution 1: Patch A\d comes to a point of 7.6°/ }),
  ).toBeVisible();

  // The upper patch is 2 in high. Printed at half its size it is 1 in, and too small for one who sews none below 1½ in.
  const least = page.getByLabel('Smallest patch on paper');
  await least.fill('1 1/2');
  await least.press('Enter');
  await expect(findings(page)).toContainText('across at the smallest size to be printed');
  const before = await findings(page).getByText('across at the smallest size').count();
  await goTo(page, 'Paper');
  await page.getByLabel('Finished width').fill('3');
  await page.getByLabel('Finished width').press('Enter');
  await goTo(page, 'Order');
  await expect(findings(page).getByText('across at the smallest size')).toHaveCount(before + 1);
  await least.fill('0');
  await least.press('Enter');
  await expect(verdict(page)).toHaveText('Sews on one foundation · 1 caution');
});

/** axe-core's findings that would keep someone out. */
async function barriers(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html.slice(0, 160)}`));
}

for (const colorScheme of ['light', 'dark'] as const)
  test.describe(`${colorScheme} colours`, () => {
    test.use({ colorScheme });

    test('no serious barrier at Order with findings, pins, conflicts and menus open', async ({ page }) => {
      await open(page);
      await drop(page, [{ name: 'ring.svg', text: CYCLE }]);
      await goTo(page, 'Order');
      await expect(repairs(page, 1).getByRole('button').first()).toBeVisible();
      expect(await barriers(page), 'findings and repairs').toEqual([]);
      await repairs(page, 1).getByRole('button').first().click();
      await expect(verdict(page)).toHaveText(/^Sews on/);

      const [left, right] = [
        [0.5, 1],
        [4, 0.5],
      ] as const;
      for (const place of [left, right]) {
        await pressPatch(page, place);
        await inHand(page).getByRole('button', { name: 'Sew first' }).click();
      }
      await pressPatch(page, left);
      await pressPatch(page, right, 'Shift');
      await inHand(page).getByRole('button', { name: 'Keep in one section' }).click();
      await expect(page.getByRole('list', { name: 'Pins that cannot hold' })).toBeVisible();
      expect(await barriers(page), 'pins that contradict each other').toEqual([]);

      await pressPatch(page, left);
      for (const menu of ['Together with…', 'New section at…', 'Letter…']) {
        await inHand(page).getByRole('button', { name: menu }).click();
        expect(await barriers(page), menu).toEqual([]);
        await page.keyboard.press('Escape');
      }
      await expect(front(page)).toBeVisible();
    });
  });
