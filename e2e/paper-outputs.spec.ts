import { readFileSync } from 'node:fs';
import type { Download, Page, Route } from '@playwright/test';
import { goTo, open, openBlock, problem, stop } from './support/app.ts';
import { holdBetweenFiles, printing, takeToPaper } from './support/paper.ts';
import { checkSquareSides, type DrawnPage, finishedOutlines, misfit, readPdf } from './support/pdf.ts';
import { readPngHead } from './support/png.ts';
import { readSvg } from './support/svg.ts';
import { expect, test } from './support/test.ts';

/** PDF user space: 72 points to the inch (ISO 32000-1, table 30). */
const POINTS = 72;
/** 0.01 mm in points: what printed outlines are held to. */
const WITHIN = (0.01 / 25.4) * POINTS;

const saved = async (page: Page, button: string | RegExp): Promise<Download> => {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    printing(page).getByRole('button', { name: button }).click(),
  ]);
  return download;
};

/** How much paper there is to print, and of which size. */
const paperHeading = (page: Page) => printing(page).getByRole('heading', { name: / of Letter$/ });

/** Both check squares are on the page, and true. */
function expectTrue(page: DrawnPage, within = WITHIN): void {
  const [inch, millimetres] = checkSquareSides(page);
  expect(Math.abs(inch! - POINTS)).toBeLessThan(within);
  expect(Math.abs(millimetres! - (50 / 25.4) * POINTS)).toBeLessThan(within);
}

/** The same outlines, in the same order, on both pages. */
function expectSameOutlines(page: DrawnPage, other: DrawnPage, within = WITHIN): void {
  const [outlines, others] = [finishedOutlines(page), finishedOutlines(other)];
  expect(outlines).toHaveLength(others.length);
  for (const [i, { points }] of outlines.entries())
    expect(misfit(points, others[i]!.points)).toBeLessThan(within);
}

