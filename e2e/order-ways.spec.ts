import type { Page } from '@playwright/test';
import { goTo, open, openBlock, verdict } from './support/app.ts';
import { otherPicture, picture } from './support/order.ts';
import { expect, test } from './support/test.ts';

/** The figures of one way to sew the block, by their names, as the table shows them. */
async function figures(page: Page, way: string): Promise<Record<string, string>> {
  const table = page.getByRole('table', { name: 'Ways to sew the block' });
  await expect(table).toHaveAttribute('aria-busy', 'false');
  const heads = await table.getByRole('columnheader').allTextContents();
  const column = heads.findIndex((head) => head.includes(way));
  expect(column, `${way} is a column`).toBeGreaterThanOrEqual(0);
  const rows: Record<string, string> = {};
  for (const row of await table.getByRole('row').all()) {
    const cells = await row.getByRole('cell').allTextContents();
    if (cells.length < heads.length) continue;
    rows[(await row.getByRole('rowheader').textContent())!] = cells[column]!;
  }
  return rows;
}

test('ways to sew a block are compared by their figures, and one is chosen', async ({ page }) => {
  await open(page, '?demo');
  await openBlock(page, 'Lantern');
  await goTo(page, 'Order');
  // All fifteen patches of the lantern fit on one foundation, if the maker wants no smaller ones.
  await expect(verdict(page)).toHaveText('Sews on one foundation');
  const most = page.getByLabel('Most patches in a small section');
  await most.fill('6');
  await most.press('Enter');
  const fewest = await figures(page, 'Fewest foundations');
  const small = await figures(page, 'Small sections');
  expect(fewest).toMatchObject({ Foundations: '1', 'Match points': '0', 'Largest section': '15' });
  // 15 patches, no more than 6 in each.
  expect(Number(small.Foundations)).toBeGreaterThanOrEqual(3);
  expect(Number(small['Largest section'])).toBeLessThanOrEqual(6);
  expect(small['Joining seams']).toMatch(/^\d.* in$/);

  const before = await picture(page);
  await page.getByRole('radio', { name: 'Small sections' }).check();
  await expect(verdict(page)).toHaveText(`Sews on ${small.Foundations} foundations`);
  await otherPicture(page, before);
  await expect(page.getByRole('heading', { name: /^Section [A-Z]$/ })).toHaveCount(Number(small.Foundations));

  await page.getByRole('button', { name: 'Undo: Sew by small sections' }).click();
  await expect(page.getByRole('radio', { name: 'Fewest foundations' })).toBeChecked();
  await expect(verdict(page)).toHaveText('Sews on one foundation');
});

test('the ways are gone through by keys', async ({ page }) => {
  await open(page, '?demo');
  await openBlock(page, 'Lighthouse');
  await goTo(page, 'Order');
  await page.getByRole('radio', { name: 'Fewest foundations' }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('radio', { name: 'Most repetition' })).toBeChecked();
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('radio', { name: 'Small sections' })).toBeChecked();
  await expect(page.getByRole('radio', { name: 'Small sections' })).toBeFocused();
});

test('copies are shown as such, with how many to make', async ({ page }) => {
  await open(page, '?demo');
  await openBlock(page, 'Window panes');
  await goTo(page, 'Order');
  await expect(page.getByRole('group', { name: 'Section A' })).toContainText('Make 2: B is the same.');
  await expect(page.getByRole('group', { name: 'Section B' })).toContainText(
    /The same as A, (turned|moved)\./,
  );
});

test('a mirror image has a print of its own, at Order as at Paper', async ({ page }) => {
  await open(page, '?demo');
  await openBlock(page, 'Lighthouse');
  await goTo(page, 'Order');
  // Prints have one face: C, the other half of the lighthouse, cannot be sewn on those of B.
  const [b, c] = ['B', 'C'].map((letter) => page.getByRole('group', { name: `Section ${letter}` }));
  await expect(c!).toContainText('The mirror image of B, with a print of its own.');
  await expect(b!).not.toContainText('Make');
  // Five sections and two of them each other's mirror image: four that are different.
  const table = page.getByRole('table', { name: 'Ways to sew the block' });
  await expect(table.getByRole('row', { name: /^Different mirror images counted once 4/ })).toBeVisible();
  await goTo(page, 'Paper');
  await expect(page.getByText('5 foundations, 5 prints')).toBeVisible();
});

test('what a part of the panel hides, it hides on the next visit, too', async ({ page }) => {
  await open(page, '?demo');
  await goTo(page, 'Order');
  const table = page.getByRole('table', { name: 'Ways to sew the block' });
  await expect(table).toBeVisible();
  await page.getByText('Ways to sew it').click();
  await expect(table).toHaveCount(0);
  await page.reload();
  await expect(page.getByRole('heading', { name: 'Section A' })).toBeVisible();
  await expect(table).toHaveCount(0);
});
