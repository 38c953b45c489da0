import { goTo, open, openBlock, stop, verdict } from './support/app.ts';
import { drag, holdEnds, onPage, press, takeUp } from './support/draw.ts';
import { HOUSE, HOUSE_LINES } from './support/house.ts';
import { guidePicture } from './support/picture.ts';
import { expect, test } from './support/test.ts';

/** The steps of docs/guide.md, one after the other, with its pictures. */

test('the guide: drawing a block', async ({ page }) => {
  await open(page);
  await takeUp(page, 'New outline');
  for (const corner of [...HOUSE, HOUSE[0]!]) await press(page, corner);
  await takeUp(page, 'Draw lines');
  for (const [from, to] of HOUSE_LINES.slice(0, 3)) await drag(page, from, to);
  // The last line on its way: its end catches the house's lower edge.
  const [from, to] = HOUSE_LINES[3]!;
  await press(page, from);
  const end = await onPage(page, to);
  await page.mouse.move(end.x + 2, end.y - 3);
  await expect(stop(page, 'Draft')).toContainText('4 patches');
  await guidePicture(page, 'guide-draft');
  await press(page, to);
  await expect(verdict(page)).toHaveText('Sews on one foundation');
});

test('the guide: a finding and its repair', async ({ page }) => {
  await open(page);
  await holdEnds(page);
  await drag(page, [0, 2], [4, 2]);
  await expect(verdict(page)).toContainText('1 error');
  await page.mouse.move(0, 0);
  await page.getByRole('button', { name: /^Verdict: / }).click();
  const verdictPanel = page.getByRole('region', { name: 'Verdict' });
  await expect(verdictPanel.getByRole('list', { name: 'Repairs of finding 1' })).toBeVisible();
  await guidePicture(page, 'guide-finding');
});

test('the guide: sections and their order', async ({ page }) => {
  await open(page, '?demo');
  await openBlock(page, 'Lighthouse');
  await goTo(page, 'Order');
  const ways = page.getByRole('table', { name: 'Ways to sew the block' });
  await expect(ways).toHaveAttribute('aria-busy', 'false');
  await expect(stop(page, 'Paper')).toContainText('sheets');
  await page.mouse.move(0, 0);
  await guidePicture(page, 'guide-order');
});

test('the guide: the sheets', async ({ page }) => {
  await open(page, '?demo');
  await openBlock(page, 'Lighthouse');
  await goTo(page, 'Paper');
  await expect(page.getByRole('img', { name: /^Page 1/ })).toBeVisible();
  await page.mouse.move(0, 0);
  await guidePicture(page, 'guide-paper');
});
