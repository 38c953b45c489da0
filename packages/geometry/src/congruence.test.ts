import fc from 'fast-check';
import { expect, test } from 'vitest';
import { motionsOnto } from './congruence.ts';
import type { Polygon } from './point.ts';
import { SAME_COORDINATE } from './tolerance.ts';
import { rotation, transformPolygon } from './transform.ts';
import { distance } from './vector.ts';

const ways = (shape: Polygon, image: Polygon) => [...motionsOnto(shape, image, SAME_COORDINATE)];
const square: Polygon = [
  { x: 0, y: 0 },
  { x: 6, y: 0 },
  { x: 6, y: 6 },
  { x: 0, y: 6 },
];

test('a polygon lies on itself in as many ways as it has symmetries', () => {
  // Orders of the symmetry groups: 8 of the square, 4 of a rectangle, 2 of an isosceles triangle, 1 of a scalene one.
  expect(ways(square, square)).toHaveLength(8);
  const long = square.map(({ x, y }) => ({ x: 2 * x, y }));
  expect(ways(long, long)).toHaveLength(4);
  const half = square.slice(0, 3);
  expect(ways(half, half)).toHaveLength(2);
  const scalene = [...square.slice(0, 2), { x: 1, y: 4 }];
  expect(ways(scalene, scalene)).toHaveLength(1);
  expect(ways(square, long)).toEqual([]);
  expect(ways(half, square)).toEqual([]);
});

test('a turned and turned-over shape is found again, and each way carries corner on corner', () => {
  const scalene: Polygon = [
    { x: 0, y: 0 },
    { x: 5, y: 1 },
    { x: 1, y: 4 },
  ];
  fc.assert(
    fc.property(fc.double({ min: -360, max: 360, noNaN: true }), fc.boolean(), (degrees, over) => {
      const turned = transformPolygon(rotation(degrees, { x: 2, y: 7 }), scalene);
      const image = over ? turned.map(({ x, y }) => ({ x: -x, y })).reverse() : turned;
      const found = ways(scalene, image);
      expect(found.map(({ mirrored }) => mirrored)).toEqual([over]);
      const laid = transformPolygon(found[0]!.transform, scalene);
      for (const corner of laid)
        expect(Math.min(...image.map((p) => distance(p, corner)))).toBeLessThan(1e-9);
    }),
    { seed: 11, numRuns: 200 },
  );
});
