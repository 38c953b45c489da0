import { describe, expect, test } from 'vitest';
import { finishedOutlines, hasPoppler, misfit, readPdf, type Spot } from '../../../e2e/support/pdf.ts';
import { checkPage, type FoundationJob, writePdf } from '../src/index.ts';
import { boat, house, lantern, pinwheel, usual } from './blocks.ts';
import { boxOf } from './boxes.ts';
import { pageFonts } from './fonts.ts';
import { laid } from './laid.ts';
import { printedBy } from './page-kinds.ts';
import { openPdf } from './pdfjs.ts';

/** What pages are held to: 0.01 mm, in points. */
const TRUE = (0.01 / 25.4) * 72;

/** A printer that shrinks, and not alike in both directions. */
const HARBOUR = { name: 'Harbour inkjet', across: 0.973, down: 0.989 };
/** One that enlarges. */
const QUAY = { name: 'Quay laser', across: 1.021, down: 1.008 };

/** Widths and heights of the closed squares on a printed page, smallest first. */
const squares = (closed: readonly (readonly Spot[])[]) =>
  closed
    .filter((points) => points.length === 4)
    .map((points) => {
      const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
      return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)] as const;
    });

/** 1 in = 25.4 mm: addendum to NBS Circular 572; 50 mm = 141.732 pt: ISO 32000-1, table 30. */
const SIDES = [72, 141.732283];

function expectTrueSquares(closed: readonly (readonly Spot[])[]): void {
  for (const side of SIDES)
    expect(squares(closed).some(([w, h]) => Math.abs(w - side) < TRUE && Math.abs(h - side) < TRUE)).toBe(
      true,
    );
}

const JOBS: readonly FoundationJob[] = [
  usual(house(), 'Harbour house', { printer: HARBOUR }),
  usual(boat(), 'Paper boat', { paper: 'a4', scale: 0.75, printer: HARBOUR }),
  usual(pinwheel(4), 'Pinwheel', { printer: QUAY }),
];

describe.each(JOBS)('pages corrected for a printer: $title', (job) => {
  const printed = printedBy(job.printer!);
  const wanted = job.plan.sections.map(({ outline }) =>
    outline.map(({ x, y }) => ({ x: -x * job.sizes[0]!.scale * 72, y: y * job.sizes[0]!.scale * 72 })),
  );

  test.skipIf(!hasPoppler)('measured by Poppler once it is printed', async () => {
    const pages = readPdf(await writePdf(laid(job), pageFonts));
    for (const page of pages) expectTrueSquares(page.paths.map(({ points }) => points.map(printed)));
    const drawn = pages.flatMap(finishedOutlines).map(({ points }) => points.map(printed));
    expect(drawn).toHaveLength(wanted.length);
    for (const outline of wanted)
      expect(Math.min(...drawn.map((points) => misfit(points, outline)))).toBeLessThan(TRUE);
  });

  test('measured by pdf.js once it is printed', async () => {
    const { pages } = await openPdf(await writePdf(laid(job), pageFonts));
    for (const page of pages) {
      const closed = page.paths.filter((path) => path.closed).map(({ points }) => points.map(printed));
      expectTrueSquares(closed);
    }
    const drawn = pages
      .flatMap(({ paths }) => paths)
      .filter((path) => path.closed && path.dash.length === 0)
      .map(({ points }) => points.map(printed));
    for (const outline of wanted)
      expect(Math.min(...drawn.map((points) => misfit(points, outline)))).toBeLessThan(TRUE);
  });

  test('the sheet keeps its size, says what it is corrected for, and all of it comes out on the paper', () => {
    const plan = laid(job);
    const { width, height } = plan.paper;
    const { name, across, down } = job.printer!;
    expect(plan.paper).toEqual(laid({ ...job, printer: undefined as never }).paper);
    for (const { marks } of plan.sheets) {
      const said = marks.flatMap((mark) => (mark.kind === 'text' ? [mark.content] : [])).join(' ');
      expect(said).toContain(`Corrected for ${name}, which prints`);
      for (const mark of marks) {
        const box = boxOf(mark);
        // A printer that enlarges pushes the page over all edges alike, or over the right and the lower one.
        for (const share of [0, 0.5]) {
          const [x, y] = [share * Math.max(0, across - 1) * width, share * Math.max(0, down - 1) * height];
          // 1/4 in is safe: printer manuals, common practice. Texts are set within 0.05 pt.
          expect(box.minX * across - x).toBeGreaterThan(18 - 0.05);
          expect(box.minY * down - y).toBeGreaterThan(18 - 0.05);
          expect(box.maxX * across - x).toBeLessThan(width * Math.min(1, across) - 18 + 0.05);
          expect(box.maxY * down - y).toBeLessThan(height * Math.min(1, down) - 18 + 0.05);
        }
      }
    }
  });
});

