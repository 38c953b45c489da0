import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { convexPolygon, interiorAngles, randomNumbers, wildPolygon } from '../test/random-polygons.ts';
import { checkSimple } from './check-simple.ts';
import { distanceToLine, distanceToSegment } from './line.ts';
import { allowanceOutline } from './offset.ts';
import type { Point, Polygon } from './point.ts';
import { contains, edgesOf, isClockwise } from './polygon.ts';
import { MITRE_REACH, OUTLINE_ROUNDING } from './tolerance.ts';
import { reflection, rotation, transformPolygon } from './transform.ts';
import { distance, dot, normalize, subtract } from './vector.ts';

const seeds = fc.integer({ min: 0, max: 1e9 });
const allowances = fc.constantFrom(0.25, 0.375, 0.1, 1);

/** Points all along a ring, corners included. */
const along = (ring: Polygon, perEdge: number): readonly Point[] =>
  edgesOf(ring).flatMap(({ a, b }) =>
    Array.from({ length: perEdge }, (_, k) => ({
      x: a.x + ((b.x - a.x) * k) / perEdge,
      y: a.y + ((b.y - a.y) * k) / perEdge,
    })),
  );

const distanceToRing = (p: Point, ring: Polygon): number =>
  Math.min(...edgesOf(ring).map(({ a, b }) => distanceToSegment(p, a, b)));

/** Whether p lies in the mitre at the corner b of the edges a–b and b–c: past both ends, within both strips. */
function isInMitre(p: Point, a: Point, b: Point, c: Point, allowance: number): boolean {
  const arriving = normalize(subtract(b, a));
  const leaving = normalize(subtract(c, b));
  const from = subtract(p, b);
  const slack = 2 * OUTLINE_ROUNDING;
  return (
    dot(from, arriving) >= -slack &&
    dot(from, leaving) <= slack &&
    dot(from, { x: arriving.y, y: -arriving.x }) <= allowance + slack &&
    dot(from, { x: leaving.y, y: -leaving.x }) <= allowance + slack &&
    dot(from, normalize(subtract(arriving, leaving))) <= MITRE_REACH * allowance + slack
  );
}