test('PDF, SVG files and what goes to the printer measure alike, and true', async ({ page, browser }) => {
  // Headless browsers have no dialog for printing: what it would get is kept instead.
  await page.addInitScript(() => {
    window.print = () => {
      Object.assign(window.top!, { printed: `<!DOCTYPE html>${document.documentElement.outerHTML}` });
    };
  });
  await takeToPaper(page, 'Lighthouse');
  const width = page.getByLabel('Finished width');
  await width.fill('9');
  await width.press('Enter');
  await expect(printing(page)).toContainText('112.5 % of the drawing');
  const pdf = await saved(page, 'Save PDF');
  expect(pdf.suggestedFilename()).toBe('Lighthouse.pdf');
  const pages = readPdf(readFileSync(await pdf.path()));
  expect(pages.length).toBeGreaterThan(1);
  await expect(stop(page, 'Paper')).toContainText(`${pages.length} sheets`);
  // Five foundations; D, 9½ × 7¼ in with its allowance, has no room on a sheet with the check squares, and stands on two.
  expect(pages.flatMap(finishedOutlines)).toHaveLength(6);
  for (const drawn of pages) expectTrue(drawn);

  const files: Download[] = [];
  page.on('download', (file) => files.push(file));
  await printing(page)
    .getByRole('button', { name: `Save ${pages.length} SVG files` })
    .click();
  await expect.poll(() => files.length).toBe(pages.length);
  const svgs = await Promise.all(files.map(async (file) => readFileSync(await file.path(), 'utf8')));
  for (const [i, svg] of svgs.entries()) {
    expect(files[i]!.suggestedFilename()).toBe(`Lighthouse ${i + 1} of ${pages.length}.svg`);
    // US Letter (ANSI/ASME Y14.1).
    expect(svg).toMatch(/<svg [^>]*width="8\.5in" height="11in"/);
    const drawn = readSvg(svg);
    expectTrue(drawn);
    expectSameOutlines(drawn, pages[i]!);
  }
  const groups = svgs.flatMap((svg) => [...svg.matchAll(/<g id="section-([^"]+)"/g)].map(([, key]) => key!));
  expect(groups.sort()).toEqual(['A', 'B', 'C', 'D', 'D', 'E']);

  await printing(page).getByRole('button', { name: 'Print…' }).click();
  const html = await page.waitForFunction(() => (window as { printed?: string }).printed);
  const printer = await browser.newPage();
  await printer.setContent((await html.jsonValue())!);
  await printer.evaluate(() => document.fonts.ready);
  const printed = readPdf(await printer.pdf({ preferCSSPageSize: true }));
  await printer.close();
  expect(printed).toHaveLength(pages.length);
  for (const [i, drawn] of printed.entries()) {
    expectTrue(drawn);
    expectSameOutlines(drawn, pages[i]!);
  }
});

test('what is saved the moment it can be is what was asked for, not what was there before', async ({
  page,
}) => {
  await takeToPaper(page, 'Lighthouse');
  const before = (await paperHeading(page).textContent())!;
  // Nobody is so quick, but a computer may be so slow.
  await page.evaluate(() => {
    const panel = document.querySelector('[aria-label=Printing]')!;
    let waited = false;
    new MutationObserver((_, observer) => {
      const save = [...panel.querySelectorAll('button')].find(({ textContent }) =>
        /^(Save PDF|Laying out)/.test(textContent),
      );
      if (save === undefined) return;
      const waits = save.getAttribute('aria-disabled') === 'true';
      if (waited && !waits) {
        observer.disconnect();
        save.click();
      }
      waited ||= waits;
    }).observe(panel, { subtree: true, childList: true, attributes: true, characterData: true });
  });
  const width = page.getByLabel('Finished width');
  await width.fill('20');
  const [file] = await Promise.all([page.waitForEvent('download'), width.press('Enter')]);
  await expect(paperHeading(page)).not.toHaveText(before);
  const pages = readPdf(readFileSync(await file.path()));
  await expect(paperHeading(page)).toHaveText(`${pages.length} sheets of Letter`);
});

test('a foundation is saved as a picture that says its resolution and keeps to it', async ({ page }) => {
  await takeToPaper(page, 'Lighthouse');
  await printing(page).getByRole('button', { name: 'Save PNG…' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel('Foundation').selectOption('A');
  await dialog.getByRole('radio', { name: '150' }).check();
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    dialog.getByRole('button', { name: 'Save PNG' }).click(),
  ]);
  expect(file.suggestedFilename()).toBe('Lighthouse A, 150 to the inch.png');
  const png = readFileSync(await file.path());
  const head = readPngHead(png);
  // 150 to the inch of 0.0254 m (exact) are 5905.5 to the metre.
  for (const count of head.perMetre) expect(Math.abs(count - 150 / 0.0254)).toBeLessThanOrEqual(0.5);
  expect(head.perMetre).toHaveLength(2);

  // Foundation A is 1½ × 4 in finished. Its upright sides are the columns that are dark for nearly 4 in.
  const columns = await page.evaluate(
    async (bytes) => {
      const bitmap = await createImageBitmap(new Blob([new Uint8Array(bytes)], { type: 'image/png' }));
      const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d')!;
      context.drawImage(bitmap, 0, 0);
      const { data, width, height } = context.getImageData(0, 0, bitmap.width, bitmap.height);
      return Array.from({ length: width }, (_, x) => x).filter((x) => {
        let dark = 0;
        for (let y = 0; y < height; y++) if (data[4 * (y * width + x)]! < 96) dark += 1;
        return dark > 3.8 * 150;
      });
    },
    [...png],
  );
  expect(columns.length).toBeGreaterThanOrEqual(4);
  const [left, right] = [
    columns.filter((x) => x < head.width / 2),
    columns.filter((x) => x > head.width / 2),
  ];
  const middle = (side: readonly number[]) => (side[0]! + side.at(-1)!) / 2;
  expect(Math.abs(middle(right) - middle(left) - 1.5 * 150)).toBeLessThanOrEqual(1);
});

test('a long job says how far it is, and can be cancelled while the page stays live', async ({ page }) => {
  const goOn = await holdBetweenFiles(page);
  await takeToPaper(page, 'Lighthouse');
  await printing(page)
    .getByRole('button', { name: /^Add 3/ })
    .click();
  const save = printing(page).getByRole('button', { name: /^Save 1\d SVG files/ });
  await expect(save).toBeEnabled();
  const files: Download[] = [];
  page.on('download', (file) => files.push(file));
  await save.click();
  const bar = printing(page).getByRole('progressbar', { name: 'Making the SVG files…' });
  await expect(bar).toHaveAttribute('value', '1');
  await goOn();
  await expect(bar).toHaveAttribute('value', '2');
  await page.getByRole('radio', { name: 'True size' }).check();
  await page.getByRole('button', { name: /^Show page 9: foundation/ }).click();
  await expect(page.locator('figure#sheet-9')).toBeInViewport();
  await printing(page).getByRole('button', { name: 'Cancel' }).click();
  await goOn();
  await expect(save).toBeEnabled();
  await expect.poll(() => files).toHaveLength(2);
});

/** As over a slow line: what is asked for at such addresses does not come until it is let through. */
async function held(page: Page, address: RegExp): Promise<() => Promise<void>> {
  let letThrough = () => {};
  const through = new Promise<void>((resolve) => {
    letThrough = resolve;
  });
  const hold = async (route: Route) => {
    await through;
    await route.continue().catch(() => undefined);
  };
  await page.route(address, hold);
  return async () => {
    letThrough();
    await page.unroute(address, hold);
  };
}

test('a PDF tells how far it is, and is not saved when it is cancelled', async ({ page }) => {
  await takeToPaper(page, 'Lighthouse');
  const width = page.getByLabel('Finished width');
  await width.fill('80');
  await width.press('Enter');
  const save = printing(page).getByRole('button', { name: 'Save PDF' });
  await expect(printing(page)).toContainText(/\b\d{3} sheets/);
  await expect(save).toBeEnabled();
  const files: Download[] = [];
  page.on('download', (file) => files.push(file));
  const bar = printing(page).getByRole('progressbar', { name: 'Making the PDF file…' });

  // Before its writer is there.
  let letWriter = await held(page, /\/jspdf[^/]*\.js$/);
  await save.click();
  await expect(bar).toBeVisible();
  await printing(page).getByRole('button', { name: 'Cancel' }).click();
  await expect(page.getByRole('status').filter({ hasText: 'Making the PDF file was cancelled' })).toHaveCount(
    1,
  );
  await expect(bar).toHaveCount(0);
  await letWriter();

  // While its pages are written: at the first word of how far it is.
  letWriter = await held(page, /\/jspdf[^/]*\.js$/);
  await save.click();
  await expect(bar).toBeVisible();
  const told = page.evaluate(
    () =>
      new Promise<{ value: number; max: number }>((resolve) => {
        const progress = document.querySelector('progress')!;
        new MutationObserver((_, observer) => {
          if (progress.position <= 0) return;
          observer.disconnect();
          progress.parentElement!.querySelector('button')!.click();
          resolve({ value: progress.value, max: progress.max });
        }).observe(progress, { attributes: true });
      }),
  );
  await letWriter();
  const { value, max } = await told;
  expect(value).toBeLessThan(max);
  await expect(bar).toHaveCount(0);
  await expect(save).toBeEnabled();
  expect(files).toEqual([]);

  // Nothing of what was cancelled comes later, and it can be saved all the same.
  const written = readFileSync(await (await saved(page, 'Save PDF')).path(), 'latin1');
  expect(files).toHaveLength(1);
  // ISO 32000-1, table 30: each page is a dictionary of this type.
  expect(written.match(/\/Type \/Page\b/g)).toHaveLength(max);
});

test('laying out is cancelled, and asked for after all', async ({ page }) => {
  const letThrough = await held(page, /\/later-[^/]*\.js$/);
  await open(page, '?demo');
  await openBlock(page, 'Lighthouse');
  await goTo(page, 'Paper');
  const bar = printing(page).getByRole('progressbar', { name: 'Drawing the foundations…' });
  await expect(bar).toBeVisible();
  // In line with the headings below it.
  const heading = (await printing(page).getByText('On the sheets').boundingBox())!;
  const panel = (await printing(page).boundingBox())!;
  expect((await bar.boundingBox())!.x).toBeGreaterThanOrEqual(panel.x + 12);
  expect((await bar.boundingBox())!.x).toBeLessThanOrEqual(heading.x);
  // However little there is, the station fills the window.
  expect(panel.y + panel.height).toBe(800);
  const fieldTop = async () => (await page.getByLabel('Finished width').boundingBox())!.y;
  const top = await fieldTop();
  // Cancelled in the same moment as other sheets are asked for: these, too, are not laid out.
  await printing(page).getByText('On the sheets').click();
  const upright = page.getByLabel('Keep foundations upright');
  await expect(upright).toBeVisible();
  const cancel = await printing(page).getByRole('button', { name: 'Cancel' }).elementHandle();
  await upright.evaluate((box, button) => {
    (box as HTMLElement).click();
    (button as HTMLElement).click();
  }, cancel);
  await expect(upright).toBeChecked();
  const sheets = page.getByRole('region', { name: 'Sheets' });
  await expect(sheets).toContainText('The sheets are not laid out: that was cancelled.');
  await expect(stop(page, 'Paper')).toContainText('no sheets yet');
  // What takes half a second has a bar.
  await page.waitForTimeout(1000);
  await expect(bar).toHaveCount(0);
  await letThrough();
  await sheets.getByRole('button', { name: 'Lay them out' }).click();
  await expect(printing(page).getByRole('button', { name: 'Save PDF' })).toBeEnabled();
  await expect(page.getByRole('img', { name: /^Page 1/ })).toBeVisible();
  // But for a line of words the fields are where they were: nobody presses on what has moved away.
  expect(Math.abs((await fieldTop()) - top)).toBeLessThanOrEqual(24);
});

test('thousands of sheets are asked about, and nothing is written before', async ({ page }) => {
  await takeToPaper(page, 'Lighthouse');
  const files: Download[] = [];
  page.on('download', (file) => files.push(file));
  const blocks = page.getByLabel('Blocks', { exact: true });
  await blocks.fill('10000');
  await blocks.press('Enter');
  const save = printing(page).getByRole('button', { name: 'Save PDF' });
  await expect(printing(page)).toContainText(/\d0,000 sheets of Letter/);
  await save.click();
  const dialog = page.getByRole('dialog', { name: /^\d0,000 sheets of paper\?/ });
  await dialog.getByRole('button', { name: 'Go back' }).click();
  await expect(dialog).toHaveCount(0);
  expect(files).toEqual([]);
  await save.click();
  await dialog.getByRole('button', { name: 'Go on all the same' }).click();
  await expect.poll(() => files.length).toBe(1);
});

test('sheets that are wanted several times go to the printer as often, or once', async ({ page }) => {
  await page.addInitScript(() => {
    window.print = () => {
      const found = [...document.querySelectorAll('svg title')].map((title) => title.textContent);
      Object.assign(window.top!, { printed: found });
    };
  });
  await takeToPaper(page, 'Lighthouse');
  const blocks = page.getByLabel('Blocks', { exact: true });
  await blocks.fill('3');
  await blocks.press('Enter');
  const save = printing(page).getByRole('button', { name: 'Save PDF' });
  await expect(printing(page)).toContainText('each printed 3 times');
  await expect(save).toBeEnabled();
  const { length } = await page.getByRole('img', { name: /^Page \d/ }).all();
  // One number for the paper, wherever it is told.
  await expect(paperHeading(page)).toHaveText(`${3 * length} sheets of Letter`);
  await expect(printing(page)).toContainText(`${length} different pages, each printed 3 times.`);
  await expect(stop(page, 'Paper')).toContainText(`${3 * length} sheets`);
  const printed = async (choice: string) => {
    await page.evaluate(() => Object.assign(window, { printed: undefined }));
    await printing(page).getByRole('button', { name: 'Print…' }).click();
    const dialog = page.getByRole('dialog', { name: 'How often?' });
    await expect(dialog).toContainText(`${3 * length} sheets of paper in all`);
    await dialog.getByRole('button', { name: choice }).click();
    const kept = await page.waitForFunction(() => (window as { printed?: string[] }).printed);
    return (await kept.jsonValue())!;
  };
  const once = await printed('Each page once');
  expect(once).toHaveLength(length);
  expect(await printed('As often as they say')).toEqual(once.flatMap((title) => [title, title, title]));
});

test('a sheet alone is seen whole in the overview, with its foot', async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await takeToPaper(page, 'Lighthouse');
  const width = page.getByLabel('Finished width');
  await width.fill('2');
  await width.press('Enter');
  await expect(paperHeading(page)).toHaveText('1 sheet of Letter');
  const box = await page.getByRole('img', { name: /^Page 1/ }).boundingBox();
  expect(box!.y + box!.height).toBeLessThan(800);
  // What is above it, and two lines of words below, take less than two fifths of the window.
  expect(box!.height).toBeGreaterThan(480);
});

