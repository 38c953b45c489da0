import { describe, expect, test } from 'vitest';
import { convexPolygon, randomNumbers, regularPolygon, shape, wildPolygon } from '../test/random-polygons.ts';
import { deepestPoint } from './deepest-point.ts';
import { distanceToSegment } from './line.ts';
import type { Point, Polygon } from './point.ts';
import { boundingBox, contains, edgesOf, reversed } from './polygon.ts';
import { DEEPEST_WITHIN } from './tolerance.ts';
import { distance } from './vector.ts';

const depthAt = (rings: readonly Polygon[], p: Point): number =>
  Math.min(...rings.flatMap(edgesOf).map(({ a, b }) => distanceToSegment(p, a, b)));

describe('known shapes (plane geometry)', () => {
  test.each<[string, Polygon, Point, number]>([
    ['square', shape([0, 0], [6, 0], [6, 6], [0, 6]), { x: 3, y: 3 }, 3],
    // The middle of a long strip, where any point of its middle line is as deep.
    ['strip', shape([0, 0], [8, 0], [8, 2], [0, 2]), { x: 4, y: 1 }, 1],
    // Incircle of a 3-4-5 triangle: radius 1.
    ['triangle', shape([0, 0], [3, 0], [0, 4]), { x: 1, y: 1 }, 1],
    ['hexagon', regularPolygon(6, 2), { x: 0, y: 0 }, Math.sqrt(3)],
  ])('%s', (_, polygon, at, depth) => {
    const found = deepestPoint(polygon);
    expect(found.depth).toBeGreaterThan(depth - DEEPEST_WITHIN);
    expect(found.depth).toBeLessThanOrEqual(depth + 1e-12);
    expect(distance(found.at, at)).toBeLessThan(0.05);
  });

  test('a hole pushes it aside', () => {
    const square = shape([0, 0], [6, 0], [6, 6], [0, 6]);
    const hole = shape([1, 1], [3, 1], [3, 3], [1, 3]);
    const { at, depth } = deepestPoint(square, [hole]);
    expect(contains(hole, at)).toBe('outside');
    // The circle that touches the right side, the lower side and the hole's corner (3, 3): 6 - r = 3 + r/√2.
    expect(depth).toBeCloseTo(3 / (1 + Math.SQRT1_2), 2);
    expect(depthAt([square, hole], at)).toBeCloseTo(depth, 12);
  });
});

test('no point of a fine grid is deeper by more than the precision', () => {
  const random = randomNumbers(31);
  for (let round = 0; round < 60; round++) {
    const polygon = round % 2 === 0 ? wildPolygon(random) : convexPolygon(random);
    const found = deepestPoint(polygon);
    expect(contains(polygon, found.at)).toBe('inside');
    expect(found.depth).toBeCloseTo(depthAt([polygon], found.at), 12);
    const box = boundingBox(polygon);
    for (let i = 1; i < 40; i++) {
      for (let j = 1; j < 40; j++) {
        const p = {
          x: box.minX + ((box.maxX - box.minX) * i) / 40,
          y: box.minY + ((box.maxY - box.minY) * j) / 40,
        };
        if (contains(polygon, p) === 'inside')
          expect(depthAt([polygon], p)).toBeLessThanOrEqual(found.depth + DEEPEST_WITHIN);
      }
    }
  }
});

test('does not depend on the first corner or on the way round', () => {
  const random = randomNumbers(32);
  for (let round = 0; round < 100; round++) {
    const polygon = wildPolygon(random);
    const expected = deepestPoint(polygon);
    for (let start = 0; start < polygon.length; start++) {
      const moved = [...polygon.slice(start), ...polygon.slice(0, start)];
      expect(deepestPoint(moved)).toEqual(expected);
      expect(deepestPoint(reversed(moved))).toEqual(expected);
    }
  }
});

test('is strictly inside small shapes and slivers, at any angle', () => {
  for (const width of [1, 1 / 16, 1 / 64, 1e-3, 1e-4, 1e-6]) {
    for (let degrees = 0; degrees < 180; degrees += 7) {
      const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
      const turn = (polygon: Polygon) => polygon.map(({ x, y }) => ({ x: c * x - s * y, y: s * x + c * y }));
      for (const polygon of [
        turn(shape([0, 0], [6, 0], [6, width])),
        turn(shape([0, 0], [width, 0], [width, width], [0, width])),
        turn(shape([0, 0], [6, 0], [6, width], [0, width])),
        turn(shape([0, 0], [6, 0], [3, width / 2], [6, width], [0, width])),
      ]) {
        const { at, depth } = deepestPoint(polygon);
        expect(contains(polygon, at)).toBe('inside');
        expect(depth).toBeGreaterThan(0);
      }
    }
  }
});
