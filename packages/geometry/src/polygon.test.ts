import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { convexPolygon, randomNumbers, regularPolygon, shape, wildPolygon } from '../test/random-polygons.ts';
import type { Point, Polygon } from './point.ts';
import {
  area,
  boundingBox,
  contains,
  edgesOf,
  isClockwise,
  middleOfCorners,
  perimeter,
  reversed,
  signedArea,
  withoutFlatCorners,
  withoutStraightCorners,
} from './polygon.ts';

const square = shape([0, 0], [2, 0], [2, 2], [0, 2]);
const ell = shape([0, 0], [3, 0], [3, 1], [1, 1], [1, 3], [0, 3]);

test('signed area is positive clockwise on the screen', () => {
  expect(signedArea(square)).toBe(4);
  expect(signedArea(reversed(square))).toBe(-4);
  expect(isClockwise(square)).toBe(true);
  expect(isClockwise(reversed(square))).toBe(false);
  expect(area(reversed(ell))).toBe(5);
  expect(signedArea([])).toBe(0);
  // Area of a regular hexagon: 3√3/2 · side².
  expect(area(regularPolygon(6, 2))).toBeCloseTo(6 * Math.sqrt(3), 12);
});

test('area keeps its digits far from the origin', () => {
  const far = square.map(({ x, y }) => ({ x: x / 1024 + 1e6, y: y / 1024 + 1e6 }));
  expect(signedArea(far)).toBe(4 / 1024 ** 2);
});

test('edges, perimeter, box', () => {
  expect(edgesOf(square)[3]).toEqual({ a: { x: 0, y: 2 }, b: { x: 0, y: 0 } });
  expect(perimeter(ell)).toBe(12);
  expect(boundingBox(ell)).toEqual({ minX: 0, minY: 0, maxX: 3, maxY: 3 });
  expect(() => boundingBox([])).toThrow(RangeError);
  // The sums of the corners' x and y, 8 each, over six corners.
  expect(middleOfCorners(ell)).toEqual({ x: 8 / 6, y: 8 / 6 });
});

test('reversed keeps the first corner first, and undoes itself', () => {
  expect(reversed(ell)[0]).toBe(ell[0]);
  expect(reversed(ell)[1]).toBe(ell[5]);
  expect(reversed(reversed(ell))).toEqual(ell);
});

test('withoutFlatCorners drops corners that are so near to the line through their neighbours', () => {
  const bent = [
    { x: 0, y: 0 },
    { x: 2, y: 0.01 },
    { x: 4, y: 0 },
    { x: 4, y: 4 },
  ];
  expect(withoutFlatCorners(bent, 0.01)).toEqual([bent[0], bent[2], bent[3]]);
  expect(withoutFlatCorners(bent, 0.0099)).toEqual(bent);
});

test('withoutStraightCorners drops corners on straight runs only', () => {
  const withMiddles = edgesOf(ell).flatMap(({ a, b }) => [a, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }]);
  expect(withoutStraightCorners(withMiddles)).toEqual(ell);
  expect(withoutStraightCorners(ell)).toEqual(ell);
});

describe('contains', () => {
  test('names corners and edges', () => {
    for (const { a, b } of edgesOf(ell)) {
      expect(contains(ell, a)).toBe('edge');
      expect(contains(ell, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 })).toBe('edge');
    }
    expect(contains(ell, { x: 0.5, y: 1 })).toBe('inside');
    expect(contains(ell, { x: 2, y: 2 })).toBe('outside');
    expect(contains(ell, { x: 4, y: 1 })).toBe('outside');
    expect(contains(ell, { x: -1, y: 0 })).toBe('outside');
  });

  /** Independent: the angle that the boundary sweeps, seen from p, is a full turn for points inside. */
  function sweptAround(polygon: Polygon, p: Point): number {
    let swept = 0;
    for (const { a, b } of edgesOf(polygon)) {
      const [ux, uy, vx, vy] = [a.x - p.x, a.y - p.y, b.x - p.x, b.y - p.y];
      swept += Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
    }
    return Math.round(Math.abs(swept) / (2 * Math.PI));
  }

  test('agrees with the swept angle on wild polygons, at heights of corners too', () => {
    const random = randomNumbers(11);
    let inside = 0;
    for (let round = 0; round < 200; round++) {
      const polygon = wildPolygon(random);
      for (let k = 0; k < 20; k++) {
        // Half of the points at a corner's height: the ray passes through that corner.
        const y = k % 2 === 0 ? random() * 12 : polygon[k % polygon.length]!.y;
        const p = { x: random() * 12, y };
        const expected = sweptAround(polygon, p) === 1 ? 'inside' : 'outside';
        if (expected === 'inside') inside++;
        expect(contains(polygon, p)).toBe(expected);
        expect(contains(reversed(polygon), p)).toBe(expected);
      }
    }
    expect(inside).toBeGreaterThan(500);
  });

  test('the middle of a convex polygon is inside', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e9 }), (seed) => {
        const polygon = convexPolygon(randomNumbers(seed));
        const sum = polygon.reduce((s, p) => ({ x: s.x + p.x, y: s.y + p.y }), { x: 0, y: 0 });
        const middle = { x: sum.x / polygon.length, y: sum.y / polygon.length };
        expect(contains(polygon, middle)).toBe('inside');
      }),
      { seed: 12, numRuns: 300 },
    );
  });
});
