import { type Browser, chromium } from '@playwright/test';
import { distanceToSegment, edgesOf } from '@seamwright/geometry';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  checkSquareSides,
  type DrawnPage,
  type DrawnPath,
  hasPoppler,
  readPdf,
  type Spot,
} from '../../../e2e/support/pdf.ts';
import { chromiumSwitches, presentChromium, thisMachine } from '../../../scripts/lib/find.mjs';
import { type PagePlan, printsOf, writePdf, writePrintHtml } from '../src/index.ts';
import { lantern, pinwheel, usual } from './blocks.ts';
import { pageFonts } from './fonts.ts';
import { laid } from './laid.ts';
import { KNOWN_PAPERS, onPaper, pageKinds } from './page-kinds.ts';
import { missingFrom } from './same-paths.ts';
import { signsOf, wordsOf } from './words.ts';

/** What pages are held to: 0.01 mm, in points. */
const TRUE = (0.01 / 25.4) * 72;

/** Points: Chromium's own pages are so many whole dots of 1/300 in, more or less. What is on them is true from the top left corner. */
const PAGE_WITHIN = (3 * 72) / 300;

const { path: executablePath } = presentChromium(thisMachine);

describe.skipIf(executablePath === null || !hasPoppler)(
  'printed from the browser, measured by Poppler',
  () => {
    let browser: Browser;
    beforeAll(async () => {
      browser = await chromium.launch({
        executablePath: executablePath!,
        args: chromiumSwitches(thisMachine),
      });
    });
    afterAll(() => browser.close());

    /** The pages as Chromium prints them, and as the PDF has them. */
    async function bothWays(
      plan: PagePlan,
      times?: readonly number[],
    ): Promise<{ printed: readonly DrawnPage[]; saved: readonly DrawnPage[] }> {
      const page = await browser.newPage();
      await page.setContent(writePrintHtml(plan, pageFonts, times));
      await page.evaluate('document.fonts.ready');
      const printed = readPdf(await page.pdf({ preferCSSPageSize: true }));
      await page.close();
      return { printed, saved: readPdf(await writePdf(plan, pageFonts)) };
    }

    describe.each(KNOWN_PAPERS)('on $name', (paper) => {
      test.each(pageKinds(paper))('$kind: as in the PDF, to 0.01 mm', async ({ lay, printer, squares }) => {
        const { printed, saved } = await bothWays(await lay());
        expect(printed).toHaveLength(saved.length);
        printed.forEach((page, i) => {
          expect(Math.abs(page.width - paper.width)).toBeLessThan(PAGE_WITHIN);
          expect(Math.abs(page.height - paper.height)).toBeLessThan(PAGE_WITHIN);
          const sides = checkSquareSides(onPaper(page, printer));
          expect(sides).toHaveLength(squares ? 2 : 0);
          // 1 in = 72 pt, 50 mm: ISO 32000-1, table 30; addendum to NBS Circular 572.
          for (const [k, side] of sides.entries())
            expect(Math.abs(side - [72, (50 / 25.4) * 72][k]!)).toBeLessThan(TRUE);
          const wanted = saved[i]!;
          expect(signsOf(page.text)).toEqual(signsOf(wanted.text));
          // Chromium prints dashes as little filled shapes.
          const solid = { ...wanted, paths: wanted.paths.filter(({ dashed }) => !dashed) };
          expect(missingFrom(page, solid, TRUE)).toEqual([]);
          expect(missingFrom(solid, page, TRUE)).toEqual([]);
          expectDashes(
            page,
            wanted.paths.filter(({ dashed }) => dashed),
          );
        });
      });
    });

    test('a sheet that is wanted three times is on three pages that are alike', async () => {
      const plan = laid(usual(pinwheel(7), 'Pinwheel', { copies: 3 }));
      const { printed, saved } = await bothWays(plan, printsOf(plan).times);
      expect(printed).toHaveLength(3 * saved.length);
      for (const [i, page] of printed.entries()) {
        const first = printed[3 * Math.floor(i / 3)]!;
        expect(missingFrom(page, first, TRUE)).toEqual([]);
        expect(missingFrom(first, page, TRUE)).toEqual([]);
      }
    });

    test('the words are set in the embedded fonts, and are those of the PDF', async () => {
      const { printed, saved } = await bothWays(laid(usual(lantern(10), 'Lantern & café')));
      printed.forEach((page, i) => {
        expect(wordsOf(page.text)).toEqual(wordsOf(saved[i]!.text));
      });
    });
  },
);

/** Dash lengths and gaps of cutting lines, points, and how wide they are: the README's table. */
const DASH = { on: 5, period: 8, width: 0.75 };

/** The dashes of straight stretches lie on the dashed lines, where there are any, and there are as many as what is seen of those has room for. */
function expectDashes(page: DrawnPage, lines: readonly DrawnPath[]): void {
  const dashes = page.paths
    .filter(({ stroked }) => !stroked)
    .map(cornersOf)
    .filter(isDash);
  for (const points of dashes) {
    const centre = { x: mean(points.map(({ x }) => x)), y: mean(points.map(({ y }) => y)) };
    const off = lines.flatMap((line) =>
      stretches(line).map(({ a, b }) => distanceToSegment<'page'>(centre, a, b)),
    );
    expect(Math.min(...off)).toBeLessThan(TRUE);
  }
  if (lines.length === 0) return;
  const seen = lines.reduce((sum, line) => sum + seenLength(line), 0);
  expect(dashes.length).toBeGreaterThan((0.8 * seen) / DASH.period - 4 * lines.length);
}

/** Filled paths need not say that they are closed; their first corner may be there twice. */
function cornersOf({ points }: DrawnPath): readonly Spot[] {
  const [first, last] = [points[0]!, points.at(-1)!];
  return Math.hypot(first.x - last.x, first.y - last.y) < TRUE ? points.slice(0, -1) : points;
}

function isDash(points: readonly Spot[]): boolean {
  if (points.length !== 4) return false;
  const sides = points.map((p, i) => Math.hypot(points[(i + 1) % 4]!.x - p.x, points[(i + 1) % 4]!.y - p.y));
  const [short, , long] = sides.toSorted((p, q) => p - q);
  return Math.abs(short! - DASH.width) < TRUE && Math.abs(long! - DASH.on) < TRUE;
}

const mean = (numbers: readonly number[]): number => numbers.reduce((sum, n) => sum + n, 0) / numbers.length;

/** Of an open path all but the way back from its end to its start. */
const stretches = ({ points, closed }: DrawnPath) => {
  const edges = edgesOf<'page'>(points);
  return closed ? edges : edges.slice(0, -1);
};

/** How much of the path is seen through its window, walked in little steps. */
function seenLength(path: DrawnPath): number {
  const { window } = path;
  const step = 0.5;
  let length = 0;
  for (const { a, b } of stretches(path)) {
    const size = Math.hypot(b.x - a.x, b.y - a.y);
    for (let s = step / 2; s < size; s += step) {
      const [x, y] = [a.x + ((b.x - a.x) * s) / size, a.y + ((b.y - a.y) * s) / size];
      if (window === null || (x > window[0] && y > window[1] && x < window[2] && y < window[3]))
        length += step;
    }
  }
  return length;
}
