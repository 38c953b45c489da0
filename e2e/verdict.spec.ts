import type { Page } from '@playwright/test';
import { open, stop, verdict } from './support/app.ts';
import { drag, onPage, takeUp } from './support/draw.ts';
import { expect, test } from './support/test.ts';

/** A level line across the block, and an upright one that ends on it. */
async function drawTwoLines(page: Page): Promise<void> {
  await drag(page, [0, 3], [6, 3]);
  await drag(page, [3, 0], [3, 3]);
}

/** Drags the upper end of the upright line to and fro, and gives how many frames showed a verdict of what was before. */
async function staleFramesOfDrag(page: Page): Promise<number> {
  const from = await onPage(page, [3, 0]);
  const to = await onPage(page, [4, 0]);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.evaluate(() => {
    const words = document.querySelector<HTMLElement>('[data-testid=verdict]')!;
    const watch = window as unknown as { stale: number; seen: Set<string>; watching: boolean };
    Object.assign(watch, { stale: 0, seen: new Set(), watching: true });
    const look = () => {
      if (words.dataset.stale === 'true') watch.stale += 1;
      watch.seen.add(words.dataset.drawing!);
      if (watch.watching) requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  });
  await page.mouse.move(to.x, to.y, { steps: 8 });
  // It is about several drawings meanwhile, however slow whoever answers is.
  await page.waitForFunction(() => (window as unknown as { seen: Set<string> }).seen.size > 1);
  await page.mouse.move(from.x, from.y, { steps: 8 });
  const stale = await page.evaluate(() => {
    const watch = window as unknown as { stale: number; watching: boolean };
    watch.watching = false;
    return watch.stale;
  });
  await page.mouse.up();
  return stale;
}

test('the verdict is painted with the move that it is about, once the page is in practice', async ({
  page,
}) => {
  await open(page);
  await drawTwoLines(page);
  await takeUp(page, 'Adjust');
  await expect(async () => expect(await staleFramesOfDrag(page)).toBe(0)).toPass();
  await expect(verdict(page)).toHaveText('Sews on one foundation');
});

test('what is undone and done again between two frames has its verdict', async ({ page }) => {
  await open(page);
  await drawTwoLines(page);
  await drag(page, [0, 5], [6, 5]);
  await expect(verdict(page)).toHaveText('Sews on one foundation');
  // The page answers by now, and no better plan is looked for.
  await expect(stop(page, 'Paper')).toContainText('1 sheet');
  await page.evaluate(() => {
    for (const shiftKey of [false, false, true])
      document.body.dispatchEvent(
        new KeyboardEvent('keydown', { key: 'z', ctrlKey: true, shiftKey, bubbles: true, cancelable: true }),
      );
  });
  await expect(stop(page, 'Draft')).toContainText('3 patches');
  await expect(verdict(page)).toHaveText('Sews on one foundation');
  await expect(stop(page, 'Paper')).toContainText('1 sheet');
});

test('while the page cannot answer, the worker does', async ({ page }) => {
  let withheld = 0;
  // Never answered: as on a line that hardly carries anything.
  await page.route(/\/in-page-[^/]*\.js$/, () => {
    withheld += 1;
  });
  await open(page);
  await drawTwoLines(page);
  await expect(verdict(page)).toHaveText('Sews on one foundation');
  await takeUp(page, 'Adjust');
  expect(await staleFramesOfDrag(page)).toBeGreaterThan(0);
  await expect(verdict(page)).toHaveText('Sews on one foundation');
  expect(withheld).toBe(1);
});
