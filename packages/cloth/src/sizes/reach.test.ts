import { convexHull, type Point, type Polygon } from '@seamwright/geometry';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { reach, turnUntil } from './reach.ts';

const point: fc.Arbitrary<Point> = fc.record({
  x: fc.double({ min: -12, max: 12, noNaN: true }),
  y: fc.double({ min: -12, max: 12, noNaN: true }),
});
const shape: fc.Arbitrary<Polygon> = fc.array(point, { minLength: 3, maxLength: 9 });
const direction = fc
  .double({ min: 0, max: 2 * Math.PI, noNaN: true })
  .map((t): Point => ({ x: Math.cos(t), y: Math.sin(t) }));

/** By definition: the farthest corner in the direction turned by τ. */
const reachAt = (corners: Polygon, centre: Point, { x, y }: Point, t: number): number => {
  const [nx, ny] = [x * Math.cos(t) - y * Math.sin(t), x * Math.sin(t) + y * Math.cos(t)];
  return Math.max(...corners.map((p) => (p.x - centre.x) * nx + (p.y - centre.y) * ny));
};

test('a unit square from its middle: by hand', () => {
  const square: Polygon = [
    { x: 0, y: 0 },
    { x: 1, y: 0 },
    { x: 1, y: 1 },
    { x: 0, y: 1 },
  ];
  const [middle, right] = [
    { x: 0.5, y: 0.5 },
    { x: 1, y: 0 },
  ];
  expect(reach(square, middle, right, 0)).toBe(0.5);
  // Turned by 30° its corner, at 45° and √½ from the middle, is 15° off the direction.
  expect(reach(square, middle, right, Math.PI / 6)).toBeCloseTo(Math.SQRT1_2 * Math.cos(Math.PI / 12), 12);
  // Turned by 45° the corner points straight there; it comes no farther.
  expect(reach(square, middle, right, Math.PI / 4)).toBeCloseTo(Math.SQRT1_2, 12);
  expect(turnUntil(square, middle, right, Math.SQRT1_2 * Math.cos(Math.PI / 12))).toBeCloseTo(
    Math.PI / 6,
    12,
  );
  expect(turnUntil(square, middle, right, 0.71)).toBe(Math.PI);
  expect(turnUntil(square, middle, right, 0.5)).toBe(0);
  expect(turnUntil(square, middle, right, 0.4)).toBe(0);
});

test('the closed form is what dense sampling comes to, never less', () => {
  const turn = fc.double({ min: 0, max: Math.PI / 4, noNaN: true });
  fc.assert(
    fc.property(shape, point, direction, turn, (corners, centre, n, most) => {
      const exact = reach(corners, centre, n, most);
      let sampled = Number.NEGATIVE_INFINITY;
      for (let i = -500; i <= 500; i++)
        sampled = Math.max(sampled, reachAt(corners, centre, n, (most * i) / 500));
      expect(sampled).toBeLessThanOrEqual(exact + 1e-9);
      // Between samples, at most half a step from the best turn: |v|·(1 − cos(step ÷ 2)) below it.
      expect(sampled).toBeGreaterThanOrEqual(exact - 34 * (1 - Math.cos(most / 1000)) - 1e-9);
    }),
    { seed: 11, numRuns: 300 },
  );
});

test('corners inside the hull never decide', () => {
  fc.assert(
    fc.property(shape, point, direction, (corners, centre, n) => {
      expect(reach(convexHull(corners), centre, n, 0.3)).toBe(reach(corners, centre, n, 0.3));
    }),
    { seed: 12, numRuns: 300 },
  );
});

test('up to the turn that is told the shape stays inside, right after it does not', () => {
  const share = fc.double({ min: 0.05, max: 1.05, noNaN: true });
  let met = 0;
  fc.assert(
    fc.property(shape, point, direction, share, (corners, centre, n, part) => {
      const straight = reach(corners, centre, n, 0);
      const any = Math.max(...corners.map((p) => Math.hypot(p.x - centre.x, p.y - centre.y)));
      fc.pre(any > straight + 0.1);
      const distance = straight + part * (any - straight);
      const until = turnUntil(corners, centre, n, distance);
      for (let i = -50; i <= 50; i++)
        expect(reachAt(corners, centre, n, (until * i) / 50)).toBeLessThanOrEqual(distance + 1e-9);
      if (until === Math.PI) return;
      met += 1;
      const past = [-1, 1].map((way) => reachAt(corners, centre, n, way * (until + 1e-4)));
      expect(Math.max(...past)).toBeGreaterThan(distance);
    }),
    { seed: 13, numRuns: 300 },
  );
  expect(met).toBeGreaterThan(100);
});
