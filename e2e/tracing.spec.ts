import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { drop, goTo, open, openBlock, problem, stop, verdict } from './support/app.ts';
import { barriers } from './support/barriers.ts';
import { drag, onPage, press } from './support/draw.ts';
import {
  type Colour,
  dropOnDrawing,
  type PictureFile,
  pasteFiles,
  png,
  pngHeader,
  turnedByCamera,
  written,
} from './support/pictures.ts';
import { expect, test } from './support/test.ts';
import {
  colourAt,
  expectColour,
  fullStrength,
  layUnder,
  shownIn,
  tracingPart,
  typeIn,
} from './support/tracing.ts';

const RED: Colour = [200, 0, 0];
const BLUE: Colour = [0, 0, 200];

/** Red on the left, blue on the right: 60 × 40, so 6 × 4 in on a block of 6 in, from 1 in below its top. */
const twoColours = (): PictureFile => ({
  name: 'two colours.png',
  type: 'image/png',
  bytes: png(60, 40, (x) => (x < 30 ? RED : BLUE)),
});

async function saved(page: Page): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')]);
  return readFileSync(await download.path(), 'utf8');
}

interface SavedTracing {
  readonly picture: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly turn: number;
  readonly strength: number;
}

const tracingOf = (text: string): SavedTracing =>
  (JSON.parse(text) as { blocks: { tracing: SavedTracing }[] }).blocks[0]!.tracing;

test('a picture that is dropped lies under grid and lines, is undone, and never printed', async ({
  page,
}) => {
  await open(page);
  const bare = await colourAt(page, [1.25, 3.25]);
  await layUnder(page, twoColours());
  await fullStrength(page);
  // Between the lines of the half-inch grid.
  await expectColour(page, [1.25, 3.25], RED);
  await expectColour(page, [4.75, 3.25], BLUE);
  await expectColour(page, [1.25, 0.75], [251, 246, 238]);
  // On a grid line it is mixed with the line's grey: the grid lies above.
  expect((await colourAt(page, [1.5, 3.25]))[1]).toBeGreaterThan(20);

  await drag(page, [0, 3], [6, 3]);
  await expect(stop(page, 'Draft')).toContainText('2 patches');
  await expectColour(page, [4.75, 3.25], BLUE);
  await goTo(page, 'Paper');
  await expect(page.getByRole('img', { name: /^Page 1/ })).toBeVisible();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save PDF' }).click(),
  ]);
  expect(readFileSync(await download.path(), 'latin1')).not.toMatch(/\/Subtype\s*\/Image/);

  await goTo(page, 'Draft');
  await page.getByRole('button', { name: /^Undo: / }).click();
  await page.getByRole('button', { name: 'Undo: Fade the picture' }).click();
  await page.getByRole('button', { name: 'Undo: Bring in “two colours.png” to trace' }).click();
  await expect(tracingPart(page).getByText('PNG, JPEG, WebP or SVG')).toBeVisible();
  await expectColour(page, [1.25, 3.25], bare);
  await page.keyboard.press('Control+Shift+z');
  await expect(tracingPart(page).getByText('two colours.png')).toBeVisible();
});

test('JPEG and WebP come in, turned as the camera was held, without what it wrote beside them', async ({
  page,
}) => {
  await open(page);
  const jpeg = turnedByCamera(await written(page, 'image/jpeg', 64, 32));
  await layUnder(page, { name: 'pier.jpg', type: 'image/jpeg', bytes: jpeg });
  await fullStrength(page);
  // Its left is now its top: half as wide as high, 3 × 6 in.
  await expect(tracingPart(page).getByText('32 × 64 pixels')).toBeVisible();
  await expectColour(page, [3.25, 1.25], RED);
  await expectColour(page, [3.25, 4.75], BLUE);
  const text = await saved(page);
  const data = /"data": "data:image\/jpeg;base64,([^"]+)"/.exec(text)![1]!;
  expect(Buffer.from(data, 'base64').toString('latin1')).not.toContain('SECRET HARBOUR');

  const webp = await written(page, 'image/webp', 64, 32);
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    tracingPart(page).getByRole('button', { name: 'Another…' }).click(),
  ]);
  await chooser.setFiles({ name: 'quay.webp', mimeType: 'image/webp', buffer: webp });
  await expect(page.getByText('It took the place of “pier.jpg”.')).toBeVisible();
  await fullStrength(page);
  await expectColour(page, [1.25, 3.25], RED);
  await expectColour(page, [4.75, 3.25], BLUE);
});

