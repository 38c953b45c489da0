import { boundingBox, contains, distance, distanceToSegment, edgesOf } from '@seamwright/geometry';
import { beforeAll, describe, expect, test } from 'vitest';
import {
  type DrawnPage,
  type DrawnPath,
  hasPoppler,
  readPdf,
  type Spot,
  type Window,
} from '../../../e2e/support/pdf.ts';
import { type FoundationJob, type Mark, type TextMark, writePdf } from '../src/index.ts';
import { clippedSegments } from '../src/marks/clip.ts';
import { block, house, lantern, rectangle, usual } from './blocks.ts';
import { boxOf, overlap } from './boxes.ts';
import { pageFonts } from './fonts.ts';
import { laid } from './laid.ts';

/** What pages are held to: 0.01 mm, in points. */
const TRUE = (0.01 / 25.4) * 72;

/** The sideways one is turned a quarter clockwise. */
const JOBS: readonly (readonly [what: string, job: FoundationJob, columns: number, rows: number])[] = [
  ['two by two', usual(lantern(10), 'Lantern'), 2, 2],
  ['two by two on A4', usual(lantern(12), 'Lantern', { paper: 'a4' }), 2, 2],
  ['three by three', usual(lantern(20), 'Lantern'), 3, 3],
  ['a row of two, sideways', usual(house(), 'Harbour house', { scale: 1.4 }), 2, 1],
  // 10½ × 9.4 in with its allowance: beside the check squares there is that height, but none for a caption above.
  [
    'a row of two, the caption at the left',
    usual(block(rectangle(10, 8.9), [[0, 3, 10, 5]]), 'Awning'),
    2,
    1,
  ],
  ['a row of four', usual(block(rectangle(30, 5), [[4, 0, 9, 5]]), 'Breakwater'), 4, 1],
  ['two by two on Tabloid', usual(lantern(16), 'Lantern', { paper: 'tabloid', overlap: 0.25 }), 2, 2],
  ['two by two on A3', usual(lantern(16), 'Lantern', { paper: 'a3', overlap: 2 }), 2, 2],
  ['two by one on Legal', usual(lantern(9), 'Lantern', { paper: 'legal', overlap: 0.75 }), 2, 1],
  [
    'on small cards with uneven margins',
    usual(lantern(9), 'Lantern', {
      paper: { width: 6, height: 8 },
      margins: { top: 0.3, right: 0.5, bottom: 0.4, left: 0.25 },
      overlap: 1,
    }),
    2,
    3,
  ],
];

describe.skipIf(!hasPoppler)('tiles laid diamond on diamond, measured by Poppler', () => {
  for (const [what, job, columns, rows] of JOBS)
    describe(what, () => {
      let pages: readonly DrawnPage[] = [];
      let offsets: readonly Spot[] = [];
      beforeAll(async () => {
        pages = readPdf(await writePdf(laid(job), pageFonts));
        offsets = layTogether(pages, columns);
      });

      test('there is a page for each tile', () => {
        expect(pages).toHaveLength(columns * rows);
      });

      test('diamonds meet all round', () => {
        // Each inner tile is held by the one to its left and the one above: both say the same place.
        pages.forEach((page, i) => {
          const above = pages[i - columns];
          if (above === undefined) return;
          const [upper, lower] = [joinsOf(above, 'y').at(-1)!, joinsOf(page, 'y')[0]!];
          upper.forEach((spot, k) => {
            expect(spot.x + offsets[i - columns]!.x).toBeCloseTo(lower[k]!.x + offsets[i]!.x, 2);
            expect(spot.y + offsets[i - columns]!.y).toBeCloseTo(lower[k]!.y + offsets[i]!.y, 2);
          });
        });
      });

      test('the finished outline is whole, and true', () => {
        const outline = wantedOn(job, what, piecesOf(pages, offsets, isOutline));
        const drawn = piecesOf(pages, offsets, isOutline);
        for (const { a, b } of edgesOf<'page'>(outline)) expectDrawn(a, b, drawn);
        for (const p of drawn.flatMap(({ points }) => points))
          expect(nearest(p, [rim(outline)])).toBeLessThan(TRUE);
      });

      test('the cutting line is whole, and the allowance away', () => {
        const outline = wantedOn(job, what, piecesOf(pages, offsets, isOutline));
        const drawn = piecesOf(pages, offsets, isCuttingLine);
        for (const { points } of drawn)
          for (const { a, b } of edgesOf<'page'>(points).slice(0, -1))
            for (let t = 0; t <= 1; t += 0.01)
              expect(nearest(between(a, b, t), [rim(outline)])).toBeGreaterThan(18 - TRUE);
        // All along each edge of the outline, at 1/4 in = 18 points.
        for (const { a, b } of edgesOf<'page'>(outline)) {
          const size = distance<'page'>(a, b);
          const out = { x: ((b.y - a.y) / size) * 18, y: (-(b.x - a.x) / size) * 18 };
          const outward = contains<'page'>(outline, moved(between(a, b, 0.5), out, 1)) === 'outside' ? 1 : -1;
          expectDrawn(moved(a, out, outward), moved(b, out, outward), drawn);
        }
      });

      test('every sew line is whole, and true', () => {
        const place = placeOn(job, what, piecesOf(pages, offsets, isOutline));
        const drawn = piecesOf(pages, offsets, isSewLine);
        for (const { a, b } of job.plan.sections[0]!.sewLines) expectDrawn(place(a), place(b), drawn);
      });
    });
});

