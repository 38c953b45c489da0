import type { Locator, Page } from '@playwright/test';
import { drop, goTo, open, openBlock, type Station } from './support/app.ts';
import { barriers } from './support/barriers.ts';
import { press, takeUp } from './support/draw.ts';
import { expect, test } from './support/test.ts';

const CYCLE = `<svg xmlns="http://www.w3.org/2000/svg" width="6in" height="6in" viewBox="0 0 3 3">
  <rect width="3" height="3"/><path d="M1 0V2M0 2H2M2 1V3M1 1H3"/></svg>`;

const aboutTheDrawing = (page: Page): Locator =>
  page.getByRole('complementary', { name: 'About the drawing' });

async function unfold(panel: Locator): Promise<void> {
  const folded = panel.locator('details:not([open]) > summary');
  while ((await folded.count()) > 0) await folded.first().click();
}

const STATIONS: readonly Station[] = ['Draft', 'Order', 'Cloth', 'Paper'];

test('nothing but a station’s own parts can be scrolled: the window itself stays where it is', async ({
  page,
}) => {
  await open(page, '?demo');
  for (const [width, height] of [
    [1280, 800],
    [390, 844],
    [640, 400],
  ] as const) {
    await page.setViewportSize({ width, height });
    for (const station of STATIONS) {
      await goTo(page, station);
      const beyond = () =>
        page.evaluate(() => {
          const { scrollWidth, scrollHeight } = document.scrollingElement!;
          return [scrollWidth - window.innerWidth, scrollHeight - window.innerHeight];
        });
      await expect.poll(beyond, `${station}, ${width} × ${height}`).toEqual([0, 0]);
    }
  }
});

for (const colorScheme of ['light', 'dark'] as const)
  test.describe(`${colorScheme} colours`, () => {
    test.use({ colorScheme });

    for (const station of STATIONS)
      test(`${station} has no serious barrier`, async ({ page }) => {
        await open(page, '?demo');
        await goTo(page, station);
        expect(await barriers(page)).toEqual([]);
      });

    test('nor has a block that cannot be sewn, at any station', async ({ page }) => {
      await open(page);
      await drop(page, [{ name: 'ring of five.svg', text: CYCLE }]);
      await expect(page.getByRole('button', { name: /^Verdict: / })).toContainText('Cannot be sewn');
      for (const station of STATIONS) {
        await goTo(page, station);
        expect(await barriers(page), station).toEqual([]);
      }
    });

    test('nor have the panels and dialogs', async ({ page }) => {
      await open(page, '?demo');
      await page.getByRole('button', { name: /^Seamwright/ }).click();
      expect(await barriers(page), 'pattern menu').toEqual([]);
      await page.keyboard.press('Escape');
      await page.getByRole('button', { name: /^Block: / }).click();
      expect(await barriers(page), 'blocks').toEqual([]);
      await page.keyboard.press('Escape');
      await page.getByRole('button', { name: /^Verdict: / }).click();
      expect(await barriers(page), 'verdict').toEqual([]);
      await page.keyboard.press('Escape');
      await page.keyboard.press('?');
      await expect(page.getByRole('dialog', { name: 'Keys' })).toBeVisible();
      expect(await barriers(page), 'keys').toEqual([]);
    });

    test('nor have the parts and dialogs of Paper', async ({ page }) => {
      await open(page, '?demo');
      await goTo(page, 'Paper');
      const printing = page.getByRole('region', { name: 'Printing' });
      await printing.getByRole('button', { name: /^Add 3/ }).click();
      for (const part of await printing.locator('summary').all()) await part.click();
      await page.getByRole('radio', { name: 'Full width' }).check();
      await expect(page.getByRole('navigation', { name: 'Map of the pages' })).toBeVisible();
      expect(await barriers(page), 'parts').toEqual([]);
      await printing.getByRole('button', { name: 'Measure the printer…' }).click();
      expect(await barriers(page), 'printer').toEqual([]);
      await page.keyboard.press('Escape');
      await printing.getByRole('button', { name: 'Save PNG…' }).click();
      expect(await barriers(page), 'picture').toEqual([]);
    });

    test('nor have what Draft opens, and the list of what was done', async ({ page }) => {
      await open(page, '?demo');
      await page.getByRole('button', { name: /^Block: / }).click();
      await page.getByRole('button', { name: 'Start from a traditional block…' }).click();
      await expect(page.getByTestId('shelf-verdict')).toContainText('Sews on');
      expect(await barriers(page), 'starting points').toEqual([]);
      await page.keyboard.press('Escape');
      await page.getByRole('button', { name: /^View: / }).click();
      await page.getByRole('radio', { name: '3 × 3' }).check();
      expect(await barriers(page), 'views').toEqual([]);
      await page.getByRole('button', { name: 'Fabrics of the pattern…' }).click();
      expect(await barriers(page), 'fabrics').toEqual([]);
      await page.getByRole('button', { name: 'Remove Slate' }).click();
      await page.getByRole('button', { name: 'Done', exact: true }).click();
      expect(await barriers(page), 'a notice that offers undo').toEqual([]);
      await page.getByRole('button', { name: 'What was done, step by step' }).click();
      expect(await barriers(page), 'what was done').toEqual([]);
    });

    test('nor has the panel of the drawing, unfolded, nor what it says of rubbish', async ({ page }) => {
      await open(page, '?demo');
      const panel = aboutTheDrawing(page);
      await unfold(panel);
      await panel.getByRole('textbox', { name: 'Length' }).fill('long');
      await panel.getByRole('textbox', { name: 'Width' }).fill('wide');
      await panel.getByRole('textbox', { name: 'Height' }).focus();
      await expect(panel.getByText('is not a length')).toHaveCount(2);
      expect(await barriers(page)).toEqual([]);
    });

    test('nor have the panels of what is in hand, unfolded', async ({ page }) => {
      await open(page, '?demo');
      const panel = aboutTheDrawing(page);
      await takeUp(page, 'Adjust');
      for (const [name, place] of [
        ['Point', [4, 1]],
        ['Line', [4, 3]],
        ['Patch', [1, 1]],
      ] as const) {
        await press(page, place);
        await expect(panel.getByRole('region', { name: 'In hand' })).toBeVisible();
        await unfold(panel);
        expect(await barriers(page), name).toEqual([]);
      }
      await page.keyboard.press('Control+a');
      expect(await barriers(page), 'several').toEqual([]);
    });

    test('nor have the outlines that one can begin with', async ({ page }) => {
      await open(page, '?demo');
      await takeUp(page, 'New outline');
      await press(page, [0, 0]);
      expect(await barriers(page), 'new outline').toEqual([]);
      await aboutTheDrawing(page).getByRole('button', { name: 'Another outline…' }).click();
      await expect(page.getByRole('dialog')).toBeVisible();
      expect(await barriers(page), 'another outline').toEqual([]);
    });
  });

