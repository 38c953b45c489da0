import { readFileSync } from 'node:fs';
import { choose, drop, goTo, open, problem } from './support/app.ts';
import { expect, test } from './support/test.ts';

/** What the Cloth station says of input that it cannot use, and that nothing is lost by it. */

/** Two patches, each 3 in high and 42 in long. */
const LONG = `<svg xmlns="http://www.w3.org/2000/svg" width="42in" height="6in" viewBox="0 0 42 6">
  <rect width="42" height="6"/><path d="M0 3H42"/></svg>`;

test('a usable width that is none is refused; a piece too long for it runs along the fabric, one too large is named', async ({
  page,
}) => {
  await open(page);
  await drop(page, [{ name: 'banner.svg', text: LONG }]);
  await goTo(page, 'Cloth');
  await page.getByRole('radio', { name: 'Cut and buy' }).press('Space');
  await expect(page.getByText(/A1.*cut along the length of the fabric/)).toBeVisible();
  const width = page.getByRole('textbox', { name: 'Usable width of fabric' });
  await width.fill('0');
  await width.press('Enter');
  await expect(problem(page)).toHaveText('0 in is too small. Type at least 4 in.');
  await width.fill('4');
  await width.press('Enter');
  await expect(problem(page)).toHaveCount(0);
  await expect(page.getByText(/A1.*cut along the length of the fabric/)).toBeVisible();
  await page.getByRole('textbox', { name: 'Spare' }).fill('1');
  await page.getByRole('textbox', { name: 'Spare' }).press('Enter');
  await expect(
    page.getByText(/A1.*choose a wider fabric, or divide the patch; nothing is planned for it/),
  ).toBeVisible();
});

test('a fabric that is taken away while patches are cut from it comes back by Undo, patches and all', async ({
  page,
}) => {
  await open(page, '?demo');
  await goTo(page, 'Cloth');
  const patches = page.getByRole('list', { name: 'Patches' }).getByRole('button');
  const before = await patches.allInnerTexts();
  expect(before.some((text) => text.includes('Sailcloth'))).toBe(true);
  await page.getByRole('button', { name: 'Change the fabrics…' }).click();
  await page.getByRole('button', { name: 'Remove Sailcloth' }).click();
  await expect(page.getByRole('button', { name: /^More about/ }).first()).toBeFocused();
  await page.getByRole('button', { name: 'Done', exact: true }).click();
  await expect(
    page.getByText(
      /^Removed the fabric “Sailcloth”\. \d+ patches have none now, \d+ of them in other blocks\.$/,
    ),
  ).toBeVisible();
  expect(await patches.allInnerTexts()).toEqual(
    before.map((text) => text.replace('Sailcloth', 'no fabric yet')),
  );
  await page.getByRole('radio', { name: 'Cut and buy' }).press('Space');
  await expect(page.getByRole('table', { name: 'Cut from fabric not chosen yet' })).toBeVisible();
  await page.getByRole('radio', { name: 'Choose fabrics' }).press('Space');
  await page.keyboard.press('Control+z');
  await expect.poll(() => patches.allInnerTexts()).toEqual(before);
});

test('a picture that cannot be read is said to be none, for a fabric and for a palette', async ({ page }) => {
  await open(page, '?demo');
  await goTo(page, 'Cloth');
  const patches = page.getByRole('list', { name: 'Patches' }).getByRole('button');
  const before = await patches.allInnerTexts();
  const broken = { name: 'linen.png', mimeType: 'image/png', buffer: Buffer.from('no picture at all') };
  const dialog = page.getByRole('dialog');
  const give = async (button: string) => {
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      dialog.getByRole('button', { name: button }).click(),
    ]);
    await chooser.setFiles(broken);
    await expect(dialog.getByRole('alert')).toContainText(/“linen\.png”: .+\. .+/);
    return dialog.getByRole('alert').textContent();
  };
  await page.getByRole('button', { name: 'Change the fabrics…' }).click();
  await page.getByRole('button', { name: 'More about Sea mist' }).click();
  const said = await give('A photo of it…');
  await page.getByRole('button', { name: 'Done', exact: true }).click();
  await page.getByRole('button', { name: 'Palettes…' }).click();
  expect(await give('Draw one from a picture…')).toBe(said);
  await page.keyboard.press('Escape');
  expect(await patches.allInnerTexts()).toEqual(before);
});

test('a pattern file with a colour that is none is not opened, and says which', async ({ page }) => {
  await open(page, '?demo');
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')]);
  const text = readFileSync(await download.path(), 'utf8');
  const wrong = text.replace(/("colour": ?)"#[0-9a-f]{6}"/, '$1"seagreen-ish"');
  expect(wrong).not.toBe(text);
  await choose(page, { name: 'boat.json', mimeType: 'application/json', buffer: Buffer.from(wrong) });
  await expect(problem(page)).toHaveText(
    /“boat\.json”: .* has to be a colour: .* \(fabrics\[0\]\.colour\)\./,
  );
  await expect(page.getByRole('button', { name: 'Block: Paper boat' })).toBeVisible();
});
