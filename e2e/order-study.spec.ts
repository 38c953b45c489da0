import { drop, goTo, open, stop, verdict } from './support/app.ts';
import { drag } from './support/draw.ts';
import { expect, test } from './support/test.ts';

/** Lines right across a square: n × n patches. */
function grid(n: number): string {
  const lines = Array.from({ length: n - 1 }, (_, i) => ((i + 1) * 10) / n);
  const path = lines.map((at) => `M${at} 0V10M0 ${at}H10`).join('');
  return `<svg xmlns="http://www.w3.org/2000/svg" width="10in" height="10in" viewBox="0 0 10 10">
    <title>Grid</title><rect width="10" height="10"/><path d="${path}"/></svg>`;
}

test('100,000 patches give one sentence, and the page goes on working', async ({ page }) => {
  await open(page);
  await drag(page, [0, 3], [6, 3]);
  await drop(page, [{ name: 'grid.svg', text: grid(317) }]);
  // While it is looked at, the stations open and the drawing can be left.
  await goTo(page, 'Order');
  await goTo(page, 'Draft');
  await expect(verdict(page)).toHaveText(
    'The lines make 100,489 patches, and no more than 5,000 are worked on at once.',
  );
  await expect(stop(page, 'Paper')).toContainText('no sheets yet');
  await page.keyboard.press('Control+z');
  await expect(verdict(page)).toHaveText('Sews on one foundation');
});

/** Four stars of nine squares, the side squares of each cut in four: all lines that run from edge to edge are cut short. */
function fourStars(): string {
  const star = (x: number, y: number) => {
    const lines = [1, 2].map((i) => `M${x + i} ${y}V${y + 3}M${x} ${y + i}H${x + 3}`);
    const crosses = [
      [x + 1, y],
      [x, y + 1],
      [x + 2, y + 1],
      [x + 1, y + 2],
    ].map(([left, top]) => `M${left} ${top}l1 1M${left! + 1} ${top}l-1 1`);
    return [...lines, ...crosses].join('');
  };
  return `<svg xmlns="http://www.w3.org/2000/svg" width="6in" height="6in" viewBox="0 0 6 6">
    <title>Stars</title><rect width="6" height="6"/>
    <path d="M3 0V6M0 3H6${star(0, 0)}${star(3, 0)}${star(0, 3)}${star(3, 3)}"/></svg>`;
}

test('a quick answer shows at once, says that fewer are looked for, and is refined in its place', async ({
  page,
}) => {
  await open(page);
  await page.evaluate(() => {
    const words = document.querySelector('[data-testid=verdict]')!;
    const told: string[] = [];
    new MutationObserver(() => told.push(words.textContent)).observe(words, {
      characterData: true,
      childList: true,
      subtree: true,
    });
    Object.assign(window, { told });
  });
  const place = (await page.getByTestId('verdict').boundingBox())!;
  await drop(page, [{ name: 'stars.svg', text: fourStars() }]);
  // The fewest, counted by the solver's own tests (packages/sewing/test/blocks.test.ts) and proved by its bound.
  await expect(verdict(page)).toHaveText('Sews on 16 foundations');
  const told = await page.evaluate(() => (window as unknown as { told: string[] }).told);
  expect(told.some((words) => /^Sews on \d+ foundations · looking for fewer$/.test(words))).toBe(true);
  const now = (await page.getByTestId('verdict').boundingBox())!;
  expect([now.y, now.height]).toEqual([place.y, place.height]);
});

test('an edit while a large drawing is looked at replaces it', async ({ page }) => {
  await open(page);
  await drop(page, [{ name: 'grid.svg', text: grid(317) }]);
  await expect(page.getByTestId('verdict')).toHaveAttribute('data-stale', 'true');
  // Longer than a question is waited for when there is a newer one.
  await page.waitForTimeout(2000);
  await page.keyboard.press('Control+z');
  // The worker that looks at it is ended, and another may have to be started: much sooner than the grid would be done.
  await expect(verdict(page)).toHaveText('Sews on one foundation: a single patch');
});

test('thousands of patches are answered, shown in closed sections, and can be taken in hand', async ({
  page,
}) => {
  await open(page);
  await drop(page, [{ name: 'grid.svg', text: grid(40) }]);
  // A grid of n × n squares takes n foundations: its rows (n crossings on each line, none of which a join may pass).
  await expect(verdict(page)).toHaveText(/^Sews on 40 foundations/);
  await goTo(page, 'Order');
  await expect(page.getByRole('heading', { name: /^Section / })).toHaveCount(40);
  await expect(page.getByRole('list', { name: /^Piecing order/ })).toHaveCount(0);
  await page.getByRole('application', { name: 'Front, as sewn' }).click({ position: { x: 200, y: 300 } });
  await expect(page.getByRole('list', { name: /^Piecing order/ })).toHaveCount(1);
});