const isOutline = ({ stroked, dashed, width }: DrawnPath) =>
  stroked && !dashed && Math.abs(width - 1.25) < 0.01;
const isCuttingLine = ({ dashed }: DrawnPath) => dashed;
const isSewLine = ({ stroked, dashed, width, closed, points }: DrawnPath) =>
  stroked && !dashed && !closed && points.length === 2 && Math.abs(width - 0.75) < 0.01;

/** From the block to the pages laid together: mirrored, in points, turned if it lies sideways, laid on what is drawn. */
function placeOn({ plan, sizes }: FoundationJob, what: string, drawn: readonly Piece[]) {
  const { scale } = sizes[0]!;
  const onPaper = ({ x, y }: Spot): Spot => {
    const mirrored = { x: -x * scale * 72, y: y * scale * 72 };
    return what.includes('sideways') ? { x: -mirrored.y, y: mirrored.x } : mirrored;
  };
  const [from, to] = [
    boundingBox<'page'>(plan.sections[0]!.outline.map(onPaper)),
    boundingBox<'page'>(drawn.flatMap(({ points }) => points)),
  ];
  return (p: Spot): Spot => moved(onPaper(p), { x: to.minX - from.minX, y: to.minY - from.minY }, 1);
}

const wantedOn = (job: FoundationJob, what: string, drawn: readonly Piece[]): readonly Spot[] =>
  job.plan.sections[0]!.outline.map(placeOn(job, what, drawn));

const moved = (p: Spot, by: Spot, times: number): Spot => ({ x: p.x + by.x * times, y: p.y + by.y * times });
const between = (a: Spot, b: Spot, t: number): Spot => moved(a, { x: b.x - a.x, y: b.y - a.y }, t);
const closedUp = (outline: readonly Spot[]): readonly Spot[] => [...outline, outline[0]!];
const rim = (outline: readonly Spot[]): Piece => ({ points: closedUp(outline), window: null });

/** Middles of the diamonds on each upright ('x') or level ('y') join of the page, from left or top. */
function joinsOf(page: DrawnPage, axis: 'x' | 'y'): readonly (readonly Spot[])[] {
  const other = axis === 'x' ? 'y' : 'x';
  const middles = page.paths.filter(isDiamond).map(({ points }) => ({
    x: points.reduce((sum, { x }) => sum + x, 0) / 4,
    y: points.reduce((sum, { y }) => sum + y, 0) / 4,
  }));
  // Two diamonds are on one join when the line through them is drawn.
  const lines = page.paths.filter(
    ({ points, closed, stroked }) =>
      stroked && !closed && points.length === 2 && Math.abs(points[0]![axis] - points[1]![axis]) < 0.01,
  );
  const joins: Spot[][] = [];
  middles.forEach((p, i) => {
    for (const q of middles.slice(i + 1)) {
      const onLine = lines.some(
        ({ points: [a, b], width }) =>
          width < 0.6 &&
          Math.abs(a![axis] - p[axis]) < 0.05 &&
          Math.min(a![other], b![other]) < Math.min(p[other], q[other]) &&
          Math.max(a![other], b![other]) > Math.max(p[other], q[other]),
      );
      if (Math.abs(p[axis] - q[axis]) < 0.05 && onLine)
        joins.push([p, q].sort((s, t) => s[other] - t[other]));
    }
  });
  return joins.sort(([p], [q]) => p![axis] - q![axis]);
}

const isDiamond = ({ points, closed, dashed, stroked }: DrawnPath): boolean =>
  closed &&
  stroked &&
  !dashed &&
  points.length === 4 &&
  [0, 1].every((i) => {
    const [p, q] = [points[i]!, points[i + 2]!];
    // Diagonals upright and level, a quarter of an inch long.
    return (
      Math.min(Math.abs(p.x - q.x), Math.abs(p.y - q.y)) < 0.01 &&
      Math.abs(Math.hypot(p.x - q.x, p.y - q.y) - 18) < 0.05
    );
  });

