import type { Page } from '@playwright/test';
import { open, openBlock, verdict } from './support/app.ts';
import { expect, test } from './support/test.ts';

const dialog = (page: Page) => page.getByRole('dialog', { name: 'Starting points' });
const said = (page: Page) => page.getByTestId('shelf-verdict');
const blockMenu = (page: Page) => page.getByRole('button', { name: /^Block: / });
const blocks = (page: Page) => page.getByRole('list', { name: 'Blocks', exact: true });
const names = async (page: Page) =>
  (await blocks(page).getByRole('button').allInnerTexts()).map((text) => text.split('\n')[0]);

test.describe('the shelf of starting points', () => {
  test('a first visit starts from a traditional block in a size of its own', async ({ page }) => {
    await open(page);
    await page.getByRole('button', { name: 'Start from a traditional block' }).click();
    await expect(dialog(page).getByLabel('Look for')).toBeFocused();
    await page.keyboard.type('ohio');
    await expect(dialog(page).getByRole('radio')).toHaveCount(1);
    await expect(dialog(page).getByRole('region', { name: 'Ohio star' })).toBeVisible();
    await dialog(page).getByRole('radio', { name: 'Ohio star' }).check();
    await expect(said(page)).toContainText('12 × 12 in, 21 patches. Sews on ');
    await dialog(page).getByLabel('Finished side').fill('7 1/2');
    await page.keyboard.press('Enter');
    await expect(said(page)).toContainText('7½ × 7½ in, 21 patches. ');
    const promised = /Sews on [^.]*/.exec((await said(page).textContent()) ?? '')![0];
    await expect(dialog(page)).toContainText('Takes the place of the empty block.');
    await dialog(page).getByRole('button', { name: 'Start from this' }).click();
    await expect(dialog(page)).toBeHidden();
    await expect(page.getByRole('button', { name: 'Block: Ohio star 7½ × 7½ in' })).toBeVisible();
    await expect(verdict(page)).toHaveText(promised);
    await blockMenu(page).click();
    await expect(blocks(page).getByRole('listitem')).toHaveCount(1);
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Undo: Start from Ohio star' }).click();
    await expect(page.getByRole('button', { name: 'Block: Block 1 6 × 6 in' })).toBeVisible();
  });

  test('by keys alone, beside the blocks that are there', async ({ page }) => {
    await open(page, '?demo');
    await blockMenu(page).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Start from a traditional block…' }).press('Enter');
    await expect(dialog(page).getByLabel('Look for')).toBeFocused();
    await page.keyboard.press('Tab');
    await expect(dialog(page).getByRole('radio', { name: 'Log cabin', exact: true })).toBeFocused();
    await page.keyboard.press('ArrowRight');
    await expect(dialog(page).getByRole('radio', { name: 'Courthouse steps' })).toBeChecked();
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await expect(dialog(page).getByLabel('Rounds')).toBeFocused();
    await page.keyboard.type('2');
    await page.keyboard.press('Tab');
    await expect(said(page)).toContainText('9 patches');
    await dialog(page).getByRole('button', { name: 'Start from this' }).press('Enter');
    await expect(page.getByRole('button', { name: /^Block: Courthouse steps/ })).toBeVisible();
    await expect(page.getByRole('main')).toBeFocused();
    await blockMenu(page).click();
    await expect
      .poll(async () => (await names(page)).slice(0, 3))
      .toEqual(['Paper boat', 'Courthouse steps', 'Lantern']);
  });

  test('rubbish stays in its field with a sentence, and what is not there is said', async ({ page }) => {
    await open(page);
    await page.getByRole('button', { name: 'Start from a traditional block' }).click();
    const rounds = dialog(page).getByLabel('Rounds');
    await rounds.fill('many');
    await rounds.press('Enter');
    await expect(dialog(page).getByRole('alert')).toContainText('Type a whole number from 1 to');
    await expect(rounds).toHaveValue('many');
    // What is refused is not made of the measure that was there before.
    const start = dialog(page).getByRole('button', { name: 'Start from this' });
    await expect(said(page)).toHaveText('Type another measure above to see what comes of it.');
    await expect(start).toBeDisabled();
    await start.click({ force: true });
    await expect(dialog(page)).toBeVisible();
    await rounds.press('Escape');
    await expect(rounds).toHaveValue('4');
    await expect(start).toBeEnabled();
    await expect(said(page)).toContainText('12 × 12 in');
    await dialog(page).getByLabel('Look for').fill('zeppelin');
    await expect(dialog(page)).toContainText('No starting point is called, or described as, “zeppelin”.');
    await expect(start).toHaveCount(0);
    await dialog(page).getByRole('button', { name: 'Show them all' }).click();
    await expect(dialog(page).getByRole('region', { name: 'Log cabin', exact: true })).toBeVisible();
    expect(await dialog(page).getByRole('radio').count()).toBeGreaterThanOrEqual(24);
    await page.keyboard.press('Escape');
    await expect(dialog(page)).toBeHidden();
  });
});

