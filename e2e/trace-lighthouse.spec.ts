import { open, stop, verdict } from './support/app.ts';
import { drag, type Place, press } from './support/draw.ts';
import { guidePicture } from './support/picture.ts';
import { dropOnDrawing } from './support/pictures.ts';
import { expect, test } from './support/test.ts';
import { expectColour, fullStrength, shownIn, tracingPart, typeIn } from './support/tracing.ts';

/**
 * A lighthouse as somebody might have painted it: 100 px are to be 1 in, and the block of 8 × 12 in begins 100 px from the
 * picture's left and top.
 */
const PAINTED = `<svg xmlns="http://www.w3.org/2000/svg" width="1000" height="1400" viewBox="-100 -100 1000 1400">
  <rect x="-100" y="-100" width="1000" height="1400" fill="rgb(200,220,240)"/>
  <rect x="-100" y="1000" width="1000" height="300" fill="rgb(40,80,120)"/>
  <polygon points="300,400 500,400 575,1000 225,1000" fill="rgb(250,245,230)"/>
  <polygon points="281.25,550 518.75,550 537.5,700 262.5,700" fill="rgb(180,50,40)"/>
  <polygon points="243.75,850 556.25,850 575,1000 225,1000" fill="rgb(180,50,40)"/>
  <rect x="325" y="0" width="150" height="400" fill="rgb(250,245,230)"/>
  <rect x="325" y="175" width="150" height="150" fill="rgb(250,210,80)"/></svg>`;

const LINES: readonly (readonly [Place, Place])[] = [
  // The gallery and the shore, across the block.
  [
    [0, 4],
    [8, 4],
  ],
  [
    [0, 10],
    [8, 10],
  ],
  // The lamp room's walls, its lamp.
  [
    [3.25, 0],
    [3.25, 4],
  ],
  [
    [4.75, 0],
    [4.75, 4],
  ],
  [
    [3.25, 1.75],
    [4.75, 1.75],
  ],
  [
    [3.25, 3.25],
    [4.75, 3.25],
  ],
  // The tower's walls and bands.
  [
    [3, 4],
    [2.25, 10],
  ],
  [
    [5, 4],
    [5.75, 10],
  ],
  [
    [2.8125, 5.5],
    [5.1875, 5.5],
  ],
  [
    [2.625, 7],
    [5.375, 7],
  ],
  [
    [2.4375, 8.5],
    [5.5625, 8.5],
  ],
];

test('a lighthouse is traced from a picture that is scaled by two known points', async ({ page }) => {
  await open(page);
  await page.getByLabel('Keep the proportions').uncheck();
  for (const [field, size] of [
    ['Width', '8'],
    ['Height', '12'],
  ] as const) {
    await page.getByLabel(field, { exact: true }).fill(size);
    await page.keyboard.press('Enter');
  }
  await page.getByLabel('A line every').fill('1/4');
  await page.keyboard.press('Enter');
  await dropOnDrawing(page, { name: 'painted.svg', type: 'image/svg+xml', bytes: Buffer.from(PAINTED) });
  await page.getByRole('button', { name: 'Trace it as a picture instead' }).click();
  await expect(tracingPart(page).getByText('painted.svg')).toBeVisible();
  await fullStrength(page);

  // It fits the block at 8 in to its 1000 px: the gallery, at 500 px, and the shore, at 1100, are 600 px apart. On the
  // block the tower between them is to be 6 in high.
  const top = 0.4;
  await tracingPart(page).getByRole('button', { name: 'Two known points' }).click();
  await press(page, [4, top + 500 * 0.008]);
  await press(page, [4, top + 1100 * 0.008]);
  await page.keyboard.type('6');
  await page.keyboard.press('Enter');
  // 600 px are 6 in, to the pixel that was pressed: so 1000 px are 10 in.
  await expect
    .poll(async () => Number.parseFloat(await shownIn(page, 'Width of the picture')))
    .toBeCloseTo(10, 0);
  await page.getByRole('button', { name: 'Done', exact: true }).click();
  await typeIn(page, 'Width of the picture', '10');
  await typeIn(page, 'From the left', '-1');
  await typeIn(page, 'From the top', '-1');
  await tracingPart(page).getByLabel('Locked in its place').check();

  for (const [from, to] of LINES) await drag(page, from, to);
  await expect(stop(page, 'Draft')).toContainText('12 patches');
  // Both strips, above the gallery and below it, are more than one patch across and down; the sea is sewn to either.
  await expect(verdict(page)).toHaveText('Sews on 2 foundations');
  // What was drawn lies on what was painted (beside the patches’ names).
  await expectColour(page, [3.1, 6.1], [180, 50, 40]);
  await expectColour(page, [3.1, 8.1], [250, 245, 230]);
  await expectColour(page, [3.6, 2.1], [250, 210, 80]);
  await expectColour(page, [1.1, 11.1], [40, 80, 120]);
  await expectColour(page, [1.1, 5.1], [200, 220, 240]);

  await typeIn(page, 'Per cent', '60');
  await page.mouse.move(0, 0);
  await guidePicture(page, 'guide-tracing');
});
