import fc from 'fast-check';
import { expect, test } from 'vitest';
import { markPlaces } from './mark-places.ts';

const BLOCK = { x: 150, y: 150, halfWidth: 150, halfHeight: 150 };
const name = (x: number, y: number) => ({ x, y, halfWidth: 12, halfHeight: 8 });
/** Marks are 26 pixels wide and high. */
const apart = (a: { x: number; y: number }, b: { x: number; y: number }) =>
  Math.abs(a.x - b.x) >= 26 || Math.abs(a.y - b.y) >= 26;

test('a mark whose point is free stands on it', () => {
  expect(markPlaces([{ x: 100, y: 100 }], [name(160, 100)], BLOCK)).toEqual([{ x: 100, y: 100, from: null }]);
});

test('a mark on a patch’s name is set beside it, with a line from the name’s edge', () => {
  const [mark] = markPlaces([{ x: 100, y: 100 }], [name(100, 100)], BLOCK);
  expect(mark!.x - 100).toBeGreaterThanOrEqual(13 + 12);
  expect(mark).toMatchObject({ y: 100, from: { x: 112, y: 100 } });
});

test('a mark is not moved off the block: there the canvas may end', () => {
  const corner = { x: 299, y: 299 };
  const [mark] = markPlaces([corner], [name(290, 290)], BLOCK);
  expect(mark!.x).toBeLessThan(300);
  expect(mark!.y).toBeLessThan(300);
  expect(mark!.from).toEqual(corner);
});

test('marks at one point stand side by side, the first on it', () => {
  const point = { x: 50, y: 50 };
  const marks = markPlaces([point, point, point], [], BLOCK);
  expect(marks[0]).toEqual({ ...point, from: null });
  expect(marks[1]!.from).toEqual(point);
  for (const [i, a] of marks.entries())
    for (const b of marks.slice(i + 1)) expect(apart(a, b), JSON.stringify([a, b])).toBe(true);
});

test('a mark is never far from its point, and on it where there is no room', () => {
  const crowd = Array.from({ length: 400 }, (_, i) => name((i % 20) * 20, Math.floor(i / 20) * 14));
  expect(markPlaces([{ x: 200, y: 140 }], crowd, BLOCK)).toEqual([{ x: 200, y: 140, from: null }]);
  const spot = fc.record({ x: fc.integer({ min: 0, max: 300 }), y: fc.integer({ min: 0, max: 300 }) });
  fc.assert(
    fc.property(fc.array(spot, { maxLength: 30 }), (points) => {
      for (const [i, { x, y }] of markPlaces(points, [], BLOCK).entries())
        expect(Math.hypot(x - points[i]!.x, y - points[i]!.y)).toBeLessThanOrEqual(46);
    }),
    { seed: 5 },
  );
});
