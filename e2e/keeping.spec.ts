import { drop, goTo, open, openBlock, problem, untilKept, verdict } from './support/app.ts';
import { expect, test } from './support/test.ts';

const HOUSE = `<svg xmlns="http://www.w3.org/2000/svg" width="6in" height="8in" viewBox="0 0 6 8">
  <title>Boathouse</title>
  <polygon points="0,3 3,0 6,3 6,8 0,8"/><line x1="0" y1="3" x2="6" y2="3"/><line x1="0" y1="5" x2="6" y2="5"/>
</svg>`;

test('a first visit begins with an empty block and offers the demo', async ({ page }) => {
  await open(page);
  await expect(page.getByRole('button', { name: 'Block: Block 1 6 × 6 in' })).toBeVisible();
  await expect(verdict(page)).toHaveText('Sews on one foundation: a single patch');
  await page.getByRole('button', { name: 'Look at the demo pattern' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Harbour Reading Room');
});

test('what was done is there after a reload, and can still be undone', async ({ page }) => {
  await open(page);
  await drop(page, [{ name: 'boathouse.svg', text: HOUSE }]);
  await expect(page.getByRole('button', { name: 'Block: Boathouse 6 × 8 in' })).toBeVisible();
  await goTo(page, 'Order');
  // No pause: leaving the page is what makes sure that it is kept.
  await page.reload();
  await expect(page.getByRole('main', { name: 'Order' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Block: Boathouse 6 × 8 in' })).toBeVisible();
  await expect(verdict(page)).toHaveText('Sews on one foundation');
  await page.getByRole('button', { name: 'Undo: Bring in “Boathouse”' }).click();
  await expect(page.getByRole('button', { name: 'Block: Block 1 6 × 6 in' })).toBeVisible();
  await page.keyboard.press('Control+Shift+z');
  await expect(page.getByRole('button', { name: 'Block: Boathouse 6 × 8 in' })).toBeVisible();
});

test('nothing can be drawn before the browser is ready to keep it', async ({ page }) => {
  // A browser that takes its time to open its database.
  await page.addInitScript(() => {
    const listen = EventTarget.prototype.addEventListener;
    IDBOpenDBRequest.prototype.addEventListener = function (type: string, heard: unknown) {
      const tell = heard as (event: Event) => void;
      const later = (event: Event) =>
        setTimeout(() => {
          Object.assign(window, { shownBefore: document.querySelector('main') !== null });
          tell(event);
        }, 400);
      listen.call(this, type, type === 'success' ? later : tell);
    };
  });
  await open(page);
  expect(await page.evaluate('shownBefore')).toBe(false);
  await drop(page, [{ name: 'boathouse.svg', text: HOUSE }]);
  await expect(page.getByRole('button', { name: 'Block: Boathouse 6 × 8 in' })).toBeVisible();
  await page.reload();
  await expect(page.getByRole('button', { name: 'Block: Boathouse 6 × 8 in' })).toBeVisible();
});

test('the demo does not take the place of what was drawn before', async ({ page }) => {
  await open(page);
  await drop(page, [{ name: 'boathouse.svg', text: HOUSE }]);
  await expect(page.getByRole('button', { name: 'Block: Boathouse 6 × 8 in' })).toBeVisible();
  await untilKept(page);
  await open(page, '?demo');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Harbour Reading Room');
  await page.getByRole('button', { name: /^Seamwright/ }).click();
  await page.getByRole('button', { name: 'Patterns kept in this browser…' }).click();
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^Untitled pattern/ })
    .click();
  await expect(page.getByRole('button', { name: 'Block: Boathouse 6 × 8 in' })).toBeVisible();
});

test('asking for the demo again and again keeps one demo, until something is changed in it', async ({
  page,
}) => {
  const kept = async () => {
    await page.getByRole('button', { name: /^Seamwright/ }).click();
    await page.getByRole('button', { name: 'Patterns kept in this browser…' }).click();
    const dialog = page.getByRole('dialog');
    await expect(dialog.getByRole('button', { name: /^Harbour/ }).first()).toBeVisible();
    const count = await dialog.getByRole('button', { name: /^Harbour/ }).count();
    await page.keyboard.press('Escape');
    return count;
  };
  await open(page, '?demo');
  await open(page, '?demo');
  expect(await kept()).toBe(1);
  await drop(page, [{ name: 'boathouse.svg', text: HOUSE }]);
  await expect(page.getByRole('button', { name: 'Block: Boathouse 6 × 8 in' })).toBeVisible();
  await untilKept(page);
  await open(page, '?demo');
  expect(await kept()).toBe(2);
});

test('a second tab gets a copy, and neither overwrites the other', async ({ page, context }) => {
  await open(page, '?demo');
  const second = await context.newPage();
  await second.goto('');
  await expect(second.getByText('is open in another tab')).toBeVisible();
  await openBlock(second, 'Lantern');
  await second.getByRole('button', { name: /^Block: / }).click();
  await second.getByRole('button', { name: 'Delete this block' }).click();
  await second.close({ runBeforeUnload: true });
  await page.reload();
  await openBlock(page, 'Lantern');
  await expect(problem(page)).toHaveCount(0);
});

test('the unit, the station and the paper are there after a reload', async ({ page }) => {
  await open(page, '?demo');
  await page.keyboard.press('u');
  await expect(page.getByRole('radio', { name: 'Centimetres' })).toBeChecked();
  await goTo(page, 'Paper');
  await page.getByRole('combobox', { name: 'Paper', exact: true }).selectOption('A4');
  await expect(page.getByRole('heading', { name: /sheets? of A4/ })).toBeVisible();
  await page.reload();
  await expect(page.getByRole('heading', { name: /sheets? of A4/ })).toBeVisible();
  await expect(page.getByRole('radio', { name: 'Centimetres' })).toBeChecked();
  await expect(page.getByLabel('Finished width')).toHaveValue('20.32 cm');
});

test('a kept pattern is deleted only when asked twice', async ({ page }) => {
  await open(page, '?demo');
  await page.getByRole('button', { name: /^Seamwright/ }).click();
  await page.getByRole('button', { name: 'New pattern' }).click();
  await page.getByRole('button', { name: /^Seamwright/ }).click();
  await page.getByRole('button', { name: 'Patterns kept in this browser…' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Delete “Harbour Reading Room”' }).click();
  await expect(dialog.getByRole('button', { name: 'Delete for good' })).toBeFocused();
  await expect(dialog.getByRole('button', { name: /^Harbour/ })).toBeVisible();
  await page.keyboard.press('Enter');
  await expect(dialog.getByText('Nothing is kept yet')).toBeVisible();
});

test('where the browser keeps nothing, it says so and works all the same', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', {
      get: () => {
        throw new DOMException('Storage is switched off', 'SecurityError');
      },
    });
  });
  await open(page, '?demo');
  await expect(problem(page)).toContainText('Save a pattern file before you leave');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Harbour Reading Room');
  await drop(page, [{ name: 'boathouse.svg', text: HOUSE }]);
  await expect(page.getByRole('button', { name: 'Block: Boathouse 6 × 8 in' })).toBeVisible();
  await expect(verdict(page)).toHaveText('Sews on one foundation');
});