/** How far each page is moved so that its first join meets the last of the page to its left, or above. */
function layTogether(pages: readonly DrawnPage[], columns: number): readonly Spot[] {
  const offsets: Spot[] = [];
  pages.forEach((page, i) => {
    if (i === 0) offsets.push({ x: 0, y: 0 });
    else {
      const [axis, before] = i % columns === 0 ? (['y', i - columns] as const) : (['x', i - 1] as const);
      const theirs = joinsOf(pages[before]!, axis).at(-1)!;
      const ours = joinsOf(page, axis)[0]!;
      const gap = (of: 'x' | 'y') => (theirs[0]![of] + theirs[1]![of] - ours[0]![of] - ours[1]![of]) / 2;
      offsets.push({ x: offsets[before]!.x + gap('x'), y: offsets[before]!.y + gap('y') });
    }
  });
  return offsets;
}

/** A stretch of a path, and what it is seen through; all pages laid together. */
interface Piece {
  readonly points: readonly Spot[];
  readonly window: Window | null;
}

/** The paths of a kind on all pages, laid together; closed ones with their first point repeated. */
const piecesOf = (
  pages: readonly DrawnPage[],
  offsets: readonly Spot[],
  isKind: (path: DrawnPath) => boolean,
): readonly Piece[] =>
  pages.flatMap(({ paths }, i) => {
    const { x: dx, y: dy } = offsets[i]!;
    return paths.filter(isKind).map(({ points, closed, window }) => ({
      points: (closed ? closedUp(points) : points).map((p) => moved(p, offsets[i]!, 1)),
      window: window && ([window[0] + dx, window[1] + dy, window[2] + dx, window[3] + dy] as const),
    }));
  });

const isSeen = (p: Spot, window: Window | null): boolean =>
  window === null ||
  (p.x >= window[0] - TRUE && p.y >= window[1] - TRUE && p.x <= window[2] + TRUE && p.y <= window[3] + TRUE);

/** Distance of p from the nearest of the pieces that are seen there. */
function nearest(p: Spot, pieces: readonly Piece[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const { points, window } of pieces)
    if (isSeen(p, window))
      for (const { a, b } of edgesOf<'page'>(points).slice(0, -1))
        least = Math.min(least, distanceToSegment<'page'>(p, a, b));
  return least;
}

/** All of the stretch from a to b is drawn, and seen. */
function expectDrawn(a: Spot, b: Spot, drawn: readonly Piece[]): void {
  for (let t = 0; t <= 1; t += 0.005) expect(nearest(between(a, b, t), drawn)).toBeLessThan(TRUE);
}

/** The name of a tile on the map of all. */
const isPlaceName = (mark: Mark): boolean =>
  mark.kind === 'text' && mark.role === 'caption' && /^r\d+ c\d+$/.test(mark.content);

describe('on small sheets', () => {
  test.each([
    [4, 6],
    [7, 5],
    [5, 7],
    [4.25, 5.5],
  ])('of %d × %d in no words lie on other words', (width, height) => {
    for (const { marks } of laid(usual(lantern(6), 'Lantern', { paper: { width, height } })).sheets) {
      const texts = marks.filter((mark) => mark.kind === 'text' && mark.role !== 'label');
      const boxes = texts.map((mark) => boxOf(mark as TextMark));
      boxes.forEach((p, i) => {
        for (const [k, q] of boxes.slice(i + 1).entries())
          expect([overlap(p, q), texts[i], texts[i + 1 + k]].slice(0, overlap(p, q) ? 3 : 1)).toEqual([
            false,
          ]);
      });
    }
  });
});

describe('each label stands on one tile alone, and no note of a neighbour on it', () => {
  test.each(JOBS)('%s', (_, job) => {
    const { sheets } = laid(job);
    const texts = sheets.map(({ marks }) => marks.filter((mark) => mark.kind === 'text'));
    const labels = texts.map((of) =>
      of.filter(({ role, content }) => role === 'label' && /^[A-Z]\d+$/.test(content)),
    );
    const names = labels.flat().map(({ content }) => content);
    expect(names.length).toBeGreaterThan(0);
    expect([...names].sort()).toEqual([...new Set(names)].sort());
    texts.forEach((of, i) => {
      const notes = of.filter(({ content }) => content.endsWith(' joins here'));
      expect(notes.length).toBeGreaterThan(0);
      for (const note of notes)
        for (const label of labels[i]!) expect(overlap(boxOf(note), boxOf(label))).toBe(false);
    });
  });
});

describe('no line of the map runs through a name on it', () => {
  test.each(JOBS)('%s', (_, job) => {
    const { marks } = laid(job).sheets.find(({ marks }) => marks.some(isPlaceName))!;
    const names = marks.filter(isPlaceName);
    const lines = marks.flatMap((mark) =>
      mark.kind === 'path' && mark.role === 'caption' ? edgesOf(mark.points) : [],
    );
    expect(names.length).toBeGreaterThan(1);
    for (const name of names) expect(clippedSegments(lines, boxOf(name))).toEqual([]);
  });
});