const SVG = `<svg xmlns="http://www.w3.org/2000/svg" width="60" height="40" onload="document.title='run'">
  <script>window.top.document.title = 'run'</script>
  <image href="https://harbour.example/wave.png" width="60" height="40"/>
  <rect width="60" height="40" fill="rgb(0,0,200)"/><circle cx="15" cy="20" r="14" fill="rgb(200,0,0)"/></svg>`;

test('an SVG drawing comes in as lines or as a picture, and as a picture runs and fetches nothing', async ({
  page,
}) => {
  await open(page);
  await drop(page, [{ name: 'buoy.svg', text: SVG }]);
  await page.getByRole('button', { name: 'Trace it as a picture instead' }).click();
  await expect(tracingPart(page).getByText('buoy.svg')).toBeVisible();
  await fullStrength(page);
  await expectColour(page, [1.25, 3.25], RED);
  await expectColour(page, [4.75, 3.25], BLUE);
  // The lines are gone again, and scripts did not run.
  await expect(page.getByRole('button', { name: 'Block: Block 1 6 × 6 in' })).toBeVisible();
  await expect(page).toHaveTitle(/^Untitled pattern/);

  const curves =
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><circle cx="4" cy="4" r="4"/></svg>';
  await drop(page, [{ name: 'moon.svg', text: curves }]);
  await expect(problem(page)).toContainText('moon.svg');
  await page.getByRole('button', { name: 'Trace it as a picture' }).click();
  await expect(tracingPart(page).getByText('moon.svg')).toBeVisible();
  await expect(page).toHaveTitle(/^Untitled pattern/);
});

const pasteText = (page: Page, text: string): Promise<void> =>
  page.evaluate((words) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', words);
    (document.activeElement ?? document.body).dispatchEvent(
      new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }),
    );
  }, text);

test('what is pasted is a picture, lines or a pattern; anything else is said, and nothing changes', async ({
  page,
}) => {
  await open(page);
  await pasteFiles(page, { ...twoColours(), name: 'image.png' });
  await expect(tracingPart(page).getByText('Pasted picture')).toBeVisible();
  const before = await saved(page);

  await pasteText(page, 'milk, bread, thread');
  await expect(problem(page)).toHaveText(/neither an SVG drawing nor a pattern file/);
  await pasteText(page, '');
  await expect(problem(page)).toHaveText(/nothing on the clipboard/);
  await pasteFiles(page, { name: 'notes.txt', type: 'text/plain', bytes: Buffer.from('milk') });
  await expect(problem(page)).toHaveText(/“notes\.txt”.*no pattern file/);
  expect(await saved(page)).toBe(before);

  // In a field it is the field's own.
  await tracingPart(page).getByLabel('Per cent').focus();
  await pasteText(page, 'milk');
  await expect(problem(page)).toHaveText(/“notes\.txt”/);
  await page.getByRole('application', { name: 'Drawing of the block' }).focus();

  await pasteText(
    page,
    '<svg xmlns="http://www.w3.org/2000/svg" width="4in" height="4in"><title>Strips</title><rect width="4in" height="4in"/><path d="M0 192H384"/></svg>',
  );
  await expect(page.getByRole('button', { name: 'Block: Strips 4 × 4 in' })).toBeVisible();
  await pasteText(page, before.replace('Untitled pattern', 'From the clipboard'));
  await expect(page.getByRole('heading', { level: 1 })).toContainText('From the clipboard');
  await expect(tracingPart(page).getByText('Pasted picture')).toBeVisible();
});

