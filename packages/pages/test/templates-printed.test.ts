import { allowanceOutline, type Polygon } from '@seamwright/geometry';
import { describe, expect, test } from 'vitest';
import {
  checkSquareSides,
  cuttingLines,
  finishedOutlines,
  hasPoppler,
  misfit,
  readPdf,
  type Spot,
} from '../../../e2e/support/pdf.ts';
import { layTemplates, type Mark, type TemplateJob, writePdf } from '../src/index.ts';
import { boat, house, jib, pinwheel, wharf } from './blocks.ts';
import { boxOf, overlap, ROUNDING } from './boxes.ts';
import { pageFonts } from './fonts.ts';
import { openPdf } from './pdfjs.ts';
import { templateJob, templatesLaid } from './templates-laid.ts';

/** What pages are held to: 0.01 mm, in points. */
const TRUE = (0.01 / 25.4) * 72;

const JOBS: readonly (readonly [string, TemplateJob])[] = [
  ['templates of a house', templateJob(house())],
  ['windows of a boat', templateJob(boat(), { kind: 'window', paper: 'a4', unit: 'cm' })],
  ['windows of a pinwheel', templateJob(pinwheel(4), { kind: 'window', allowance: 0.375 })],
  ['templates of a jib, larger', templateJob(jib(), { scale: 1.3 })],
  ['templates of a wharf, without allowance', templateJob(wharf(), { allowance: 0 })],
];

const points = (polygon: Polygon, by: number): readonly Spot[] =>
  polygon.map(({ x, y }) => ({ x: x * by * 72, y: y * by * 72 }));

/** Outlines as they must be printed, by patch: as drawn, not mirrored. */
const wanted = ({ arrangement, patches, scale = 1, allowance = 0.25 }: TemplateJob) =>
  patches.map((index) => {
    const { polygon } = arrangement.patches[index]!;
    const sewn = polygon.map(({ x, y }) => ({ x: x * scale, y: y * scale }));
    return {
      outline: points(polygon, scale),
      cutting: allowance === 0 ? null : points(allowanceOutline(sewn, allowance).outline, 1),
    };
  });

/** Each is drawn, and nothing else is: of patches that are alike, as often as there are such. */
function expectDrawn(drawn: readonly (readonly Spot[])[], asked: readonly (readonly Spot[])[]): void {
  expect(drawn).toHaveLength(asked.length);
  for (const polygon of asked) {
    const like = (one: readonly Spot[]) => misfit(one, polygon) < TRUE;
    expect(drawn.filter(like)).toHaveLength(asked.filter(like).length);
    expect(drawn.some(like)).toBe(true);
  }
}

describe.skipIf(!hasPoppler)('saved templates, measured by Poppler', () => {
  test.each(JOBS)('%s are true and not mirrored', async (_, job) => {
    const pages = readPdf(await writePdf(templatesLaid(job), pageFonts));
    const asked = wanted(job);
    const corners = (paths: readonly { readonly points: readonly Spot[] }[]) =>
      paths.map((path) => path.points);
    expectDrawn(
      pages.flatMap((page) => corners(finishedOutlines(page))),
      asked.map(({ outline }) => outline),
    );
    expectDrawn(
      pages.flatMap((page) => corners(cuttingLines(page))),
      asked.flatMap(({ cutting }) => (cutting === null ? [] : [cutting])),
    );
    for (const page of pages) {
      // 50 mm and 1 in, 25.4 mm exactly: addendum to NBS Circular 572.
      const [inch, metric] = checkSquareSides(page);
      expect(Math.abs(inch! - 72)).toBeLessThan(TRUE);
      expect(Math.abs(metric! - (50 / 25.4) * 72)).toBeLessThan(TRUE);
    }
  });
});

describe.skipIf(!hasPoppler)('a template that is larger than a sheet, measured by Poppler', () => {
  const large = templateJob(house(), { scale: 3, patches: [0], paper: 'letter' });

  test('is whole and true on each of its parts, which show all of it between them', async () => {
    const plan = templatesLaid(large);
    expect(plan.sheets.length).toBeGreaterThan(1);
    const pages = readPdf(await writePdf(plan, pageFonts));
    const [asked] = wanted(large);
    const outlines = pages.flatMap((page) => finishedOutlines(page).map(({ points }) => points));
    // Closed paths stay whole behind the window of their part; a part in the middle has none.
    expect(outlines.length).toBeGreaterThan(1);
    for (const outline of outlines) expect(misfit(outline, asked!.outline)).toBeLessThan(TRUE);
    for (const page of pages) {
      expect(page.text).toContain('tape');
      expect(page.text).toMatch(/^A5 r\d c\d$/m);
      expect(page.text.replace(/\s+/g, ' ')).toContain('joins here');
    }
    // Windows laid where their outlines coincide cover the upright box of the template.
    const windows = plan.sheets.flatMap(({ marks }) => {
      const path = marks.find((mark) => mark.kind === 'path' && mark.role === 'finished-outline');
      if (path?.kind !== 'path' || path.window === undefined) return [];
      const { minX, minY } = boxOf({ ...path, window: undefined } as unknown as Mark);
      const { window } = path;
      return [
        {
          left: window.minX - minX,
          right: window.maxX - minX,
          top: window.minY - minY,
          bottom: window.maxY - minY,
        },
      ];
    });
    const turned = plan.sheets.length > 0 && windows.length > 0;
    expect(turned).toBe(true);
    const right = Math.max(...windows.map((window) => window.right));
    const bottom = Math.max(...windows.map((window) => window.bottom));
    const sides = [asked!.outline.map(({ x }) => x), asked!.outline.map(({ y }) => y)].map(
      (along) => Math.max(...along) - Math.min(...along),
    );
    expect(Math.max(right, bottom)).toBeGreaterThan(Math.max(...sides) - 1);
    expect(Math.min(right, bottom)).toBeGreaterThan(Math.min(...sides) - 1);
  });

  test('and keeps the margins', () => {
    const { sheets, paper } = templatesLaid(large);
    for (const mark of sheets.flatMap(({ marks }) => marks)) {
      const box = 'window' in mark && mark.window !== undefined ? mark.window : boxOf(mark);
      expect(Math.min(box.minX, box.minY)).toBeGreaterThanOrEqual(18 - ROUNDING);
      expect(box.maxX).toBeLessThanOrEqual(paper.width - 18 + ROUNDING);
      expect(box.maxY).toBeLessThanOrEqual(paper.height - 18 + ROUNDING);
    }
  });
});

