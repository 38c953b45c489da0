import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { choose, drop, goTo, open, problem, verdict } from './support/app.ts';
import { expect, test } from './support/test.ts';

const pattern = async (page: Page): Promise<string> => {
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')]);
  return readFileSync(await download.path(), 'utf8');
};

test('a pattern file that was saved opens again as it was', async ({ page }) => {
  await open(page, '?demo');
  const saved = await pattern(page);
  await page.getByRole('button', { name: /^Seamwright/ }).click();
  await page.getByRole('button', { name: 'New pattern' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Untitled pattern');
  await choose(page, {
    name: 'demo.seamwright.json',
    mimeType: 'application/json',
    buffer: Buffer.from(saved),
  });
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Harbour Reading Room');
  await expect(verdict(page)).toBeVisible();
  expect(await pattern(page)).toBe(saved);
});

test('on a telephone what is said of a drawing can be read whole, with what can be done about it below', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page);
  const text = `<svg xmlns="http://www.w3.org/2000/svg" width="4in" height="4in" viewBox="0 0 4 4"><rect width="4" height="4"/></svg>`;
  await drop(page, [{ name: 'the harbour wall by the long pier.svg', text }]);
  const words = page.getByText('Brought in “the harbour wall by the long pier.svg”.');
  await expect(words).toBeVisible();
  expect(await words.evaluate((element) => element.scrollHeight - element.clientHeight)).toBe(0);
  const [said, offer] = [words, page.getByRole('button', { name: 'Trace it as a picture instead' })];
  const [above, below] = [(await said.boundingBox())!, (await offer.boundingBox())!];
  expect(below.y).toBeGreaterThanOrEqual(above.y + above.height);
});

test('an SVG drawing becomes a block, with a word on what was not read', async ({ page }) => {
  await open(page, '?demo');
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="4in" height="4in" viewBox="0 0 4 4">
    <rect width="4" height="4"/><line x1="2" y1="0" x2="2" y2="4"/><circle cx="2" cy="2" r="1"/>
  </svg>`;
  await choose(page, { name: 'two strips.svg', mimeType: 'image/svg+xml', buffer: Buffer.from(svg) });
  await expect(page.getByRole('button', { name: 'Block: two strips 4 × 4 in' })).toBeVisible();
  await expect(verdict(page)).toHaveText('Sews on one foundation');
  await expect(page.getByRole('status').filter({ hasText: 'Brought in “two strips.svg”.' })).toBeVisible();
  await goTo(page, 'Order');
  await expect(page.getByRole('list', { name: 'Piecing order of section A' }).getByRole('button')).toHaveText(
    ['A1laid first', 'A2sewn to A1'],
  );
});

const wrong: readonly { what: string; name: string; text: string; says: RegExp }[] = [
  { what: 'is not XML', name: 'torn.svg', text: '<svg><rect', says: /torn\.svg/ },
  {
    what: 'has no closed shape',
    name: 'loose.svg',
    text: '<svg xmlns="http://www.w3.org/2000/svg" width="4in" height="4in"><line x2="9" y2="9"/></svg>',
    says: /no closed shape/,
  },
  {
    what: 'nests entities',
    name: 'laughs.svg',
    text: `<!DOCTYPE svg [<!ENTITY a "ha"><!ENTITY b "&a;&a;">]><svg xmlns="http://www.w3.org/2000/svg"><title>&b;</title></svg>`,
    says: /entit/i,
  },
  {
    what: 'is a pattern cut short',
    name: 'short.json',
    text: '{"format": "seamwright-pattern/1", "title": "Qu',
    says: /cut short/,
  },
  {
    what: 'is a pattern of a later version',
    name: 'later.json',
    text: '{"format": "seamwright-pattern/99", "title": "Quilt"}',
    says: /later version/,
  },
  {
    what: 'has an unknown field',
    name: 'odd.json',
    text: '{"format": "seamwright-pattern/1", "title": "Quilt", "unit": "in", "blocks": [], "glitter": 1}',
    says: /glitter|block/,
  },
  { what: 'is no pattern at all', name: 'list.txt', text: 'milk, bread, thread', says: /no pattern file/ },
  { what: 'is empty', name: 'empty.json', text: '', says: /empty/ },
];

for (const { what, name, text, says } of wrong)
  test(`a file that ${what} gives one sentence and leaves the open work as it was`, async ({ page }) => {
    await open(page, '?demo');
    const before = await pattern(page);
    await drop(page, [{ name, text }]);
    await expect(problem(page)).toHaveText(says);
    await expect(problem(page)).toContainText(name);
    expect(await pattern(page)).toBe(before);
    await page.getByRole('button', { name: 'Dismiss' }).click();
    await expect(problem(page)).toHaveCount(0);
  });

test('a file of 50 MB is refused before it is read', async ({ page }) => {
  await open(page, '?demo');
  const before = await pattern(page);
  await page.evaluate(() => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File([new Uint8Array(50_000_000).fill(32)], 'huge.svg'));
    document.body.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
  });
  await expect(problem(page)).toHaveText(/“huge\.svg” has 50 MB/);
  expect(await pattern(page)).toBe(before);
});