/** Opens the demo's list of blocks and takes the first row by its grip, with the mouse; where it would be put in the third's place. */
async function takeFirstRow(page: Page): Promise<{ x: number; y: number }> {
  await open(page, '?demo');
  await blockMenu(page).click();
  const rows = blocks(page).getByRole('listitem');
  const grip = rows.nth(0).locator('svg').last();
  const [from, to] = [(await grip.boundingBox())!, (await rows.nth(2).boundingBox())!];
  await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
  await page.mouse.down();
  return { x: from.x, y: to.y + to.height / 2 };
}

test.describe('the blocks of a pattern', () => {
  test('are put in another order by dragging and by keys', async ({ page }) => {
    const third = await takeFirstRow(page);
    await page.mouse.move(third.x, third.y, { steps: 5 });
    await page.mouse.up();
    await expect
      .poll(async () => (await names(page)).slice(0, 3))
      .toEqual(['Lantern', 'Lighthouse', 'Paper boat']);
    const boat = blocks(page).getByRole('button', { name: /^Paper boat/ });
    await boat.focus();
    await page.keyboard.press('Alt+ArrowUp');
    await expect(boat).toBeFocused();
    await page.keyboard.press('Alt+ArrowUp');
    await expect.poll(() => names(page).then((all) => all[0])).toBe('Paper boat');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Control+z');
    await blockMenu(page).click();
    await expect
      .poll(async () => (await names(page)).slice(0, 3))
      .toEqual(['Lantern', 'Paper boat', 'Lighthouse']);
  });

  test('a row comes where it is let go, though the page has not shown it there yet', async ({ page }) => {
    const third = await takeFirstRow(page);
    // A page that is busy hears of the move and of the release together.
    const heard = page.evaluate(
      () =>
        new Promise<void>((done) =>
          setTimeout(() => {
            const until = performance.now() + 1000;
            while (performance.now() < until);
            done();
          }),
        ),
    );
    await Promise.all([heard, page.mouse.move(third.x, third.y), page.mouse.up()]);
    await expect
      .poll(async () => (await names(page)).slice(0, 3))
      .toEqual(['Lantern', 'Lighthouse', 'Paper boat']);
  });

  test('a deleted one is offered back', async ({ page }) => {
    await open(page, '?demo');
    await openBlock(page, 'Lantern');
    await blockMenu(page).click();
    await page.getByRole('button', { name: 'Delete this block' }).click();
    const notice = page.getByRole('status').filter({ hasText: 'Deleted the block “Lantern”.' });
    await notice.getByRole('button', { name: 'Undo' }).click();
    await expect(page.getByRole('button', { name: /^Block: Lantern/ })).toBeVisible();
    await expect(page.getByText('Deleted the block')).toBeHidden();
  });

  test('many of them scroll, long names are cut to two lines, and what can be done stays in reach', async ({
    page,
  }) => {
    await open(page, '?demo');
    await blockMenu(page).click();
    await page.getByRole('button', { name: 'Rename “Paper boat”…' }).click();
    const long = 'The paper boat that was folded from the last page of a newspaper on a wet Sunday afternoon';
    await page.getByRole('dialog').getByLabel('Name of the block').fill(long);
    await page.keyboard.press('Enter');
    for (let copies = 0; copies < 12; copies++) {
      await blockMenu(page).click();
      await page.getByRole('button', { name: 'Copy this block' }).click();
    }
    await blockMenu(page).click();
    await expect(blocks(page).getByRole('listitem')).toHaveCount(17);
    const [list, last] = [
      (await blocks(page).boundingBox())!,
      (await page.getByRole('button', { name: 'Delete this block' }).boundingBox())!,
    ];
    expect(list.height).toBeLessThan(400);
    expect(last.y + last.height).toBeLessThan(800);
    for (const row of await blocks(page).getByRole('listitem').all())
      expect((await row.boundingBox())!.height).toBeLessThan(84);
    await expect(blocks(page).locator('[aria-current=true]')).toBeInViewport();
  });
});