test('sheets are filled with prints of the same, and fewer are printed', async ({ page }) => {
  await takeToPaper(page, 'Lighthouse');
  const blocks = page.getByLabel('Blocks', { exact: true });
  const side = page.getByLabel('Finished width');
  await side.fill('2');
  await side.press('Enter');
  await blocks.fill('24');
  await blocks.press('Enter');
  await expect(paperHeading(page)).toHaveText('24 sheets of Letter');
  await expect(printing(page)).toContainText('One page, printed 24 times.');
  await printing(page).getByRole('button', { name: 'Save paper: several on a sheet' }).click();
  await expect(printing(page)).toContainText(/could (not )?hold the prints/);
  const printed = (await paperHeading(page).textContent())!;
  expect(Number.parseInt(printed, 10)).toBeLessThan(24);
  await expect(page.getByRole('img', { name: /^Page 1/ })).toHaveAccessibleName(/ × \d/);
  // It is a habit: it holds after a reload, and is taken back where it is chosen.
  await page.reload();
  await expect(paperHeading(page)).toHaveText(printed);
  await printing(page).locator('summary', { hasText: 'On the sheets' }).click();
  await page.getByRole('checkbox', { name: 'Several prints on a sheet' }).uncheck();
  await expect(paperHeading(page)).toHaveText('24 sheets of Letter');
});

test('a picture that no browser could draw is refused in a sentence, and nothing is saved', async ({
  page,
}) => {
  await takeToPaper(page, 'Lighthouse');
  const width = page.getByLabel('Finished width');
  await width.fill('60');
  await width.press('Enter');
  await expect(printing(page).getByRole('button', { name: 'Save PDF' })).toBeEnabled();
  const files: Download[] = [];
  page.on('download', (file) => files.push(file));
  await printing(page).getByRole('button', { name: 'Save PNG…' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('radio', { name: '600' }).check();
  await dialog.getByRole('button', { name: 'Save PNG' }).click();
  await expect(problem(page)).toContainText(/A picture of \d+ × \d+ pixels is more than a browser can draw/);
  expect(files).toEqual([]);
});
