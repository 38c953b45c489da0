import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import { goTo, open, openBlock } from './support/app.ts';
import { barriers } from './support/barriers.ts';
import { goToCutting, openCutting } from './support/cutting.ts';
import { cuttingLines, finishedOutlines, readPdf } from './support/pdf.ts';
import { expect, test } from './support/test.ts';

const PROGRAM = fileURLToPath(new URL('../packages/cli/dist/seamwright.js', import.meta.url));

async function saved(page: Page, press: () => Promise<void>): Promise<{ name: string; path: string }> {
  const [download] = await Promise.all([page.waitForEvent('download'), press()]);
  return { name: download.suggestedFilename(), path: await download.path() };
}

/** Lines of cells: RFC 4180, in which no cell of a chart has a line break. */
function cellsOf(csv: string): readonly (readonly string[])[] {
  expect(csv).toMatch(/\r\n$/);
  return csv
    .slice(0, -2)
    .split('\r\n')
    .map((line) => {
      expect(line).not.toContain('\n');
      const cells = [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^",]*))/g)];
      return cells.map(([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain ?? '');
    });
}

test('the cutting chart is read, and saved as CSV and PDF as the command line writes it', async ({
  page,
}) => {
  const tables = await openCutting(page, 'Lantern');
  const rows = await tables.locator('tbody tr').all();
  const shown = await Promise.all(rows.map((row) => row.locator('td').allInnerTexts()));

  const chart = await saved(page, () => page.getByRole('button', { name: 'Save the chart as CSV' }).click());
  expect(chart.name).toBe('Lantern, cutting.csv');
  const csv = readFileSync(chart.path, 'utf8');
  const [head, ...lines] = cellsOf(csv);
  expect(head).toEqual(['fabric', 'section', 'shape', 'width in', 'height in', 'cut', 'yields', 'patches']);
  for (const line of lines) expect(line).toHaveLength(head!.length);
  expect(lines.map((cells) => cells[5])).toEqual(shown.map(([cut]) => cut));
  expect(lines.map((cells) => cells[7]!.split(' '))).toEqual(shown.map((cells) => cells[2]!.split(/\s+/)));

  const pattern = await saved(page, () => page.keyboard.press('Control+s'));
  const wanted = execFileSync(process.execPath, [
    ...[PROGRAM, 'cutting', pattern.path, '--block', 'Lantern', '--csv'],
  ]).toString();
  expect(csv).toBe(wanted);

  // Each section on its own, on the screen and in the file.
  const bySection = page.getByRole('checkbox', { name: 'Chart each section on its own' });
  await bySection.check();
  await expect(page.getByRole('rowheader', { name: 'Section A' }).first()).toBeVisible();
  const sectioned = await saved(page, () =>
    page.getByRole('button', { name: 'Save the chart as CSV' }).click(),
  );
  const call = [PROGRAM, 'cutting', pattern.path, '--block', 'Lantern', '--csv', '--by-section'];
  const sections = readFileSync(sectioned.path, 'utf8');
  expect(sections).toBe(execFileSync(process.execPath, call).toString());
  const listed = cellsOf(sections).slice(1);
  expect(await tables.locator('tbody tr:has(td)').count()).toBe(listed.length);
  expect(await tables.getByRole('rowheader').allInnerTexts()).toEqual(
    [...new Set(listed.map(([fabric, section]) => `${fabric}/Section ${section}`))].map(
      (words) => words.split('/')[1],
    ),
  );
  await bySection.uncheck();

  const file = await saved(page, () => page.getByRole('button', { name: 'Save the chart as PDF' }).click());
  expect(file.name).toBe('Lantern, cutting.pdf');
  const words = readPdf(readFileSync(file.path))
    .map(({ text }) => text)
    .join(' ')
    .replace(/\s+/g, ' ');
  expect(words).toContain('To cut for 1 of Lantern');
  for (const [cut, size] of shown) expect(words).toContain(`${cut} ${size!.split('\n')[0]}`);
  expect(words).toContain('Close the rotary cutter whenever you lay it down.');
});

test('all blocks of the pattern are cut together, of each as many as are asked for, as the command line does', async ({
  page,
}) => {
  await openCutting(page);
  await page.getByRole('radio', { name: 'All 5 blocks' }).check();
  const counts = { 'Paper boat': 2, Lantern: 4, Lighthouse: 1, 'Reading lamp': 0, 'Window panes': 3 };
  for (const [name, count] of Object.entries(counts)) {
    const field = page.getByRole('textbox', { name, exact: true });
    await field.fill(`${count}`);
    await field.press('Enter');
  }
  const lantern = page.getByRole('button', { name: 'Lantern A1', exact: true });
  await expect(lantern).toBeVisible();
  await expect(page.getByRole('button', { name: /^Reading lamp [A-Z]/ })).toHaveCount(0);

  const pattern = await saved(page, () => page.keyboard.press('Control+s'));
  const call = [PROGRAM, 'cutting', pattern.path, '--copies', Object.values(counts).join()];
  const wanted = execFileSync(process.execPath, [...call, '--csv']).toString();
  const chart = await saved(page, () => page.getByRole('button', { name: 'Save the chart as CSV' }).click());
  expect(readFileSync(chart.path, 'utf8')).toBe(wanted);
  const said = execFileSync(process.execPath, call).toString();
  for (const bought of await page.getByText(/^Buy .* yd \([\d.]+ m\)/).allInnerTexts())
    expect(said).toContain(bought);

  const file = await saved(page, () => page.getByRole('button', { name: 'Save the chart as PDF' }).click());
  const words = readPdf(readFileSync(file.path))[0]!.text.replace(/\s+/g, ' ');
  expect(words).toContain(
    'To cut for 2 of Paper boat at 8 × 8 in, 4 of Lantern at 6 × 7½ in, 1 of Lighthouse at 8 × 12 in, 3 of Window panes',
  );

  // A piece of another block: that block opens, and the piece lies on it.
  await lantern.click();
  await expect(page.getByRole('region', { name: 'The piece for Lantern A1' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Block: Lantern' })).toBeVisible();
  // What was asked for is there after a reload.
  await page.reload();
  await goToCutting(page);
  await expect(page.getByRole('textbox', { name: 'Reading lamp', exact: true })).toHaveValue('0');
  await expect(page.getByRole('textbox', { name: 'Lantern', exact: true })).toHaveValue('4');
});

test('a chart that is saved at once is for what was typed last', async ({ page }) => {
  await openCutting(page, 'Lantern');
  const blocks = page.getByRole('textbox', { name: 'Blocks to sew' });
  await blocks.fill('7');
  await blocks.press('Enter');
  const chart = await saved(page, () => page.getByRole('button', { name: 'Save the chart as CSV' }).click());
  const pattern = await saved(page, () => page.keyboard.press('Control+s'));
  const call = [PROGRAM, 'cutting', pattern.path, '--block', 'Lantern', '--copies', '7', '--csv'];
  expect(readFileSync(chart.path, 'utf8')).toBe(execFileSync(process.execPath, call).toString());
});

test('a chart says for which size and for which colourway it is: on paper nothing else does', async ({
  page,
}) => {
  await open(page, '?demo');
  await openBlock(page, 'Lantern');
  await goTo(page, 'Paper');
  const width = page.getByRole('textbox', { name: 'Finished width' });
  await width.fill('9');
  await width.press('Enter');
  await goTo(page, 'Cloth');
  await page.getByRole('button', { name: 'Another colourway' }).click();
  await goToCutting(page);
  // The bar above names the size of the drawing.
  await expect(page.getByRole('button', { name: 'Block: Lantern' })).toContainText('6 × 7½ in');
  const panel = page.getByRole('region', { name: 'Fabrics and cutting' });
  await expect(panel).toContainText('9 × 11¼ in finished, as asked for at Paper');
  await expect(panel).toContainText('From the fabrics of “Colourway 2”');
  expect(await barriers(page)).toEqual([]);
  const file = await saved(page, () => page.getByRole('button', { name: 'Save the chart as PDF' }).click());
  expect(file.name).toBe('Lantern, Colourway 2, cutting.pdf');
  const words = readPdf(readFileSync(file.path))[0]!.text.replace(/\s+/g, ' ');
  expect(words).toContain('To cut for 1 of Lantern at 9 × 11¼ in, from the fabrics of “Colourway 2”');
  const csv = await saved(page, () => page.getByRole('button', { name: 'Save the chart as CSV' }).click());
  expect(csv.name).toBe('Lantern, Colourway 2, cutting.csv');
});

test('a patch has a template and a window, as the block is seen and in true size', async ({ page }) => {
  await openCutting(page, 'Lantern');
  await page.getByRole('button', { name: 'A1', exact: true }).click();
  for (const kind of ['Template', 'Window']) {
    const file = await saved(page, () => page.getByRole('button', { name: `${kind} as PDF` }).click());
    expect(file.name).toBe(`Lantern A1, ${kind.toLowerCase()}.pdf`);
    const [sheet] = readPdf(readFileSync(file.path));
    expect([finishedOutlines(sheet!).length, cuttingLines(sheet!).length]).toEqual([1, 1]);
    expect(sheet!.text).toContain('not mirrored');
  }
  // All of a section.
  await page.getByRole('radio', { name: 'Of all 15 of section A' }).check();
  const file = await saved(page, () => page.getByRole('button', { name: 'Templates as PDF' }).click());
  expect(file.name).toBe('Lantern section A, templates.pdf');
  const sheets = readPdf(readFileSync(file.path));
  expect(sheets.flatMap((sheet) => finishedOutlines(sheet))).toHaveLength(15);
});
