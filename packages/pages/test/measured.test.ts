import {
  contains,
  distance,
  distanceToSegment,
  edgesOf,
  type Point,
  type Polygon,
} from '@seamwright/geometry';
import type { Section } from '@seamwright/sewing';
import { beforeAll, describe, expect, test } from 'vitest';
import {
  checkSquareSides,
  cuttingLines,
  type DrawnPage,
  type DrawnPath,
  finishedOutlines,
  hasPoppler,
  misfit,
  readPdf,
  straightLines,
} from '../../../e2e/support/pdf.ts';
import { type FoundationJob, PAPERS, type PaperName, writePdf } from '../src/index.ts';
import { block, boat, house, jib, lantern, pier, pinwheel, rectangle, usual, wharf } from './blocks.ts';
import { pageFonts } from './fonts.ts';
import { laid } from './laid.ts';

/** What pages are held to: 0.01 mm, in points. */
const TRUE = (0.01 / 25.4) * 72;

/** Fabrics, what to cut and lengths of seams, for a block of so many patches. */
const everything = (patches: number): Partial<FoundationJob> => ({
  fabrics: Array.from({ length: patches }, (_, i) => ({
    letter: 'ab'[i % 2]!,
    name: 'Sail',
    upright: i > 1,
  })),
  cutting: {
    rules: { spare: 1 / 4, turn: 0, roundUpTo: 1 / 4 },
    cloths: Array.from({ length: patches }, () => null),
  },
  seamLengths: true,
});

const JOBS: readonly FoundationJob[] = [
  usual(house(), 'Harbour house'),
  usual(house(), 'Harbour house', { paper: 'a4', unit: 'cm' }),
  usual(lantern(2), 'Lantern'),
  usual(lantern(7.5), 'Lantern'),
  usual(lantern(4), 'Lantern', { scale: Math.SQRT2, allowance: 0.375 }),
  usual(pinwheel(4), 'Pinwheel', { copies: 4 }),
  usual(pinwheel(6), 'Pinwheel', { paper: 'a4' }),
  usual(jib(), 'Jib'),
  usual(pier(), 'Pier'),
  usual(boat(), 'Paper boat'),
  usual(boat(), 'Paper boat', { paper: 'a4', scale: 0.5, allowance: 0.125 }),
  // Everything that can be written, in light ink: none of it may be taken for a seam or an outline.
  usual(pinwheel(4), 'Pinwheel', { ...everything(8), ink: 'light' }),
  // Slivers, whose labels are led out.
  usual(
    block(rectangle(3, 2), [
      [0, 1, 3, 1],
      [0, 1.04, 3, 1.07],
      [1.5, 0, 1.53, 1],
    ]),
    'Slivers',
    everything(4),
  ),
  // Nine inches wide: it fits lying sideways only.
  usual(wharf(), 'Wharf'),
];

/** The finished outline as it must stand on the page: mirrored, at the job's scale, in points. */
const wantedOutline = (job: FoundationJob, section: Section): Polygon<'page'> =>
  section.outline.map(({ x, y }) => ({ x: -x * job.sizes[0]!.scale * 72, y: y * job.sizes[0]!.scale * 72 }));

const distanceToOutline = (p: Point<'page'>, outline: readonly Point<'page'>[]): number =>
  Math.min(...edgesOf<'page'>(outline).map(({ a, b }) => distanceToSegment(p, a, b)));