describe.each([
  ['convex', convexPolygon],
  ['wild', wildPolygon],
] as const)('%s polygons', (_, make) => {
  test('the outline is one simple clockwise polygon that holds the sew line inside', () => {
    fc.assert(
      fc.property(seeds, allowances, (seed, allowance) => {
        const polygon = make(randomNumbers(seed));
        const { outline, pockets } = allowanceOutline(polygon, allowance);
        expect(checkSimple(outline)).toEqual({ ok: true, value: outline });
        expect(isClockwise(outline)).toBe(true);
        for (const p of along(polygon, 3)) expect(contains(outline, p)).toBe('inside');
        for (const pocket of pockets) expect(isClockwise(pocket)).toBe(true);
      }),
      { seed: 61, numRuns: 400 },
    );
  });

  test('no point is nearer to the sew line than the allowance, and outside the mitres none is farther', () => {
    fc.assert(
      fc.property(seeds, allowances, (seed, allowance) => {
        const polygon = make(randomNumbers(seed));
        const count = polygon.length;
        for (const p of along(allowanceOutline(polygon, allowance).outline, 16)) {
          const away = distanceToRing(p, polygon);
          expect(away).toBeGreaterThan(allowance - OUTLINE_ROUNDING);
          if (away < allowance + OUTLINE_ROUNDING) continue;
          const inMitre = polygon.some((corner, i) =>
            isInMitre(p, polygon[(i + count - 1) % count]!, corner, polygon[(i + 1) % count]!, allowance),
          );
          expect(inMitre).toBe(true);
        }
      }),
      { seed: 62, numRuns: 400 },
    );
  });

  test('every point of the sew line that the outline can be seen from has its allowance opposite', () => {
    fc.assert(
      fc.property(seeds, allowances, (seed, allowance) => {
        const polygon = make(randomNumbers(seed));
        const { outline, pockets } = allowanceOutline(polygon, allowance);
        for (const { a, b } of edgesOf(polygon)) {
          const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
          const across = normalize(subtract(b, a));
          const opposite = { x: middle.x + across.y * allowance, y: middle.y - across.x * allowance };
          // Either it is on the rim, or something else covers it.
          const rim = Math.min(...[outline, ...pockets].map((ring) => distanceToRing(opposite, ring)));
          if (rim > 2 * OUTLINE_ROUNDING) expect(contains(outline, opposite)).toBe('inside');
        }
      }),
      { seed: 63, numRuns: 300 },
    );
  });

  test('turning or mirroring the sew line turns or mirrors the outline', () => {
    const hausdorff = (one: Polygon, other: Polygon) =>
      Math.max(...one.map((p) => distanceToRing(p, other)), ...other.map((p) => distanceToRing(p, one)));
    fc.assert(
      fc.property(seeds, fc.integer({ min: 0, max: 359 }), fc.boolean(), (seed, degrees, mirrored) => {
        const polygon = make(randomNumbers(seed));
        const move = (p: Polygon) =>
          transformPolygon(rotation(degrees), mirrored ? transformPolygon(reflection(1), p) : p);
        const moved = allowanceOutline(move(polygon), 0.25).outline;
        expect(hausdorff(moved, move(allowanceOutline(polygon, 0.25).outline))).toBeLessThan(
          4 * OUTLINE_ROUNDING,
        );
      }),
      { seed: 64, numRuns: 300 },
    );
  });

  test('cuts are edges of the outline, square to a corner’s bisector, three allowances off', () => {
    let seen = 0;
    fc.assert(
      fc.property(seeds, allowances, (seed, allowance) => {
        const polygon = make(randomNumbers(seed));
        const { outline, cuts } = allowanceOutline(polygon, allowance);
        for (const cut of cuts) {
          seen++;
          const isEdge = edgesOf(outline).some(
            ({ a, b }) => distance(a, cut.a) === 0 && distance(b, cut.b) === 0,
          );
          expect(isEdge).toBe(true);
          // A cut that is left as a hair has no direction to speak of.
          if (distance(cut.a, cut.b) < 1e-3) continue;
          const across = normalize(subtract(cut.b, cut.a));
          const belongs = polygon.some((corner, i) => {
            const arriving = normalize(subtract(corner, polygon[(i + polygon.length - 1) % polygon.length]!));
            const leaving = normalize(subtract(polygon[(i + 1) % polygon.length]!, corner));
            const off = distanceToLine(corner, cut.a, cut.b) - MITRE_REACH * allowance;
            return (
              Math.abs(off) < 1e-6 && Math.abs(dot(across, normalize(subtract(arriving, leaving)))) < 1e-3
            );
          });
          expect(belongs).toBe(true);
        }
      }),
      { seed: 65, numRuns: 300 },
    );
    expect(seen).toBeGreaterThan(30);
  });
});

test('the edges of convex polygons grow by s·(cot α/2 + cot β/2)', () => {
  const cotOfHalf = (degrees: number) => 1 / Math.tan((degrees * Math.PI) / 360);
  fc.assert(
    fc.property(seeds, allowances, (seed, allowance) => {
      const polygon = convexPolygon(randomNumbers(seed));
      const angles = interiorAngles(polygon);
      fc.pre(angles.every((angle) => angle > 39));
      const outline = edgesOf(allowanceOutline(polygon, allowance).outline);
      edgesOf(polygon).forEach(({ a, b }, i) => {
        const growth = allowance * (cotOfHalf(angles[i]!) + cotOfHalf(angles[(i + 1) % angles.length]!));
        expect(distance(outline[i]!.a, outline[i]!.b)).toBeCloseTo(distance(a, b) + growth, 9);
      });
    }),
    { seed: 66, numRuns: 300 },
  );
});
