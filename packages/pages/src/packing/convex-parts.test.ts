import { area, convexHull, type Polygon } from '@seamwright/geometry';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { convexParts } from './convex-parts.ts';

/** A ring round (0, 0) whose corners are nearer and farther: simple, with hollows. */
const rings = fc.array(fc.integer({ min: 20, max: 300 }), { minLength: 3, maxLength: 16 }).map((reaches) =>
  reaches.map((reach, i) => {
    const angle = (2 * Math.PI * i) / reaches.length;
    return { x: reach * Math.cos(angle), y: reach * Math.sin(angle) };
  }),
);

const isConvex = (p: Polygon<'page'>) => Math.abs(area(p) - area(convexHull(p))) < 1e-6;

/** Ray to the right, from the definition. */
const holds = (outline: Polygon<'page'>, x: number, y: number): boolean =>
  outline.filter((a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    return a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x);
  }).length %
    2 ===
  1;

test('the parts of an outline with hollows are convex, cover it, and hardly more', () => {
  let several = 0;
  fc.assert(
    fc.property(rings, fc.boolean(), (ring, otherWay) => {
      const outline = otherWay ? [...ring].reverse() : ring;
      const parts = convexParts([outline]);
      for (const part of parts) expect(isConvex(part)).toBe(true);
      for (let x = -295; x < 300; x += 37)
        for (let y = -295; y < 300; y += 37)
          if (holds(outline, x, y)) expect(parts.some((part) => holds(part, x, y))).toBe(true);
      const sum = parts.reduce((total, part) => total + area(part), 0);
      expect(sum).toBeGreaterThan(area(outline) - 1e-6);
      // Each time that two become one, at most 8 % of it is hollow.
      expect(sum).toBeLessThan(area(outline) / 0.92 ** 4);
      if (parts.length > 1) several++;
    }),
    { numRuns: 300, seed: 4 },
  );
  expect(several).toBeGreaterThan(150);
});

test('a caption as wide as the foundation below it is one part with it, one in a free corner is not', () => {
  const box = (x: number, y: number, width: number, height: number) => [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
  expect(convexParts([box(0, 0, 200, 40), box(0, 50, 200, 200)])).toHaveLength(1);
  expect(convexParts([box(0, 0, 60, 40), box(0, 50, 200, 200)])).toHaveLength(2);
});

test('a single stretch is a part', () => {
  const stretch = [
    { x: 0, y: 0 },
    { x: 30, y: 40 },
  ];
  expect(convexParts([stretch])).toEqual([stretch]);
});
