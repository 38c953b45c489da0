import { describe, expect, test } from 'vitest';
import { lantern, usual } from '../../test/blocks.ts';
import { pageFonts } from '../../test/fonts.ts';
import { laid } from '../../test/laid.ts';
import { writePrintHtml } from './print-html.ts';

/** What comes out of the printer is measured in `test/printed.test.ts`. */
describe('the document that a browser prints', () => {
  const plan = laid(usual(lantern(10), 'Lantern & <café>', { paper: 'a4' }));
  const html = writePrintHtml(plan, pageFonts);

  test('has the paper as its page, without margins, and a picture for each sheet', () => {
    // ISO 216: A4 is 210 × 297 mm.
    expect(html).toContain('@page { size: 210mm 297mm; margin: 0 }');
    expect(html.match(/<svg /g)).toHaveLength(plan.sheets.length);
  });

  test('has as many pages of a sheet as it is wanted times, one behind the other, and draws it once', () => {
    const often = writePrintHtml(plan, pageFonts, [3, 1, 2]);
    expect(often.match(/<svg /g)).toHaveLength(plan.sheets.length + 3);
    const pages = [...often.matchAll(/<(?:g id|use href)="#?(sheet-\d+)"/g)].map(([, sheet]) => sheet);
    expect(pages.slice(0, 6)).toEqual(['sheet-1', 'sheet-1', 'sheet-1', 'sheet-2', 'sheet-3', 'sheet-3']);
    expect(often.match(/ id="sheet-1-section-A"/g)).toHaveLength(1);
  });

  test('scales nothing: 96 px of the page are 72 points of the sheet', () => {
    // W3C, CSS Values and Units: 96 px are 1 in.
    for (const [, width, height, across, down] of html.matchAll(
      /<svg width="([\d.]+)" height="([\d.]+)" viewBox="0 0 ([\d.]+) ([\d.]+)"/g,
    )) {
      expect(Number(width) / Number(across)).toBe(96 / 72);
      expect(Number(height) / Number(down)).toBe(96 / 72);
      // No wider and no higher than the page: else there would be another.
      expect(Number(across)).toBeLessThanOrEqual(plan.paper.width);
      expect(Number(down)).toBeLessThanOrEqual(plan.paper.height);
    }
  });

  test('has every id once, and every window that is used', () => {
    const ids = [...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id!);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toContain('sheet-2-section-A');
    const used = [...html.matchAll(/url\(#([^)]*)\)/g)].map(([, id]) => id!);
    expect(used.length).toBeGreaterThan(0);
    for (const id of used) expect(ids).toContain(id);
  });

  test('brings its fonts along, and asks for nothing else', () => {
    const [regular, semibold, ...others] = [...html.matchAll(/url\("([^"]*)"\)/g)].map(([, url]) => url!);
    expect(others).toEqual([]);
    for (const [url, bytes] of [
      [regular, pageFonts.regular],
      [semibold, pageFonts.semibold],
    ] as const) {
      const [head, base64] = url!.split(',');
      expect(head).toBe('data:font/ttf;base64');
      expect(Buffer.compare(Buffer.from(base64!, 'base64'), bytes)).toBe(0);
    }
  });

  test('has names as text', () => {
    expect(html).toContain('<title>Lantern &amp; &lt;café&gt;</title>');
    expect(html).not.toContain('<café>');
  });
});
