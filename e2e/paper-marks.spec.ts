import { readFileSync } from 'node:fs';
import { goTo } from './support/app.ts';
import { openCutting } from './support/cutting.ts';
import { printing } from './support/paper.ts';
import { readPdf } from './support/pdf.ts';
import { expect, test } from './support/test.ts';

/** `3½ × 2` and `2 × 3½` are the same rectangle. */
const sidesOf = (size: string): string => size.replace(/ in$/, '').split(' × ').sort().join(' × ');

test('what the Cloth station cuts for each patch stands on the foundations, where that is wanted', async ({
  page,
}) => {
  const tables = await openCutting(page, 'Lantern');
  const rows = await tables.locator('tbody tr td:nth-child(2)').allInnerTexts();
  const charted = new Set(rows.map((cell) => sidesOf(cell.split('\n')[0]!)));

  await goTo(page, 'Paper');
  await printing(page).locator('summary', { hasText: 'On the foundations' }).click();
  const save = printing(page).getByRole('button', { name: 'Save PDF' });
  const saved = async () => {
    await expect(save).toBeEnabled();
    const [file] = await Promise.all([page.waitForEvent('download'), save.click()]);
    const words = readPdf(readFileSync(await file.path())).map(({ text }) => text);
    return words.join(' ').replace(/\s+/g, ' ');
  };
  const SIZES = /(?:cut|half of) ([\d¼½¾⅛⅜⅝⅞]+ × [\d¼½¾⅛⅜⅝⅞]+) in/g;
  expect([...(await saved()).matchAll(SIZES)]).toEqual([]);
  await printing(page).getByLabel('What to cut for each patch').check();
  const said = new Set([...(await saved()).matchAll(SIZES)].map(([, size]) => sidesOf(size!)));
  expect([...said].sort()).toEqual([...charted].sort());

  await page.reload();
  await expect(printing(page).getByLabel('What to cut for each patch')).toBeChecked();
});
