import { goTo, open, openBlock, stop } from './support/app.ts';
import { printing } from './support/paper.ts';
import { expect, test } from './support/test.ts';

test('sections that are alike share a foundation, unless the maker wants one for each', async ({ page }) => {
  await open(page, '?demo');
  await openBlock(page, 'Window panes');
  await goTo(page, 'Paper');
  const share = page.getByRole('checkbox', { name: 'One foundation for sections that are alike' });
  await expect(share).toBeChecked();
  await expect(share).toHaveAccessibleDescription('The same when turned: A and B.');
  await page.getByLabel('Finished width').fill('7');
  await page.getByLabel('Finished width').press('Enter');
  await expect(page.getByRole('img', { name: 'Page 1: foundation for A and B' })).toBeVisible();
  // One page, which is printed for each of the two.
  await expect(printing(page)).toContainText('One page, printed 2 times.');
  await expect(stop(page, 'Paper')).toContainText('2 sheets');

  await share.uncheck();
  await expect(page.getByRole('img', { name: 'Page 2: foundation B' })).toBeAttached();
  await expect(stop(page, 'Paper')).toContainText('2 sheets');

  await page.reload();
  await expect(share).not.toBeChecked();
  await share.check();
  await expect(page.getByRole('img', { name: /for A and B/ })).toBeVisible();

  // All of one piece: nothing to ask.
  await openBlock(page, 'Lantern');
  await expect(page.getByRole('img', { name: 'Page 1: foundation A' })).toBeVisible();
  await expect(share).toHaveCount(0);
});
