import WKTReader from 'jsts/org/locationtech/jts/io/WKTReader.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import { describe, expect, test } from 'vitest';
import { convexPolygon, randomNumbers, shape, wildPolygon } from '../test/random-polygons.ts';
import { commonParts } from './common-parts.ts';
import type { Polygon } from './point.ts';
import { area, isClockwise, reversed } from './polygon.ts';
import { rotation, transformPolygon } from './transform.ts';

const total = (parts: readonly Polygon[]) => parts.reduce((sum, part) => sum + area(part), 0);

/** Area in common, by the reference library jsts 2.12.1. */
function referenceArea(p: Polygon, q: Polygon): number {
  const read = (ring: Polygon) =>
    new WKTReader().read(`POLYGON ((${[...ring, ring[0]!].map(({ x, y }) => `${x} ${y}`).join(', ')}))`);
  return OverlayOp.overlayOp(read(p), read(q), OverlayOp.INTERSECTION).getArea();
}

describe('what polygons have in common', () => {
  test('the same area as in the reference library, convex and wild', () => {
    const random = randomNumbers(81);
    for (let n = 0; n < 300; n++) {
      const shapeOf = n % 2 === 0 ? convexPolygon : wildPolygon;
      const [p, q] = [shapeOf(random), shapeOf(random)];
      const parts = commonParts(p, q);
      expect(Math.abs(total(parts) - referenceArea(p, q))).toBeLessThan(1e-5);
      for (const part of parts) expect(isClockwise(part)).toBe(true);
    }
  });

  test('corners are not rounded to a grid', () => {
    const third = shape([0, 0], [1 / 3, 0], [1 / 3, 1], [0, 1]);
    const [part] = commonParts(third, shape([-1, -1], [4, -1], [4, 4 / 7], [-1, 4 / 7]));
    expect(part).toEqual(shape([0, 0], [1 / 3, 0], [1 / 3, 4 / 7], [0, 4 / 7]));
  });

  test('edges that were meant to coincide do, in any direction', () => {
    for (let degrees = 0; degrees < 180; degrees += 7) {
      const turned = (ring: Polygon) => transformPolygon(rotation(degrees, { x: 0.3, y: 7.1 }), ring);
      const square = turned(shape([0, 0], [6, 0], [6, 6], [0, 6]));
      const corner = turned(shape([0, 0], [6, 0], [0, 6]));
      expect(commonParts(corner, square)).toEqual([corner]);
      expect(commonParts(reversed(corner), reversed(square)).map((part) => part.length)).toEqual([3]);
      expect(commonParts(corner, turned(shape([6, 0], [6, 6], [0, 6])))).toEqual([]);
    }
  });
});