describe.skipIf(!hasPoppler)('saved pages, measured by Poppler', () => {
  for (const job of JOBS) {
    const { paper, title, allowance = 0.25 } = job;
    const { scale, copies } = job.sizes[0]!;
    describe(`${title} on ${String(paper)} at ${scale}, allowance ${allowance}`, () => {
      let pages: readonly DrawnPage[] = [];
      beforeAll(async () => {
        pages = readPdf(await writePdf(laid(job), pageFonts));
      });

      test('the page boxes are the paper', () => {
        // Letter 8.5 × 11 in: ANSI/ASME Y14.1. A4 210 × 297 mm: ISO 216. 1/72 in: ISO 32000-1, table 30.
        const [width, height] = paper === 'letter' ? [612, 792] : [595.275591, 841.889764];
        expect(pages.length).toBeGreaterThan(0);
        for (const page of pages) {
          expect(page.mediaBox).toEqual([0, 0, Number(width!.toFixed(2)), Number(height!.toFixed(2))]);
          // Four decimals of a point are written.
          expect(Math.abs(page.width - width!)).toBeLessThanOrEqual(0.00005);
          expect(Math.abs(page.height - height!)).toBeLessThanOrEqual(0.00005);
        }
      });

      test('the check squares are 1 in and 50 mm', () => {
        // 1 in = 25.4 mm: addendum to NBS Circular 572. 72 pt = 1 in: ISO 32000-1, table 30. 50 mm = 141.732 pt.
        for (const page of pages) {
          const sides = checkSquareSides(page);
          expect(sides).toHaveLength(2);
          expect(Math.abs(sides[0]! - 72)).toBeLessThan(TRUE);
          expect(Math.abs(sides[1]! - 141.732)).toBeLessThan(TRUE);
        }
      });

      test('each outline is the mirror image of its section', () => {
        const drawn = pages.flatMap(finishedOutlines);
        expect(drawn).toHaveLength(job.plan.sections.length);
        for (const section of job.plan.sections) {
          const wanted = wantedOutline(job, section);
          expect(Math.min(...drawn.map(({ points }) => misfit(points, wanted)))).toBeLessThan(TRUE);
        }
      });

      test('each cutting line is the allowance away from its outline', () => {
        const pairs = pages.flatMap(paired);
        expect(pairs).toHaveLength(job.plan.sections.length);
        for (const { outline, cuttingLine } of pairs) {
          const wanted = allowance * 72;
          // Nowhere nearer.
          for (const { a, b } of edgesOf<'page'>(cuttingLine.points))
            for (let t = 0; t <= 1; t += 0.02) {
              const p = { x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) };
              expect(distanceToOutline(p, outline.points)).toBeGreaterThan(wanted - TRUE);
            }
          // And just so far from the middle of each edge, unless a notch is in the way.
          let measured = 0;
          for (const { a, b } of edgesOf<'page'>(outline.points)) {
            const size = distance<'page'>(a, b);
            const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
            const square = { x: ((b.y - a.y) / size) * wanted, y: (-(b.x - a.x) / size) * wanted };
            const [p, q] = [
              { x: middle.x + square.x, y: middle.y + square.y },
              { x: middle.x - square.x, y: middle.y - square.y },
            ];
            const outside = contains<'page'>(outline.points, p!) === 'outside' ? p! : q!;
            if (distanceToOutline(outside, outline.points) < wanted - TRUE) continue;
            measured++;
            expect(distanceToOutline(outside, cuttingLine.points)).toBeLessThan(TRUE);
          }
          expect(measured).toBeGreaterThanOrEqual(3);
        }
      });

      test('every sew line is there, and runs on to the cutting line wherever it leaves the outline', () => {
        let found = 0;
        for (const page of pages)
          for (const { outline, cuttingLine } of paired(page)) {
            const within = straightLines(page).filter(({ points }) =>
              points.every(
                (p) =>
                  contains<'page'>(cuttingLine.points, p) !== 'outside' ||
                  distanceToOutline(p, cuttingLine.points) < TRUE,
              ),
            );
            const sewLines = within.filter(({ width }) => Math.abs(width - 0.75) < 0.01);
            const runs = within.filter(({ width }) => Math.abs(width - 0.5) < 0.01);
            found += sewLines.length;
            for (const { points } of sewLines)
              for (const [end, other] of [points, [...points].reverse()]) {
                const onward = beyond(end!, other!, 2);
                const leaves =
                  distanceToOutline(end!, outline.points) < TRUE &&
                  contains<'page'>(outline.points, onward) === 'outside' &&
                  distanceToOutline(onward, outline.points) > 5 * TRUE;
                const own = runs.filter((run) => carriesOn(run, end!, other!));
                expect(own).toHaveLength(leaves ? 1 : 0);
                for (const { points: ends } of own) {
                  const far = ends.find((p) => distance<'page'>(p, end!) > 1)!;
                  expect(distanceToOutline(far, cuttingLine.points)).toBeLessThan(TRUE);
                }
              }
          }
        expect(found).toBe(job.plan.sections.reduce((sum, { sewLines }) => sum + sewLines.length, 0));
      });

      test('piece numbers, names and instructions can be read on the page', () => {
        const text = pages.map((page) => page.text).join('\n');
        for (const { letter, order } of job.plan.sections)
          for (let k = 1; k <= order.length; k++) expect(text).toMatch(new RegExp(`\\b${letter}${k}\\b`));
        for (const page of pages) {
          expect(page.text).toContain(title);
          expect(page.text).toContain('Print at 100 %, no scaling');
          expect(page.text).toMatch(/page \d+ of \d+/);
          for (const words of ['1 in', '50 mm', 'sew', 'cut', 'top of block', `Print ${copies}`])
            expect(page.text).toContain(words);
        }
      });

      test('everything keeps clear of the unprintable margin', () => {
        // 1/4 in is safe: printer manuals, common practice.
        const { width, height } = PAPERS[paper as PaperName];
        for (const page of pages)
          for (const { points } of page.paths)
            for (const { x, y } of points) {
              expect(Math.min(x, y, width - x, height - y)).toBeGreaterThan(18 - TRUE);
            }
      });
    });
  }
});

/** Each outline of the page with the cutting line round it. */
function paired(page: DrawnPage): readonly { outline: DrawnPath; cuttingLine: DrawnPath }[] {
  const lines = cuttingLines(page);
  return finishedOutlines(page).map((outline) => ({
    outline,
    cuttingLine: lines.find(({ points }) =>
      outline.points.every((p) => contains<'page'>(points, p) === 'inside'),
    )!,
  }));
}

/** The point `by` points past `end`, coming from `from`. */
function beyond(end: Point<'page'>, from: Point<'page'>, by: number): Point<'page'> {
  const size = distance<'page'>(from, end);
  return { x: end.x + ((end.x - from.x) / size) * by, y: end.y + ((end.y - from.y) / size) * by };
}

/** Whether the run starts at the sew line's end and lies on its line, on the far side. */
function carriesOn({ points }: DrawnPath, end: Point<'page'>, from: Point<'page'>): boolean {
  const near = points.find((p) => distance<'page'>(p, end) < TRUE);
  const far = points.find((p) => p !== near);
  if (near === undefined || far === undefined) return false;
  // Poppler's own rounding at both ends, seen from the line's full length.
  return distance<'page'>(beyond(end, from, distance<'page'>(end, far)), far) < 5 * TRUE;
}
