import fc from 'fast-check';
import { describe, expect, expectTypeOf, test } from 'vitest';
import { coordinate, point } from '../test/arbitraries.ts';
import { shape } from '../test/random-polygons.ts';
import type { Point } from './point.ts';
import { isClockwise, signedArea } from './polygon.ts';
import {
  compose,
  determinant,
  identity,
  inverse,
  reflection,
  reflectionAcross,
  rotation,
  scaling,
  type Transform,
  transformPoint,
  transformPolygon,
  transformSegment,
  translation,
} from './transform.ts';
import { distance } from './vector.ts';

const simpleTransform: fc.Arbitrary<Transform> = fc.oneof(
  fc.tuple(coordinate, coordinate).map(([dx, dy]) => translation(dx, dy)),
  fc.tuple(coordinate, point).map(([turn, about]) => rotation(turn * 30, about)),
  coordinate.map((axis) => reflection(axis)),
  fc.integer({ min: 1, max: 100 }).map((k) => scaling(k / 10)),
);

test('each transform on one point', () => {
  const p = { x: 3, y: 1 };
  expect(transformPoint(identity(), p)).toEqual(p);
  expect(transformPoint(translation(2, -5), p)).toEqual({ x: 5, y: -4 });
  expect(transformPoint(reflection(2), p)).toEqual({ x: 1, y: 1 });
  expect(transformPoint(scaling(2), p)).toEqual({ x: 6, y: 2 });
  expect(transformPoint(scaling(2, -1), p)).toEqual({ x: 6, y: -1 });
  expect(transformSegment(translation(1, 0), { a: p, b: { x: 0, y: 0 } })).toEqual({
    a: { x: 4, y: 1 },
    b: { x: 1, y: 0 },
  });
});

test('the reflection across a line keeps the line, changes its sides, and undoes itself', () => {
  expect(transformPoint(reflectionAcross({ a: { x: 0, y: 1 }, b: { x: 3, y: 1 } }), { x: 5, y: 4 })).toEqual({
    x: 5,
    y: -2,
  });
  expect(() => reflectionAcross({ a: { x: 1, y: 1 }, b: { x: 1, y: 1 } })).toThrow(RangeError);
  fc.assert(
    fc.property(point, point, point, (a, b, p) => {
      fc.pre(distance(a, b) > 0.1);
      const mirror = reflectionAcross({ a, b });
      expect(distance(transformPoint(mirror, a), a)).toBeLessThan(1e-9);
      expect(distance(transformPoint(mirror, b), b)).toBeLessThan(1e-9);
      const image = transformPoint(mirror, p);
      expect(Math.abs(distance(image, a) - distance(p, a))).toBeLessThan(1e-9);
      expect(distance(transformPoint(mirror, image), p)).toBeLessThan(1e-9);
      expect(determinant(mirror)).toBeCloseTo(-1, 12);
    }),
    { seed: 7 },
  );
});

test('rotation is clockwise on the screen, and quarter turns are exact', () => {
  expect(transformPoint(rotation(90), { x: 1, y: 0 })).toEqual({ x: 0, y: 1 });
  expect(transformPoint(rotation(90, { x: 1, y: 1 }), { x: 2, y: 1 })).toEqual({ x: 1, y: 2 });
  for (const degrees of [-270, -90, 0, 90, 180, 270, 360, 450]) {
    const { a, b, c, d } = rotation(degrees);
    expect([a, b, c, d].every(Number.isInteger)).toBe(true);
  }
  const turned = transformPoint(rotation(60), { x: 2, y: 0 });
  expect(distance(turned, { x: 1, y: Math.sqrt(3) })).toBeLessThan(1e-15);
});

test('compose does the first, then the second; inverse goes back', () => {
  fc.assert(
    fc.property(simpleTransform, simpleTransform, point, (first, second, p) => {
      const both = compose(first, second);
      const direct = transformPoint(second, transformPoint(first, p));
      expect(distance(transformPoint(both, p), direct)).toBeLessThan(1e-9);
      expect(distance(transformPoint(inverse(both), direct), p)).toBeLessThan(1e-9);
    }),
    { seed: 7, numRuns: 500 },
  );
  expect(() => inverse(scaling(0))).toThrow(RangeError);
});

describe('polygons keep their way round', () => {
  const kite = shape([0, 0], [2, 1], [0, 5], [-1, 1]);

  test('a mirror image starts at the same corner and stays clockwise', () => {
    const image = transformPolygon(reflection(0), kite);
    expect(image.map(({ x, y }) => [x || 0, y])).toEqual([
      [0, 0],
      [1, 1],
      [0, 5],
      [-2, 1],
    ]);
    expect(isClockwise(kite)).toBe(true);
    expect(isClockwise(image)).toBe(true);
  });

  test('the edge that starts at corner i becomes the edge that starts at corner n - 1 - i', () => {
    const mirror = reflection(3);
    const image = transformPolygon(mirror, kite);
    const n = kite.length;
    kite.forEach((corner, i) => {
      expect(image[(n - i) % n]).toEqual(transformPoint(mirror, corner));
      expect(image[(n - 1 - i + 1) % n]).toEqual(transformPoint(mirror, corner));
      expect(image[n - 1 - i]).toEqual(transformPoint(mirror, kite[(i + 1) % n]!));
    });
  });

  test('the signed area grows by the size of the determinant', () => {
    fc.assert(
      fc.property(simpleTransform, simpleTransform, (first, second) => {
        const both = compose(first, second);
        expect(signedArea(transformPolygon(both, kite))).toBeCloseTo(
          signedArea(kite) * Math.abs(determinant(both)),
          6,
        );
      }),
      { seed: 8, numRuns: 300 },
    );
  });
});

test('the compiler follows a change of space', () => {
  const blockToPrint = reflection<'block', 'print'>(3);
  const printToPage = scaling<'print', 'page'>(72);
  const blockToPage = compose(blockToPrint, printToPage);
  expectTypeOf(blockToPage).toEqualTypeOf<Transform<'block', 'page'>>();
  const onPage = transformPoint(blockToPage, { x: 1, y: 1 });
  expectTypeOf(onPage).toEqualTypeOf<Point<'page'>>();
  expect(onPage).toEqual({ x: 360, y: 72 });

  // @ts-expect-error the spaces between do not match
  compose(printToPage, blockToPrint);
  // @ts-expect-error a point of the page is no point of the block
  transformPoint(blockToPage, onPage);
});
