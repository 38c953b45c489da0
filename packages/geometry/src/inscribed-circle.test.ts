import { describe, expect, test } from 'vitest';
import { convexPolygon, randomNumbers, regularPolygon, shape } from '../test/random-polygons.ts';
import { inscribedCircle } from './inscribed-circle.ts';
import type { Point, Polygon } from './point.ts';
import { contains } from './polygon.ts';
import { distance } from './vector.ts';

describe('known shapes (plane geometry)', () => {
  test('triangle 3-4-5: radius 1', () => {
    const { at, depth } = inscribedCircle(shape([0, 0], [3, 0], [0, 4]), 0)!;
    expect(distance(at, { x: 1, y: 1 })).toBeLessThan(1e-12);
    expect(depth).toBeCloseTo(1, 12);
  });

  test('hexagon: the middle, radius √3 / 2 of its side', () => {
    const { at, depth } = inscribedCircle(regularPolygon(6, 2), 0)!;
    expect(distance(at, { x: 0, y: 0 })).toBeLessThan(1e-12);
    expect(depth).toBeCloseTo(Math.sqrt(3), 12);
  });

  test('kite: the circle that touches all four sides', () => {
    // Its radius is area ÷ half the perimeter, as for every polygon that has such a circle.
    const { depth } = inscribedCircle(shape([0, 0], [2, -1], [6, 0], [2, 1]), 0)!;
    expect(depth).toBeCloseTo(6 / (Math.hypot(2, 1) + Math.hypot(4, 1)), 12);
  });

  test('strip: its centre of gravity, of all the points along its middle line', () => {
    for (const long of [8, 800, 80_000]) {
      const { at, depth } = inscribedCircle(shape([0, 0], [long, 0], [long, 2], [0, 2]), 1e-9)!;
      expect(distance(at, { x: long / 2, y: 1 })).toBeLessThan(1e-9 * long);
      expect(depth).toBeCloseTo(1, 9);
    }
  });

  test('strip that widens by less than the slack: amid, not at its wide end', () => {
    const { at } = inscribedCircle(shape([0, 0], [8, -0.001], [8, 2.001], [0, 2]), 0.01)!;
    expect(at.x).toBeGreaterThan(3);
    expect(at.x).toBeLessThan(5);
  });
});

test('not for shapes that are not convex, or have many corners', () => {
  expect(inscribedCircle(shape([0, 0], [4, 0], [4, 4], [3, 1]), 0)).toBeNull();
  expect(inscribedCircle(regularPolygon(9, 2), 0)).toBeNull();
});

/** Depth by definition: the distance from the nearest side. */
const depthOf = (polygon: Polygon, p: Point): number =>
  Math.min(
    ...polygon.map((a, i) => {
      const b = polygon[(i + 1) % polygon.length]!;
      return ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / Math.hypot(b.x - a.x, b.y - a.y);
    }),
  );

test('random convex polygons: no step in any direction leads deeper', () => {
  const random = randomNumbers(41);
  let tried = 0;
  for (let round = 0; round < 500; round++) {
    const polygon = convexPolygon(random);
    const found = inscribedCircle(polygon, 0);
    if (found === null) continue;
    tried += 1;
    expect(contains(polygon, found.at)).toBe('inside');
    expect(depthOf(polygon, found.at)).toBeCloseTo(found.depth, 12);
    // Depth is concave in a convex shape: what is deepest nearby is deepest of all.
    for (let k = 0; k < 64; k++) {
      const angle = (2 * Math.PI * k) / 64;
      const step = { x: found.at.x + 1e-3 * Math.cos(angle), y: found.at.y + 1e-3 * Math.sin(angle) };
      expect(depthOf(polygon, step)).toBeLessThanOrEqual(found.depth + 1e-12);
    }
  }
  expect(tried).toBeGreaterThan(300);
});
