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
    { timeout: 40_000 },
  );
  await expect(stop(page, 'Paper')).toContainText('no sheets yet');
  await page.keyboard.press('Control+z');
  await expect(verdict(page)).toHaveText('Sews on one foundation');
});

test('an edit while a large drawing is looked at replaces it', async ({ page }) => {
  await open(page);
  await drop(page, [{ name: 'grid.svg', text: grid(317) }]);
  await expect(page.getByTestId('verdict')).toHaveAttribute('data-stale', 'true');
  // Longer than a question is waited for when there is a newer one.
  await page.waitForTimeout(2000);
  await page.keyboard.press('Control+z');
  await expect(verdict(page)).toHaveText('Sews on one foundation: a single patch');
});

test('thousands of patches are answered, shown in closed sections, and can be taken in hand', async ({
  page,
}) => {
  await open(page);
  await drop(page, [{ name: 'grid.svg', text: grid(40) }]);
  // A grid of n × n squares takes n foundations: its rows (n crossings on each line, none of which a join may pass).
  await expect(verdict(page)).toHaveText(/^Sews on 40 foundations/, { timeout: 30_000 });
  await goTo(page, 'Order');
  await expect(page.getByRole('heading', { name: /^Section / })).toHaveCount(40);
  await expect(page.getByRole('list', { name: /^Piecing order/ })).toHaveCount(0);
  await page.getByRole('application', { name: 'Front, as sewn' }).click({ position: { x: 200, y: 300 } });
  await expect(page.getByRole('list', { name: /^Piecing order/ })).toHaveCount(1);
});
