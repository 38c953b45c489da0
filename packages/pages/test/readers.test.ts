import { beforeAll, describe, expect, test } from 'vitest';
import {
  checkSquareSides,
  cuttingLines,
  type DrawnPage,
  finishedOutlines,
  hasPoppler,
  readPdf,
} from '../../../e2e/support/pdf.ts';
import { hasLibrsvg, readSvg } from '../../../e2e/support/svg.ts';
import { type PagePlan, type Sheet, writePdf, writeSvg } from '../src/index.ts';
import { pageFonts } from './fonts.ts';
import { KNOWN_PAPERS, onPaper, pageKinds, printedBy } from './page-kinds.ts';
import { openPdf, type ReadPath, type ReadPdf } from './pdfjs.ts';
import { missingFrom } from './same-paths.ts';
import { signsOf, wordsOf } from './words.ts';

/** What pages are held to: 0.01 mm, in points. */
const TRUE = (0.01 / 25.4) * 72;

/** 1 in and 50 mm. ISO 32000-1, table 30: 72 points are an inch; addendum to NBS Circular 572: an inch is 25.4 mm. */
const SIDES = [72, (50 / 25.4) * 72];

describe.each(KNOWN_PAPERS)('on $name', (paper) => {
  describe.each(pageKinds(paper))('$kind', ({ lay, printer, outlines, squares }) => {
    let plan: PagePlan;
    let bytes: Uint8Array;
    beforeAll(async () => {
      plan = await lay();
      bytes = await writePdf(plan, pageFonts);
    });

    describe('read by pdf.js', () => {
      let read: ReadPdf;
      beforeAll(async () => {
        read = await openPdf(bytes);
      });

      test('the pages are the paper, and have the two check squares where anything is of true size', () => {
        expect(read.pages).toHaveLength(plan.sheets.length);
        for (const { view, paths } of read.pages) {
          expect(view.slice(0, 2)).toEqual([0, 0]);
          expect(Math.abs(view[2]! - paper.width)).toBeLessThan(TRUE);
          expect(Math.abs(view[3]! - paper.height)).toBeLessThan(TRUE);
          const sides = paths
            .filter(({ window }) => window === null)
            .flatMap(({ points, ...path }) =>
              squareSides({ ...path, points: points.map(printedBy(printer)) }),
            );
          for (const side of SIDES)
            expect(sides.some((found) => Math.abs(found - side) < TRUE)).toBe(squares);
        }
      });

      test('every word of the plan is there, and all that is seen is on the sheet', () => {
        read.pages.forEach(({ text, baseLines, paths }, i) => {
          expect(wordsOf(text)).toEqual(wordsOf(said(plan.sheets[i]!)));
          const seen = paths.map(({ points, window }) => window ?? points);
          for (const { x, y } of [...baseLines, ...seen].flat())
            expect(x > 0 && y > 0 && x < paper.width && y < paper.height).toBe(true);
        });
      });

      test('every path is where the plan has it', () => {
        plan.sheets.forEach(({ marks }, i) => {
          const planned = marks.flatMap((mark) => (mark.kind === 'path' ? [mark] : []));
          const drawn = read.pages[i]!.paths;
          expect(drawn).toHaveLength(planned.length);
          drawn.forEach(({ points }, k) => {
            points.forEach(({ x, y }, n) => {
              const { x: wantedX, y: wantedY } = planned[k]!.points[n]!;
              expect(Math.hypot(x - wantedX, y - wantedY)).toBeLessThan(TRUE);
            });
          });
        });
      });
    });

    describe.skipIf(!hasPoppler)('read by Poppler', () => {
      let pages: readonly DrawnPage[] = [];
      beforeAll(() => {
        pages = readPdf(bytes);
      });

      test('the pages are the paper, and have the two check squares where anything is of true size', () => {
        expect(pages).toHaveLength(plan.sheets.length);
        for (const page of pages) {
          expect(Math.abs(page.width - paper.width)).toBeLessThan(TRUE);
          expect(Math.abs(page.height - paper.height)).toBeLessThan(TRUE);
          const sides = checkSquareSides(onPaper(page, printer));
          expect(sides.map((side, i) => Math.abs(side - SIDES[i]!) < TRUE)).toEqual(
            squares ? [true, true] : [],
          );
        }
      });

      test('what is written is what the plan says', () => {
        pages.forEach(({ text }, i) => {
          expect(signsOf(text)).toEqual(signsOf(said(plan.sheets[i]!)));
        });
      });

      if (outlines)
        test('each foundation or template has its finished outline and its cutting line', () => {
          const whole = pages.filter((page) => finishedOutlines(page).every(({ window }) => window === null));
          for (const page of whole) expect(cuttingLines(page)).toHaveLength(finishedOutlines(page).length);
          const keys = new Set(plan.sheets.flatMap(({ sections }) => sections));
          expect(pages.flatMap(finishedOutlines).length).toBeGreaterThanOrEqual(keys.size);
        });

      test.skipIf(!hasLibrsvg)(
        'the SVG, read by librsvg, has the same paths in the same places, and no others',
        () => {
          pages.forEach((page, i) => {
            const svg = readSvg(writeSvg(plan, i));
            expect(Math.abs(svg.width - paper.width)).toBeLessThan(TRUE);
            expect(Math.abs(svg.height - paper.height)).toBeLessThan(TRUE);
            expect(missingFrom(svg, page, TRUE)).toEqual([]);
            expect(missingFrom(page, svg, TRUE)).toEqual([]);
          });
        },
      );
    });
  });
});

/** All texts of a sheet. */
const said = ({ marks }: Sheet): string =>
  marks.flatMap((mark) => (mark.kind === 'text' ? [mark.content] : [])).join(' ');

/** Its side, where the path is an upright square. */
function squareSides({ points, closed }: ReadPath): readonly number[] {
  const [p, q, r] = points;
  if (!closed || points.length !== 4) return [];
  const [first, second] = [Math.hypot(q!.x - p!.x, q!.y - p!.y), Math.hypot(r!.x - q!.x, r!.y - q!.y)];
  return Math.abs(first - second) < TRUE && Math.min(Math.abs(p!.x - q!.x), Math.abs(p!.y - q!.y)) < TRUE
    ? [first]
    : [];
}
