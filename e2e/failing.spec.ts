import { mkdir, writeFile } from 'node:fs/promises';
import { test as base, chromium, type Page } from '@playwright/test';
import { drop, goTo, open, problem, untilKept, verdict } from './support/app.ts';
import { drag } from './support/draw.ts';
import { expect, test, watchPage } from './support/test.ts';

/** What the program does where the browser, or the way to its own parts, fails. */

const STRIPS = `<svg xmlns="http://www.w3.org/2000/svg" width="6in" height="6in" viewBox="0 0 6 6">
  <title>Two strips</title><rect width="6" height="6"/><line x1="2" y1="0" x2="2" y2="6"/></svg>`;

test('in a browser that keeps nothing for any page, blocks are drawn and printed, and it says so', async ({
  baseURL,
  launchOptions,
}, info) => {
  const profile = info.outputPath('profile');
  await mkdir(`${profile}/Default`, { recursive: true });
  // As “Block all cookies and site data” in the browser’s own settings.
  const blocked = { profile: { default_content_setting_values: { cookies: 2 } } };
  await writeFile(`${profile}/Default/Preferences`, JSON.stringify(blocked));
  const context = await chromium.launchPersistentContext(profile, { ...launchOptions, baseURL: baseURL! });
  const page = context.pages()[0]!;
  const breaches = watchPage(page, baseURL!);
  await open(page);
  expect(await page.evaluate(() => navigator.locks.request('x', () => 'held').catch((e) => e.name))).toBe(
    'SecurityError',
  );
  await drag(page, [2, 0], [2, 6]);
  await expect(verdict(page)).toHaveText('Sews on one foundation');
  await expect(problem(page)).toContainText('This browser does not keep the pattern');
  await goTo(page, 'Paper');
  await expect(page.getByRole('button', { name: 'Save PDF' })).toBeEnabled();
  expect(breaches).toEqual([]);
  await context.close();
});

for (const [when, late] of [
  ['', 0],
  [', though the page is told of it late', 3000],
] as const)
  test(`after the browser has cleared what it kept, what is done next is kept again${when}`, async ({
    page,
    context,
    baseURL,
  }) => {
    await page.addInitScript((wait) => {
      const listen = EventTarget.prototype.addEventListener;
      IDBDatabase.prototype.addEventListener = function (type: string, heard: unknown) {
        const tell = heard as (event: Event) => void;
        listen.call(this, type, type === 'close' ? (event) => setTimeout(tell, wait, event) : tell);
      };
    }, late);
    await open(page, '?demo');
    const session = await context.newCDPSession(page);
    await session.send('Storage.clearDataForOrigin', {
      origin: new URL(baseURL!).origin,
      storageTypes: 'indexeddb',
    });
    await drop(page, [{ name: 'two strips.svg', text: STRIPS }]);
    await expect(page.getByRole('button', { name: /^Block: Two strips/ })).toBeVisible();
    await untilKept(page);
    await page.reload();
    await expect(page.getByRole('heading', { level: 1 })).toContainText('Harbour Reading Room');
    await expect(page.getByRole('button', { name: /^Block: Two strips/ })).toBeVisible();
  });

/** From now on, parts of the program cannot be loaded, as when the way to its server is lost; until what is returned is called. */
async function loses(page: Page, parts: RegExp): Promise<() => Promise<void>> {
  await page.route(parts, (route) => route.abort());
  return () => page.unroute(parts);
}

// Errors are what is looked for here, so nobody watches the page for them.

base('where the fonts do not come, the page is shown in others', async ({ page }) => {
  await loses(page, /\.woff2$/);
  await open(page, '?demo');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Harbour Reading Room');
});

base(
  'sheets that a part of the program is missing for are said to fail, and laid out when it is there',
  async ({ page }) => {
    const find = await loses(page, /\/later-[^/]*\.js$/);
    await open(page, '?demo');
    await goTo(page, 'Paper');
    await expect(page.getByText('The sheets could not be laid out.')).toBeVisible();
    await find();
    await page.getByRole('button', { name: 'Lay them out' }).click();
    await expect(page.getByRole('button', { name: 'Save PDF' })).toBeEnabled();
  },
);

base(
  'what cannot be worked out leaves no other answer standing, and is worked out once it can be',
  async ({ page }) => {
    await open(page, '?demo');
    await goTo(page, 'Cloth');
    await page.getByRole('radio', { name: 'Cut and buy' }).check();
    // A chart can be saved where there is one.
    const save = page.getByRole('button', { name: 'Save the chart as CSV' });
    await expect(save).toBeVisible();
    const find = await loses(page, /\/highs[^/]*\.(js|wasm)$/);
    await page.getByRole('radio', { name: 'All 5 blocks' }).check();
    await expect(page.getByText('What to cut could not be worked out.')).toBeVisible();
    await expect(save).toHaveCount(0);
    await find();
    await page.getByRole('radio', { name: 'This block' }).check();
    await page.getByRole('radio', { name: 'All 5 blocks' }).check();
    await expect(save).toBeVisible();
    await expect(page.getByText('What to cut could not be worked out.')).toHaveCount(0);
  },
);