test('tiles are corrected with their windows', () => {
  const plan = laid(usual(lantern(14), 'Lantern', { printer: HARBOUR }));
  const windows = plan.sheets.flatMap(({ marks }) =>
    marks.flatMap((mark) => (mark.kind === 'path' && mark.window !== undefined ? [mark.window] : [])),
  );
  expect(windows.length).toBeGreaterThan(0);
  for (const { minX, maxX, minY, maxY } of windows) {
    expect(minX * HARBOUR.across).toBeGreaterThanOrEqual(18 - 1e-9);
    expect(maxX * HARBOUR.across).toBeLessThanOrEqual(612 * HARBOUR.across - 18 + 1e-9);
    expect(minY).toBeLessThan(maxY);
  }
});

describe('the check page', () => {
  test.each(['letter', 'legal', 'tabloid', 'a4', 'a3'] as const)(
    '%s: squares and rulers are true',
    async (paper) => {
      for (const unit of ['in', 'cm'] as const)
        for (const printer of [undefined, HARBOUR]) {
          const page = checkPage({ paper, unit, ...(printer && { printer }) });
          if (!page.ok) throw new Error(page.problem.what);
          const { plan, rulers } = page.value;
          const { pages } = await openPdf(await writePdf(plan, pageFonts));
          const printed = printedBy(printer);
          const paths = pages[0]!.paths.map((path) => ({ ...path, points: path.points.map(printed) }));
          expectTrueSquares(paths.filter(({ closed }) => closed).map(({ points }) => points));
          const lines = paths.filter(({ closed, points }) => !closed && points.length === 2);
          const lengths = (axis: 'x' | 'y') =>
            lines.map(({ points: [a, b] }) => Math.abs(a![axis] - b![axis])).sort((p, q) => q - p);
          expect(Math.abs(lengths('x')[0]! - rulers.across * 72)).toBeLessThan(TRUE);
          expect(Math.abs(lengths('y')[0]! - rulers.down * 72)).toBeLessThan(TRUE);
          // Long enough to be worth more than the squares.
          expect(rulers.across).toBeGreaterThanOrEqual(6);
          expect(rulers.down).toBeGreaterThan(9);
        }
    },
  );

  test('everything is on the paper and apart from the rest, on small sheets too', () => {
    for (const paper of ['letter', 'a3', { width: 4, height: 6 }, { width: 20, height: 5 }] as const) {
      const page = checkPage({ paper });
      if (!page.ok) throw new Error(page.problem.what);
      const { marks } = page.value.plan.sheets[0]!;
      const { width, height } = page.value.plan.paper;
      const texts = marks.filter((mark) => mark.kind === 'text').map((mark) => boxOf(mark));
      for (const mark of marks) {
        const { minX, minY, maxX, maxY } = boxOf(mark);
        expect(Math.min(minX, minY, width - maxX, height - maxY)).toBeGreaterThanOrEqual(18 - 1e-6);
      }
      texts.forEach((p, i) => {
        for (const q of texts.slice(i + 1)) {
          const apart = p.maxX <= q.minX || q.maxX <= p.minX || p.maxY <= q.minY || q.maxY <= p.minY;
          expect(apart).toBe(true);
        }
      });
    }
  });
});