test('two known points scale the picture, shown while it is typed, and make it level', async ({ page }) => {
  await open(page);
  await layUnder(page, twoColours());
  await fullStrength(page);
  await tracingPart(page).getByRole('button', { name: 'Two known points' }).click();
  await press(page, [1, 2]);
  await press(page, [4, 2]);
  const distance = tracingPart(page).getByLabel('Distance between them');
  await expect(distance).toBeFocused();
  await expect(distance).toHaveAttribute('placeholder', '3 in now');
  // Live: 1 in apart, the whole picture is 2 in wide, from 1 − 1/3 in.
  await page.keyboard.type('1');
  await expectColour(page, [1.75, 2.25], BLUE);
  await expectColour(page, [4.75, 2.25], [251, 246, 238]);
  await page.keyboard.press('Escape');
  await expectColour(page, [4.75, 2.25], BLUE);
  await page.keyboard.type('a door');
  await page.keyboard.press('Enter');
  await expect(tracingPart(page).getByText(/“a door” is not a length/)).toBeVisible();
  await distance.fill('1 1/2');
  await page.keyboard.press('Enter');
  await expect.poll(() => shownIn(page, 'Width of the picture')).toBe('3 in');
  expect(await shownIn(page, 'From the left')).toBe('½ in');
  await page.getByRole('button', { name: 'Undo: Scale the picture' }).click();
  await expect.poll(() => shownIn(page, 'Width of the picture')).toBe('6 in');

  // The points stay on the picture: dragged down, the second makes it turn by 45°.
  await drag(page, [4, 2], [4, 5]);
  await tracingPart(page).getByRole('button', { name: 'Make level' }).click();
  await expect.poll(() => shownIn(page, 'Turned by')).toBe('45°');
  const turned = tracingOf(await saved(page));
  // About the middle of the two points, (2.5, 3.5): the picture's own middle, (3, 3), goes to (2.5 + √½, 3.5).
  expect(Math.hypot(turned.x - 2.5, turned.y - 3.5)).toBeCloseTo(Math.SQRT1_2, 6);
  await tracingPart(page).getByRole('button', { name: 'Make upright' }).click();
  // A quarter either way does it.
  await expect.poll(() => shownIn(page, 'Turned by')).toMatch(/^(135|[-−]45)°$/);
  await page.getByRole('button', { name: 'Done', exact: true }).click();
  await drag(page, [0, 3], [6, 3]);
  await expect(stop(page, 'Draft')).toContainText('2 patches');
});

test('it is moved, turned, faded, locked, hidden and taken away, each in one step', async ({ page }) => {
  await open(page);
  await layUnder(page, twoColours());
  const part = tracingPart(page);
  await part.getByRole('button', { name: 'Move it' }).click();
  await drag(page, [3, 3], [4, 3.5]);
  await expect.poll(() => shownIn(page, 'From the left')).toBe('1 in');
  expect(await shownIn(page, 'From the top')).toBe('1½ in');
  await expect(stop(page, 'Draft')).toContainText('1 patch');
  await typeIn(page, 'From the left', '-1 1/4');
  await typeIn(page, 'Turned by', '90');
  await expect.poll(() => shownIn(page, 'Turned by')).toBe('90°');
  await typeIn(page, 'Turned by', 'a bit');
  await expect(part.getByText(/“a bit” is not an angle/)).toBeVisible();
  await page.keyboard.press('Escape');

  const slide = part.getByRole('slider', { name: 'How strong it shows' });
  await slide.focus();
  for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowLeft');
  await expect(part.getByLabel('Per cent')).toHaveValue('55 %');
  await slide.blur();
  await part.getByLabel('Locked in its place').check();
  await expect(part.getByRole('button', { name: 'Move it' })).toHaveCount(0);
  // Drags draw again.
  await drag(page, [0, 3], [6, 3]);
  await expect(stop(page, 'Draft')).toContainText('2 patches');
  expect(tracingOf(await saved(page))).toMatchObject({ turn: 90, strength: 0.55, locked: true, shown: true });
  await part.getByLabel('Shown').uncheck();
  await part.getByRole('button', { name: 'Take it away' }).click();
  await expect(part.getByText('PNG, JPEG, WebP or SVG')).toBeVisible();

  for (const step of [
    'Take the picture away',
    'Hide the picture',
    /Draw a line|Draw/,
    'Lock the picture',
    'Fade the picture',
    'Turn the picture',
    'Move the picture',
    'Move the picture',
    'Bring in “two colours.png” to trace',
  ])
    await page.getByRole('button', { name: typeof step === 'string' ? `Undo: ${step}` : /^Undo: / }).click();
  await expect(page.getByRole('button', { name: 'Undo', exact: true })).toBeDisabled();
});

