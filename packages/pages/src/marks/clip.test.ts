import { type Box, distance, edgesOf, type Point } from '@seamwright/geometry';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { clipped, segmentsOutside } from './clip.ts';
import { textMark } from './marks.ts';
import type { Mark, PathMark } from './model.ts';

const point: fc.Arbitrary<Point<'page'>> = fc.record({
  x: fc.integer({ min: -40, max: 140 }),
  y: fc.integer({ min: -40, max: 140 }),
});
const BOX: Box<'page'> = { minX: 0, minY: 0, maxX: 100, maxY: 100 };

const pathOf = (points: readonly Point<'page'>[], closed: boolean): PathMark => ({
  kind: 'path',
  role: 'cutting-line',
  points,
  closed,
  stroke: { width: 1, ink: 1, dash: [5, 3] },
});

const path = (closed: boolean): fc.Arbitrary<PathMark> =>
  fc.array(point, { minLength: closed ? 3 : 2, maxLength: 8 }).map((points) => pathOf(points, closed));

const edges = ({ points, closed }: PathMark) => (closed ? edgesOf(points) : edgesOf(points).slice(0, -1));
const isInside = ({ x, y }: Point<'page'>, by = 0): boolean =>
  x >= BOX.minX - by && x <= BOX.maxX + by && y >= BOX.minY - by && y <= BOX.maxY + by;
const pieces = (mark: Mark): readonly PathMark[] => clipped(mark, BOX) as readonly PathMark[];

/** Length of the path inside the box, by walking it in a thousand steps an edge. */
function walkedInside(mark: PathMark): number {
  let length = 0;
  for (const { a, b } of edges(mark))
    for (let i = 0; i < 1000; i++) {
      const t = (i + 0.5) / 1000;
      if (isInside({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t }))
        length += distance<'page'>(a, b) / 1000;
    }
  return length;
}

test('of a line what lies outside a box is what is not inside: nothing is lost, nothing twice', () => {
  const box = { minX: 2, minY: 1, maxX: 4, maxY: 3 };
  const across = { a: { x: 0, y: 2 }, b: { x: 6, y: 2 } };
  const into = { a: { x: 0, y: 2 }, b: { x: 3, y: 2 } };
  const within = { a: { x: 2.5, y: 2 }, b: { x: 3, y: 2 } };
  const past = { a: { x: 0, y: 0 }, b: { x: 6, y: 0 } };
  expect(segmentsOutside([across, into, within, past], box)).toEqual([
    { a: { x: 0, y: 2 }, b: { x: 2, y: 2 } },
    { a: { x: 4, y: 2 }, b: { x: 6, y: 2 } },
    { a: { x: 0, y: 2 }, b: { x: 2, y: 2 } },
    past,
  ]);
});

test('of lines, what is left lies in the box, and all of what lies in the box is left', () => {
  fc.assert(
    fc.property(path(false), (mark) => {
      const left = pieces(mark);
      for (const { points, closed } of left) {
        expect(closed).toBe(false);
        expect(points).toHaveLength(2);
        for (const p of points) expect(isInside(p, 1e-9)).toBe(true);
      }
      const length = left.flatMap(edges).reduce((sum, { a, b }) => sum + distance<'page'>(a, b), 0);
      // Half a step at both ends of each edge.
      const steps = edges(mark).reduce((sum, { a, b }) => sum + distance<'page'>(a, b) / 1000, 0);
      expect(Math.abs(length - walkedInside(mark))).toBeLessThanOrEqual(2 * steps + 1e-9);
    }),
    { seed: 21 },
  );
});

test('a closed path stays whole: as it is inside the box, through a window across it, gone outside', () => {
  fc.assert(
    fc.property(path(true), (mark) => {
      const [left, ...more] = pieces(mark);
      expect(more).toEqual([]);
      if (mark.points.every((p) => isInside(p))) expect(left).toEqual(mark);
      else if (left !== undefined) expect(left).toEqual({ ...mark, window: BOX });
      else expect(walkedInside(mark)).toBe(0);
    }),
    { seed: 22 },
  );
});

test('a text is kept whole or not at all', () => {
  const at = (x: number, y: number, angle = 0) =>
    textMark('label', 'A', 'A12', { x, y }, { size: 14, anchor: 'middle', angle });
  expect(clipped(at(50, 50), BOX)).toEqual([at(50, 50)]);
  expect(clipped(at(5, 50), BOX)).toEqual([]);
  expect(clipped(at(50, 5), BOX)).toEqual([]);
  // Turned, it is as high as it was wide.
  expect(clipped(at(5, 50, 90), BOX)).toEqual([at(5, 50, 90)]);
});
