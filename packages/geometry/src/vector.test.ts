import fc from 'fast-check';
import { expect, expectTypeOf, test } from 'vitest';
import { point } from '../test/arbitraries.ts';
import type { Point } from './point.ts';
import { add, cross, distance, dot, length, lerp, midpoint, normalize, scale, subtract } from './vector.ts';

test('sums, products and lengths of a 3-4-5 triangle', () => {
  const u = { x: 3, y: 0 };
  const v = { x: 0, y: 4 };
  expect(add(u, v)).toEqual({ x: 3, y: 4 });
  expect(subtract(u, v)).toEqual({ x: 3, y: -4 });
  expect(scale(u, 2)).toEqual({ x: 6, y: 0 });
  expect(dot(u, v)).toBe(0);
  expect(length(add(u, v))).toBe(5);
  expect(distance(u, v)).toBe(5);
  expect(midpoint(u, v)).toEqual({ x: 1.5, y: 2 });
});

test('cross is positive from x to y: clockwise with y down', () => {
  expect(cross({ x: 1, y: 0 }, { x: 0, y: 1 })).toBe(1);
  expect(cross({ x: 0, y: 1 }, { x: 1, y: 0 })).toBe(-1);
});

test('lerp gives both ends exactly and the middle', () => {
  fc.assert(
    fc.property(point, point, (a, b) => {
      expect(distance(lerp(a, b, 0), a)).toBe(0);
      expect(distance(lerp(a, b, 1), b)).toBe(0);
      expect(distance(lerp(a, b, 0.5), midpoint(a, b))).toBeLessThan(1e-12);
    }),
    { seed: 1, numRuns: 500 },
  );
});

test('normalize makes vectors 1 long, and leaves the zero vector', () => {
  expect(normalize({ x: 3, y: -4 })).toEqual({ x: 0.6, y: -0.8 });
  expect(normalize({ x: 0, y: 0 })).toEqual({ x: 0, y: 0 });
  expect(length(normalize({ x: 1e-200, y: 1e-200 }))).toBeCloseTo(1, 12);
});

test('points of different spaces cannot be added', () => {
  const drawn: Point = { x: 1, y: 1 };
  const printed: Point<'print'> = { x: 2, y: 2 };
  expectTypeOf(add(printed, printed)).toEqualTypeOf<Point<'print'>>();
  expectTypeOf(add({ x: 1, y: 1 }, { x: 2, y: 2 })).toEqualTypeOf<Point>();
  expectTypeOf(add(printed, { x: 2, y: 2 })).toEqualTypeOf<Point<'print'>>();
  // @ts-expect-error one is a point of the print, one of the block
  expect(add(printed, drawn)).toEqual({ x: 3, y: 3 });
});
