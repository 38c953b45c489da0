import type { Locator, Page } from '@playwright/test';
import type { Place } from './draw.ts';
import { expect } from './test.ts';

/** The block as it is seen from the front at the Order station. */
export const front = (page: Page): Locator => page.getByRole('application', { name: 'Front, as sewn' });

/** The patches in hand and what can be pinned with them. */
export const inHand = (page: Page): Locator => page.getByRole('region', { name: 'In hand' });

/** A part of the panel that can be folded up. */
export const part = (page: Page, name: 'Findings' | 'Ways to sew it' | 'Pins'): Locator =>
  page.getByRole('group', { name, exact: true });

/** Presses the patch at a place of the block, inches, from the front. */
export async function pressPatch(page: Page, [x, y]: Place, modifier?: 'Shift'): Promise<void> {
  const canvas = front(page);
  const [scale, left, top] = (await canvas.getAttribute('data-view'))!.split(' ').map(Number) as [
    number,
    number,
    number,
  ];
  const box = (await canvas.boundingBox())!;
  if (modifier !== undefined) await page.keyboard.down(modifier);
  await page.mouse.click(box.x + left + x * scale, box.y + top + y * scale);
  if (modifier !== undefined) await page.keyboard.up(modifier);
  await expect(inHand(page)).toBeVisible();
}

/** The name of the patch at a place, as the plan calls it now: `A1`. */
export async function nameAt(page: Page, place: Place): Promise<string> {
  await pressPatch(page, place);
  return (await inHand(page).getByRole('heading').textContent())!;
}

/** What the canvas looks like, to be compared with what it looked like before. */
export const picture = (page: Page): Promise<Buffer> => front(page).screenshot();

/** Waits until the canvas looks other than before, and gives what it looks like: it is drawn in the next frame. */
export async function otherPicture(page: Page, before: Buffer, why?: string): Promise<Buffer> {
  let now = before;
  await expect
    .poll(async () => {
      now = await picture(page);
      return now.equals(before);
    }, why)
    .toBe(false);
  return now;
}

/** Presses Tab until an element has the focus. */
export async function tabTo(page: Page, element: Locator): Promise<void> {
  for (let presses = 0; presses < 60; presses++) {
    await page.keyboard.press('Tab');
    if (await element.evaluate((one) => one === document.activeElement)) return;
  }
  expect(false, 'the Tab key reaches it').toBe(true);
}