for (const colorScheme of ['light', 'dark'] as const)
  test.describe(`${colorScheme} colours`, () => {
    test.use({ colorScheme });

    test('with a picture in hand there is no serious barrier', async ({ page }) => {
      await open(page);
      expect(await barriers(page), 'no picture').toEqual([]);
      await layUnder(page, twoColours());
      await tracingPart(page).getByRole('button', { name: 'Two known points' }).click();
      for (const place of [
        [1, 2],
        [4, 2],
      ] as const)
        await press(page, place);
      await page.keyboard.type('0.0001');
      await expect(tracingPart(page).getByRole('alert')).toContainText('too small or too large');
      expect(await barriers(page), 'two points, a distance that cannot be').toEqual([]);
    });
  });

test('by keys alone it is moved and scaled', async ({ page }) => {
  await open(page);
  await layUnder(page, twoColours());
  const part = tracingPart(page);
  await part.getByRole('button', { name: 'Move it' }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('application', { name: 'Drawing of the block' })).toBeFocused();
  for (const key of ['ArrowRight', 'ArrowRight', 'ArrowDown', 'Shift+ArrowDown'])
    await page.keyboard.press(key);
  // Half inches of the grid, and a thirty-second.
  await expect.poll(() => shownIn(page, 'From the left')).toBe('1 in');
  expect(await shownIn(page, 'From the top')).toBe('1 17/32 in');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Undo: Move the picture' }).click();
  await expect.poll(() => shownIn(page, 'From the left')).toBe('0 in');

  await part.getByRole('button', { name: 'Two known points' }).focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('Enter');
  for (let i = 0; i < 4; i++) await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Enter');
  await page.keyboard.type('5cm');
  await page.keyboard.press('Enter');
  // 2 in were 5 cm: 6 in are 15 cm.
  await expect.poll(() => shownIn(page, 'Width of the picture')).toBe('5.9055 in');
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
  await expect(page.getByRole('radio', { name: 'Draw lines' })).toBeChecked();
});