describe.skipIf(!hasPoppler)('templates for a printer that is not true', () => {
  test('come out of it true, and say that they are corrected', async () => {
    const printer = { name: 'Attic', across: 0.97, down: 1.01 };
    const job = templateJob(house(), { printer });
    const pages = readPdf(await writePdf(templatesLaid(job), pageFonts));
    const printed = (points: readonly Spot[]) =>
      points.map(({ x, y }) => ({ x: x * printer.across, y: y * printer.down }));
    expectDrawn(
      pages.flatMap((page) => finishedOutlines(page).map(({ points }) => printed(points))),
      wanted(job).map(({ outline }) => outline),
    );
    for (const page of pages)
      expect(page.text.replace(/\s+/g, ' ')).toContain(
        'Corrected for Attic, which prints 97 % across and 101 % down: not true on another one.',
      );
  });
});

test('a mirror image would not have passed', () => {
  const { outline } = wanted(templateJob(boat()))[0]!;
  const mirrored = outline.map(({ x, y }) => ({ x: -x, y }));
  expect(misfit(mirrored, outline)).toBeGreaterThan(1);
});

test.each(JOBS)('%s, read by pdf.js: every name, how they are laid, what to mind', async (_, job) => {
  const { pages } = await openPdf(await writePdf(templatesLaid(job), pageFonts));
  const text = pages.map((page) => page.text).join('\n');
  const names = job.plan.sections.flatMap(({ letter, order }) => order.map((_, k) => `${letter}${k + 1}`));
  for (const name of names) expect(text.split('\n')).toContain(name);
  for (const page of pages) {
    expect(page.text).toContain('right side');
    expect(page.text).toContain('not mirrored');
    expect(page.text).toContain('scissors');
  }
});

test.each(JOBS)('%s keep the margins, their words lie on nothing, each has its arrow', (_, job) => {
  const plan = templatesLaid(job);
  const { width, height } = plan.paper;
  for (const { marks, sections } of plan.sheets) {
    for (const mark of marks) {
      const box = boxOf(mark);
      expect(Math.min(box.minX, box.minY)).toBeGreaterThanOrEqual(18 - ROUNDING);
      expect(box.maxX).toBeLessThanOrEqual(width - 18 + ROUNDING);
      expect(box.maxY).toBeLessThanOrEqual(height - 18 + ROUNDING);
    }
    const texts = marks.filter((mark) => mark.kind === 'text').map(boxOf);
    for (const [i, one] of texts.entries())
      for (const other of texts.slice(i + 1)) expect(overlap(one, other)).toBe(false);
    const isArrow = (mark: Mark) => mark.kind === 'path' && !mark.closed && mark.points.length === 5;
    for (const name of sections)
      expect(
        marks.filter((mark) => isArrow(mark) && 'section' in mark && mark.section === name),
      ).toHaveLength(1);
  }
  expect(plan.outline).toHaveLength(job.patches.length);
});

test.each<[string, Partial<TemplateJob>, RegExp]>([
  ['a frame that would tear', { kind: 'window', allowance: 0.0625 }, /would tear/],
  ['no patch', { patches: [] }, /No patch/],
  ['a patch that is none', { patches: [99] }, /no such patch/],
  ['no size', { scale: 0 }, /0 times/],
  ['too much allowance', { allowance: 99 }, /99 in/],
])('refuses %s with a sentence', (_, more, what) => {
  const refused = layTemplates(templateJob(house(), more));
  expect(refused.ok ? null : refused.problem.what).toMatch(what);
});

test('a template says how many are cut by it, and from which fabric', () => {
  const job = templateJob(house(), { patches: [0, 1], fabrics: ['Brick', null], copies: 12, mirrored: 2 });
  const words = (more: Partial<TemplateJob>) =>
    templatesLaid({ ...job, ...more })
      .sheets.flatMap(({ marks }) => marks)
      .flatMap((mark) => (mark.kind === 'text' && mark.role === 'caption' ? [mark.content] : []));
  const all = words({});
  expect(all.filter((text) => text.includes(': cut'))).toEqual([
    expect.stringMatching(/^[A-Z]\d: cut 12, and 2 turned over, from Brick$/),
    expect.stringMatching(/^[A-Z]\d: cut 12, and 2 turned over$/),
  ]);
  expect(words({ mirrored: 0, fabrics: [] }).filter((text) => /^[A-Z]\d: cut 12$/.test(text))).toHaveLength(
    2,
  );
  expect(words({ copies: 0 }).some((text) => /: cut 2 turned over, from Brick$/.test(text))).toBe(true);
  expect(words({ copies: 0, mirrored: 0, fabrics: [] }).some((text) => text.includes('cut'))).toBe(false);
  // A name that would not end is shortened; one in parts says it on each.
  expect(words({ fabrics: ['Brick '.repeat(60)] }).some((text) => text.endsWith('…'))).toBe(true);
  const parts = words({ patches: [0], scale: 3 }).filter((text) => text.includes('cut 12'));
  expect(parts.length).toBeGreaterThan(1);
});
