import { convexHull, type Polygon } from '@seamwright/geometry';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { distanceBetween } from '../../test/apart.ts';
import { convexOf, NoFitPolygons, opposite } from './no-fit.ts';

const GAP = 18;

const corner = fc.record({
  x: fc.integer({ min: 0, max: 300 }),
  y: fc.integer({ min: 0, max: 300 }),
});

/** Three corners and more, and single stretches. */
const convex = fc
  .array(corner, { minLength: 2, maxLength: 9 })
  .map((corners) => convexHull<'page'>(corners))
  .filter((hull) => hull.length > 1);

const moved = (polygon: Polygon<'page'>, dx: number, dy: number): Polygon<'page'> =>
  polygon.map(({ x, y }) => ({ x: x + dx, y: y + dy }));

/** The polygon of places, its corners and whether a place is in it. */
function noFit(standing: Polygon<'page'>, coming: Polygon<'page'>, x: number, y: number) {
  const made = new NoFitPolygons();
  made.add(convexOf(standing), x, y, convexOf(opposite(coming)), GAP, 0);
  const edges = Array.from({ length: made.start[1]! }, (_, i) => i);
  return {
    corners: edges.map((i) => ({ x: made.x[i]!, y: made.y[i]! })),
    has: (px: number, py: number) =>
      edges.every((i) => made.outX[i]! * px + made.outY[i]! * py < made.out[i]!),
  };
}

test('outside of the no-fit polygon two shapes are a gap apart', () => {
  let outside = 0;
  fc.assert(
    fc.property(convex, convex, corner, corner, (standing, coming, at, place) => {
      const { has } = noFit(standing, coming, at.x, at.y);
      const [x, y] = [2 * place.x - 100, 2 * place.y - 100];
      if (has(x, y)) return;
      outside++;
      const away = distanceBetween(moved(standing, at.x, at.y), moved(coming, x, y));
      expect(away).toBeGreaterThanOrEqual(GAP - 1e-6);
    }),
    { numRuns: 2000, seed: 1 },
  );
  expect(outside).toBeGreaterThan(300);
});

test('along its edges they are just a gap apart, at its corners hardly more', () => {
  fc.assert(
    fc.property(convex, convex, corner, (standing, coming, at) => {
      const { corners } = noFit(standing, coming, at.x, at.y);
      const away = ({ x, y }: { x: number; y: number }) =>
        distanceBetween(moved(standing, at.x, at.y), moved(coming, x, y));
      // A mitre where the edges turn by 60° is 1 / cos 30° = 1.155 gaps long (exact).
      for (const place of corners) expect(away(place)).toBeLessThan(1.1548 * GAP);
      corners.forEach((a, i) => {
        const b = corners[(i + 1) % corners.length]!;
        const long = Math.hypot(b.x - a.x, b.y - a.y);
        // An edge that is longer than both mitres at its ends.
        if (long < 2 * GAP) return;
        expect(away({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 })).toBeCloseTo(GAP, 6);
      });
    }),
    { numRuns: 500, seed: 2 },
  );
});

test('keeps many of them', () => {
  const square = [
    { x: 0, y: 0 },
    { x: 50, y: 0 },
    { x: 50, y: 50 },
    { x: 0, y: 50 },
  ];
  const made = new NoFitPolygons();
  for (let i = 0; i < 500; i++) made.add(convexOf(square), 100 * i, 7, convexOf(opposite(square)), GAP, 0);
  for (let i = 0; i < 500; i++) {
    expect(made.minX[i]).toBeCloseTo(100 * i - 50 - GAP, 9);
    expect(made.maxY[i]).toBeCloseTo(7 + 50 + GAP, 9);
  }
  expect(made.start[500]).toBe(500 * 8);
});
