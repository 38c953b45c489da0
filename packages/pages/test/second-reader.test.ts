import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { misfit, type Spot } from '../../../e2e/support/pdf.ts';
import { type FoundationJob, type PathMark, writePdf } from '../src/index.ts';
import { block, boat, house, lantern, pinwheel, rectangle, usual } from './blocks.ts';
import { pageFonts } from './fonts.ts';
import { laid } from './laid.ts';
import { openPdf, type ReadPdf } from './pdfjs.ts';

/** What pages are held to: 0.01 mm, in points. */
const TRUE = (0.01 / 25.4) * 72;

const JOBS: readonly FoundationJob[] = [
  usual(house(), 'Hafenhaus (größer)', { paper: 'a4', copies: 3, pattern: 'Reading room quilt' }),
  usual(pinwheel(2.5), 'Вертушка', {}),
  usual(boat(), '紙船', { paper: 'a4', scale: 0.5 }),
  usual(lantern(10), 'Lantern'),
  // A label with a leader, an arrow, a picture of the joins.
  usual(
    block(rectangle(3, 2), [
      [0, 1, 3, 1],
      [0, 1.04, 3, 1.07],
      [1.5, 0, 1.53, 1],
      [0.7, 1.07, 0.7, 2],
    ]),
    'Slivers',
    { fabrics: Array.from({ length: 6 }, () => ({ letter: 'a', name: 'Sail white', upright: true })) },
  ),
];

describe.each(JOBS.map((job) => [job.title, job] as const))('%s, read by pdf.js', (title, job) => {
  const plan = laid(job);
  let read: ReadPdf;
  beforeAll(async () => {
    read = await openPdf(await writePdf(plan, pageFonts));
  });

  test('the page boxes are the paper, to the last decimal that is written', () => {
    // ANSI/ASME Y14.1, ISO 216; ISO 32000-1, table 30: 1/72 in.
    const wanted = job.paper === 'letter' ? [0, 0, 612, 792] : [0, 0, 595.2756, 841.8898];
    for (const { view } of read.pages) expect(view).toEqual(wanted);
    expect(read.pages).toHaveLength(plan.sheets.length);
  });

  test('viewers are asked not to scale', () => {
    // ISO 32000-1, table 150.
    expect(read.viewerPreferences).toMatchObject({
      PrintScaling: 'None',
      Duplex: 'Simplex',
      PickTrayByPDFSize: true,
    });
  });

  test('title and outline are whole in any script', () => {
    expect(read.info.Title).toBe(title);
    expect(read.outline.map(({ title: entry, page }) => [entry, page])).toEqual(
      plan.outline.flatMap((entry) => [
        [entry.title, entry.sheet],
        ...entry.children.map((child) => [child.title, child.sheet]),
      ]),
    );
  });

  test('every path of the plan is there as it was planned', () => {
    plan.sheets.forEach(({ marks }, i) => {
      const planned = marks.filter((mark): mark is PathMark => mark.kind === 'path');
      const drawn = read.pages[i]!.paths;
      expect(drawn).toHaveLength(planned.length);
      drawn.forEach(({ points, closed, dash }, k) => {
        const mark = planned[k]!;
        expect(closed).toBe(mark.closed);
        expect(dash).toEqual(mark.stroke?.dash ?? []);
        points.forEach(({ x, y }, n) => {
          expect(Math.hypot(x - mark.points[n]!.x, y - mark.points[n]!.y)).toBeLessThan(TRUE);
        });
      });
    });
  });

  test('check squares are 72 and 141.732 points, outlines the mirrored sections', () => {
    for (const { paths } of read.pages) {
      const sides = paths
        .filter(({ window }) => window === null)
        .map(sideOfSquare)
        .filter((side) => side !== null && side > 36);
      // 1 in = 72 pt, 50 mm = 141.732 pt: ISO 32000-1, table 30; addendum to NBS Circular 572.
      expect(sides.sort((p, q) => p! - q!)).toEqual([expect.closeTo(72, 3), expect.closeTo(141.732, 3)]);
    }
    const closed = read.pages
      .flatMap(({ paths }) => paths)
      .filter((path) => path.closed && path.dash.length === 0);
    for (const { outline } of job.plan.sections) {
      const wanted = outline.map(({ x, y }) => ({
        x: -x * job.sizes[0]!.scale * 72,
        y: y * job.sizes[0]!.scale * 72,
      }));
      expect(Math.min(...closed.map(({ points }) => misfit(points, wanted)))).toBeLessThan(TRUE);
    }
  });

  test('the text can be searched and copied', () => {
    for (const { text } of read.pages) {
      expect(text).toContain('Print at 100 %, no scaling');
      expect(text).toContain(title === '紙船' ? '??' : title);
      expect(text).toContain('¼ in seam allowance');
    }
  });
});

function sideOfSquare({ points, closed }: { points: readonly Spot[]; closed: boolean }): number | null {
  if (!closed || points.length !== 4) return null;
  const [p, q, r] = points as [Spot, Spot, Spot];
  const [first, second] = [Math.hypot(q.x - p.x, q.y - p.y), Math.hypot(r.x - q.x, r.y - q.y)];
  const square = Math.abs(first - second) < 0.001 && (p.x === q.x || p.y === q.y);
  return square ? first : null;
}

describe('the file as a whole', () => {
  test('the same plan gives the same bytes, another plan others', async () => {
    const [first, second, other] = await Promise.all([
      writePdf(laid(usual(house(), 'Harbour house')), pageFonts),
      writePdf(laid(usual(house(), 'Harbour house')), pageFonts),
      writePdf(laid(usual(house(), 'Harbour House')), pageFonts),
    ]);
    expect(Buffer.compare(first!, second!)).toBe(0);
    expect(Buffer.compare(first!, other!)).not.toBe(0);
  });

  test('the fonts are embedded, and only as far as they are used', async () => {
    const bytes = await writePdf(laid(usual(house(), 'Harbour house')), pageFonts);
    const { fonts } = await openPdf(bytes);
    expect(fonts.length).toBe(2);
    expect(fonts.every(({ missingFile }) => !missingFile)).toBe(true);
    expect(bytes.length).toBeLessThan((pageFonts.regular.length + pageFonts.semibold.length) / 4);
  });

  const hasQpdf = runs('qpdf');
  test.skipIf(!hasQpdf)('qpdf finds no fault with it', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'seamwright-qpdf-'));
    try {
      const file = join(folder, 'file.pdf');
      writeFileSync(file, await writePdf(laid(usual(lantern(10), 'Lantern & café')), pageFonts));
      expect(execFileSync('qpdf', ['--check', file], { encoding: 'utf8' })).toContain(
        'No syntax or stream encoding errors',
      );
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});

function runs(tool: string): boolean {
  try {
    execFileSync(tool, ['--version'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}