test('it survives a reload with its steps, and a saved file, exactly; the browser keeps it once', async ({
  page,
}) => {
  await open(page);
  await layUnder(page, twoColours());
  await typeIn(page, 'Turned by', '7.25');
  await typeIn(page, 'Width of the picture', '5 3/8');
  await page.getByRole('button', { name: /^Block: / }).click();
  await page.getByRole('button', { name: 'Copy this block' }).click();
  await expect(page.getByRole('button', { name: 'Block: Block 1, copy' })).toBeVisible();
  const text = await saved(page);
  expect(text.match(/data:image/g)).toHaveLength(1);

  await page.reload();
  await expect(tracingPart(page).getByText('two colours.png')).toBeVisible();
  expect(await saved(page)).toBe(text);
  for (let i = 0; i < 4; i++) await page.keyboard.press('Control+z');
  await expect(tracingPart(page).getByText('PNG, JPEG, WebP or SVG')).toBeVisible();
  for (let i = 0; i < 4; i++) await page.keyboard.press('Control+Shift+z');
  expect(await saved(page)).toBe(text);
  await page.reload();
  await expect(tracingPart(page).getByText('two colours.png')).toBeVisible();
  const kept = await page.evaluate(
    () =>
      new Promise<{ works: string; pictures: number }>((resolve, reject) => {
        const opening = indexedDB.open('seamwright');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const reading = opening.result.transaction(['works', 'pictures']);
          const works = reading.objectStore('works').getAll();
          const pictures = reading.objectStore('pictures').count();
          reading.oncomplete = () => {
            opening.result.close();
            resolve({ works: JSON.stringify(works.result), pictures: pictures.result });
          };
        };
      }),
  );
  expect(kept.pictures).toBe(1);
  expect(kept.works).toContain('two colours.png');
  expect(kept.works).not.toContain('data:image');

  await page.getByRole('button', { name: /^Seamwright/ }).click();
  await page.getByRole('button', { name: 'New pattern' }).click();
  await expect(tracingPart(page).getByText('PNG, JPEG, WebP or SVG')).toBeVisible();
  await drop(page, [{ name: 'traced.json', text }]);
  await expect(tracingPart(page).getByText('two colours.png')).toBeVisible();
  expect(await saved(page)).toBe(text);
});

const wrong: readonly {
  what: string;
  file: (page: Page) => PictureFile | Promise<PictureFile>;
  says: RegExp;
}[] = [
  {
    what: 'has 100 megapixels',
    file: () => ({ name: 'wall.png', type: 'image/png', bytes: pngHeader(10_000, 10_000) }),
    says: /“wall\.png”: The picture has 100 megapixels \(10000 × 10000\), and no more than 64 are opened\. Scale it down/,
  },
  {
    what: 'is a PNG cut short',
    file: () => ({ name: 'torn.png', type: 'image/png', bytes: twoColours().bytes.subarray(0, 60) }),
    says: /“torn\.png”: The picture is broken or cut short/,
  },
  {
    what: 'is a PNG with nothing behind its header',
    file: () => ({ name: 'hollow.png', type: 'image/png', bytes: pngHeader(60, 40) }),
    says: /“hollow\.png”: The picture is broken or cut short/,
  },
  {
    what: 'is a JPEG cut short before its size',
    file: async (page) => ({
      name: 'torn.jpg',
      type: 'image/jpeg',
      bytes: (await written(page, 'image/jpeg', 64, 32)).subarray(0, 30),
    }),
    says: /“torn\.jpg”: The picture is broken or cut short/,
  },
  {
    what: 'is a JPEG cut short in the middle',
    file: async (page) => {
      const whole = await written(page, 'image/jpeg', 640, 320);
      return { name: 'half.jpg', type: 'image/jpeg', bytes: whole.subarray(0, whole.length / 2) };
    },
    says: /“half\.jpg”: The picture is broken or cut short/,
  },
  {
    what: 'is of a kind that is not read',
    file: () => ({
      name: 'boat.png',
      type: 'image/png',
      bytes: Buffer.from('GIF89a, whatever it is called'),
    }),
    says: /“boat\.png” is a GIF file\. Save it as PNG, JPEG or WebP/,
  },
  {
    what: 'is called a picture and is none',
    file: () => ({ name: 'list.jpg', type: 'image/jpeg', bytes: Buffer.from('milk, bread, thread') }),
    says: /“list\.jpg”.*no pattern file/,
  },
];

for (const { what, file, says } of wrong)
  test(`a picture that ${what} gives one sentence and changes nothing`, async ({ page }) => {
    await open(page);
    await layUnder(page, twoColours());
    const before = await saved(page);
    await dropOnDrawing(page, await file(page));
    await expect(problem(page)).toHaveText(says);
    expect(await saved(page)).toBe(before);
    await expect(
      page.getByRole('button', { name: 'Undo: Bring in “two colours.png” to trace' }),
    ).toBeVisible();
  });