test('targets are large enough for fingers and mice', async ({ browser, baseURL }) => {
  for (const [hasTouch, least] of [
    [false, 24],
    [true, 44],
  ] as const) {
    const context = await browser.newContext({ hasTouch, isMobile: hasTouch, baseURL: baseURL! });
    const page = await context.newPage();
    await open(page, '?demo');
    for (const station of STATIONS) {
      await goTo(page, station);
      // A label that holds its control is pressed like the control itself.
      const small = await page.locator('button:visible, select:visible, input:visible').evaluateAll(
        (controls, side) =>
          controls
            .map((control) => ({
              control,
              box: (control.closest('label') ?? control).getBoundingClientRect(),
            }))
            .filter(({ box }) => box.width < side - 2 || box.height < side - 2)
            .map(({ control, box }) => `${control.outerHTML.slice(0, 80)} ${box.width} × ${box.height}`),
        least,
      );
      expect(small, `${station}, at least ${least} px`).toEqual([]);
    }
    await context.close();
  }
});

test('single keys can be switched off', async ({ page }) => {
  await open(page, '?demo');
  await page.keyboard.press('?');
  await page.getByRole('checkbox', { name: 'Letters and signs alone work as keys' }).uncheck();
  await page.keyboard.press('Escape');
  await page.keyboard.press('2');
  await page.keyboard.press('u');
  await expect(page.getByRole('main', { name: 'Draft' })).toBeVisible();
  await expect(page.getByRole('radio', { name: 'Inches' })).toBeChecked();
  await openBlock(page, 'Lighthouse');
});

test('a patch is taken in hand on the canvas and in the list, and both show it', async ({ page }) => {
  await open(page, '?demo');
  await goTo(page, 'Order');
  const order = page.getByRole('list', { name: 'Piecing order of section A' });
  await order.getByRole('button', { name: /^A1/ }).focus();
  await page.keyboard.press('ArrowDown');
  await expect(order.getByRole('button', { name: /^A2/ })).toHaveAttribute('aria-pressed', 'true');
  const front = page.getByRole('application', { name: 'Front, as sewn' });
  const box = (await front.boundingBox())!;
  // The upper right corner of the boat block is sky: A3.
  await page.mouse.click(box.x + box.width - 40, box.y + box.height / 2 - box.width / 2 + 60);
  await expect(order.getByRole('button', { name: /^A3/ })).toHaveAttribute('aria-pressed', 'true');
  await expect(order.getByRole('button', { name: /^A2/ })).toHaveAttribute('aria-pressed', 'false');
});
