import type { CDPSession, Page } from '@playwright/test';
import { open, stop, verdict } from './support/app.ts';
import { onPage, type Place, takeUp, viewOf } from './support/draw.ts';
import { expect, test } from './support/test.ts';

test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } });

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Fingers on the glass, told to the browser as the glass would tell it. */
class Fingers {
  private constructor(private readonly session: CDPSession) {}

  static async of(page: Page): Promise<Fingers> {
    return new Fingers(await page.context().newCDPSession(page));
  }

  private send(
    type: 'touchStart' | 'touchMove' | 'touchEnd',
    touchPoints: readonly Spot[],
  ): Promise<unknown> {
    return this.session.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: touchPoints.map(({ x, y }, id) => ({ x, y, id })),
    });
  }

  down = (...spots: readonly Spot[]) => this.send('touchStart', spots);
  move = (...spots: readonly Spot[]) => this.send('touchMove', spots);
  up = (...left: readonly Spot[]) => this.send('touchEnd', left);
}

const between = (a: Spot, b: Spot, share: number): Spot => ({
  x: a.x + (b.x - a.x) * share,
  y: a.y + (b.y - a.y) * share,
});

async function draw(page: Page, fingers: Fingers, from: Place, to: Place): Promise<void> {
  const [a, b] = [await onPage(page, from), await onPage(page, to)];
  await fingers.down(a);
  for (const share of [0.3, 0.6, 1]) await fingers.move(between(a, b, share));
  await fingers.up();
}

test('a finger draws a line', async ({ page }) => {
  await open(page);
  const fingers = await Fingers.of(page);
  await draw(page, fingers, [0, 3], [6, 3]);
  await expect(verdict(page)).toHaveText('Sews on one foundation');
  await expect(stop(page, 'Draft')).toContainText('2 patches');
});

test('two fingers zoom and draw nothing, though the first one came down on the drawing', async ({ page }) => {
  await open(page);
  await takeUp(page, 'Draw lines');
  const fingers = await Fingers.of(page);
  const before = await viewOf(page);
  const [a, b] = [await onPage(page, [2, 3]), await onPage(page, [4, 3])];
  await fingers.down(a);
  await fingers.move({ x: a.x + 6, y: a.y });
  await fingers.down({ x: a.x + 6, y: a.y }, b);
  for (const more of [20, 40, 60]) await fingers.move({ x: a.x - more, y: a.y }, { x: b.x + more, y: b.y });
  // What was under each finger stays under it.
  for (const [place, at] of [
    [[2 + 6 / before.scale, 3], { x: a.x - 60, y: a.y }],
    [[4, 3], { x: b.x + 60, y: b.y }],
  ] as const)
    await expect
      .poll(async () => {
        const { x, y } = await onPage(page, place);
        return Math.hypot(x - at.x, y - at.y);
      })
      .toBeLessThan(1);
  await fingers.up();
  expect((await viewOf(page)).scale).toBeGreaterThan(before.scale * 1.5);
  await expect(verdict(page)).toHaveText('Sews on one foundation: a single patch');
  // And the next finger draws again.
  await page.getByRole('button', { name: 'Show the whole block' }).tap();
  await draw(page, fingers, [3, 0], [3, 6]);
  await expect(stop(page, 'Draft')).toContainText('2 patches');
});

test('several are chosen by taps, and by a frame that a finger draws', async ({ page }) => {
  await open(page);
  const fingers = await Fingers.of(page);
  await draw(page, fingers, [3, 0], [3, 6]);
  // With the first line the invitation goes, and the view fits itself anew.
  await expect(page.getByText(/Here is an empty block/)).toBeHidden();
  await expect(stop(page, 'Draft')).toContainText('2 patches');
  await draw(page, fingers, [4.5, 0], [4.5, 6]);
  await expect(stop(page, 'Draft')).toContainText('3 patches');
  await takeUp(page, 'Adjust');
  const inHand = page.getByRole('region', { name: 'In hand' });
  const several = inHand.getByRole('checkbox', { name: /^Choose several/ });
  await several.check();
  const box = await several.locator('..').boundingBox();
  expect(box!.height).toBeGreaterThanOrEqual(44);
  for (const place of [
    [3, 3],
    [4.5, 3],
  ] as const) {
    const { x, y } = await onPage(page, place);
    await page.touchscreen.tap(x, y);
  }
  await expect(inHand).toContainText('2 lines');
  await page.keyboard.press('Escape');
  await several.uncheck();
  await draw(page, fingers, [2, 6.9], [5.5, -0.6]);
  await expect(inHand).toContainText('2 lines');
});

test('what is said once an end is down covers nothing of the block', async ({ page }) => {
  await open(page);
  await takeUp(page, 'Draw lines');
  const { x, y } = await onPage(page, [2, 3]);
  await page.touchscreen.tap(x, y);
  const said = page.getByRole('button', { name: 'Take it back' }).locator('xpath=..');
  await expect(said).toContainText('One end is down. Now the other, or type a length.');
  const box = (await said.boundingBox())!;
  expect(box.y).toBeGreaterThanOrEqual((await onPage(page, [0, 6])).y);
  const zoom = (await page.getByRole('button', { name: /^Zoom in/ }).boundingBox())!;
  expect(box.x + box.width).toBeLessThanOrEqual(zoom.x);
});
