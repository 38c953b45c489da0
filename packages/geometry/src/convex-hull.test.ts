import { describe, expect, test } from 'vitest';
import { convexPolygon, randomNumbers, shape, wildPolygon } from '../test/random-polygons.ts';
import { convexHull } from './convex-hull.ts';
import { isClockwise } from './polygon.ts';
import { turn } from './predicates.ts';

describe('the convex hull', () => {
  test('of convex polygons is the polygon, from its leftmost corner on', () => {
    const random = randomNumbers(71);
    for (let n = 0; n < 200; n++) {
      const polygon = convexPolygon(random);
      const hull = convexHull(polygon);
      const start = polygon.indexOf(hull[0]!);
      expect(hull).toEqual([...polygon.slice(start), ...polygon.slice(0, start)]);
      expect(polygon.every(({ x }) => x >= hull[0]!.x)).toBe(true);
    }
  });

  test('is convex, clockwise, made of given points, and holds them all', () => {
    const random = randomNumbers(72);
    for (let n = 0; n < 200; n++) {
      const points = wildPolygon(random);
      const hull = convexHull(points);
      expect(isClockwise(hull)).toBe(true);
      hull.forEach((a, i) => {
        expect(points).toContain(a);
        const b = hull[(i + 1) % hull.length]!;
        for (const p of points) expect(turn(a, b, p)).toBeGreaterThanOrEqual(0);
        expect(turn(a, b, hull[(i + 2) % hull.length]!)).toBe(1);
      });
    }
  });

  test('leaves out corners on straight runs and points given twice', () => {
    const square = shape([0, 0], [1, 0], [2, 0], [2, 2], [2, 2], [0, 2], [1, 1]);
    expect(convexHull(square)).toEqual(shape([0, 0], [2, 0], [2, 2], [0, 2]));
  });

  test('of points without area is one or two of them', () => {
    expect(convexHull(shape([3, 1], [3, 1]))).toEqual(shape([3, 1]));
    expect(convexHull(shape([0, 0], [2, 2], [1, 1]))).toEqual(shape([0, 0], [2, 2]));
  });
});
