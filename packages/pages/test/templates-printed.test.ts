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
  ['a template larger than the sheet', { scale: 3 }, /larger than a sheet/],
  ['a frame that would tear', { kind: 'window', allowance: 0.0625 }, /would tear/],
  ['no patch', { patches: [] }, /No patch/],
  ['a patch that is none', { patches: [99] }, /no such patch/],
  ['no size', { scale: 0 }, /0 times/],
  ['too much allowance', { allowance: 99 }, /99 in/],
])('refuses %s with a sentence', (_, more, what) => {
  const refused = layTemplates(templateJob(house(), more));
  expect(refused.ok ? null : refused.problem.what).toMatch(what);
});