test('a picture lies under the block that it was dropped on, though another is open by the time that it is read', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const read = window.createImageBitmap.bind(window) as (file: Blob) => Promise<ImageBitmap>;
    const waiting: (() => void)[] = [];
    Object.assign(window, {
      createImageBitmap: (file: Blob) =>
        new Promise<void>((go) => {
          waiting.push(go);
        }).then(() => read(file)),
      letThrough: () => {
        for (const go of waiting.splice(0)) go();
      },
      isReading: () => waiting.length > 0,
    });
  });
  const letThrough = async () => {
    await page.waitForFunction('isReading()');
    await page.evaluate('letThrough()');
  };
  await open(page, '?demo');
  await dropOnDrawing(page, twoColours());
  await openBlock(page, 'Lantern');
  await letThrough();
  await expect(page.getByText('“two colours.png” lies under the drawing of “Paper boat”.')).toBeVisible();
  await expect(tracingPart(page).getByText('PNG, JPEG, WebP or SVG')).toBeVisible();
  // A block that is gone gets none, and neither does the one in its place.
  await dropOnDrawing(page, twoColours());
  await page.getByRole('button', { name: /^Block: / }).click();
  await page.getByRole('button', { name: 'Delete this block' }).click();
  await letThrough();
  await expect(problem(page)).toContainText('“two colours.png”: The block that it was for is gone.');
  await expect(page.getByRole('button', { name: 'Undo: Delete block' })).toBeVisible();

  await openBlock(page, 'Paper boat');
  await expect(tracingPart(page).getByText('two colours.png')).toBeVisible();
});

test('a large picture is scaled down, with a word', async ({ page }) => {
  await open(page);
  await layUnder(page, {
    name: 'pier.png',
    type: 'image/png',
    bytes: png(3000, 1500, (x) => (x < 1500 ? RED : BLUE)),
  });
  await expect(
    page.getByText('It had 3000 × 1500 pixels and is kept with 2400 × 1200: enough to trace.'),
  ).toBeVisible();
  await expect(tracingPart(page).getByText('2400 × 1200 pixels')).toBeVisible();
  await fullStrength(page);
  await expectColour(page, [1.25, 3.25], RED);
  await expectColour(page, [4.75, 3.25], BLUE);
});

test('the picture goes with the block when that is made larger, and back by one undo', async ({ page }) => {
  await open(page);
  await layUnder(page, twoColours());
  await page.getByLabel('Width', { exact: true }).fill('12');
  await page.keyboard.press('Enter');
  await expect.poll(() => shownIn(page, 'Width of the picture')).toBe('12 in');
  expect(await shownIn(page, 'From the top')).toBe('2 in');
  await page.getByRole('button', { name: 'Undo: Change the size' }).click();
  await expect.poll(() => shownIn(page, 'Width of the picture')).toBe('6 in');
});

test.describe('on a tablet', () => {
  test.use({ hasTouch: true, isMobile: true, viewport: { width: 820, height: 1180 } });

  test('a finger drags the picture and draws nothing', async ({ page }) => {
    await open(page);
    await layUnder(page, twoColours());
    await tracingPart(page).getByRole('button', { name: 'Move it' }).tap();
    const session = await page.context().newCDPSession(page);
    const [from, to] = [await onPage(page, [2, 3]), await onPage(page, [3, 3])];
    const touch = (
      type: 'touchStart' | 'touchMove' | 'touchEnd',
      points: readonly { x: number; y: number }[],
    ) =>
      session.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: points.map(({ x, y }) => ({ x, y, id: 0 })),
      });
    await touch('touchStart', [from]);
    await touch('touchMove', [{ x: (from.x + to.x) / 2, y: from.y }]);
    await touch('touchMove', [to]);
    await touch('touchEnd', []);
    await expect.poll(async () => Number(tracingOf(await saved(page)).x.toFixed(2))).toBeCloseTo(4, 1);
    await expect(verdict(page)).toHaveText('Sews on one foundation: a single patch');
  });
});
