import { area, type Polygon } from '@seamwright/geometry';
import polygonClipping, { type MultiPolygon } from 'polygon-clipping';
import { describe, expect, it } from 'vitest';
import { boundaryRing, cornersOfRing } from '../src/boundary.ts';
import { arranged, line, onBoundary, rectangle, seeded } from './drawings.ts';

/**
 * Outside check: polygon-clipping 0.15.7 (Martinez, Rueda, Feito, A new algorithm for computing Boolean operations on
 * polygons, 2009) unites and intersects the patches as bare coordinates; the arrangement reads the same off its
 * structure.
 */
const ring = (polygon: Polygon): [number, number][][] => [polygon.map(({ x, y }) => [x, y])];

const areaOf = (shapes: MultiPolygon): number =>
  shapes.reduce(
    (sum, [outside, ...holes]) =>
      sum +
      area(outside!.map(([x, y]) => ({ x, y }))) -
      holes.reduce((inner, hole) => inner + area(hole.map(([x, y]) => ({ x, y }))), 0),
    0,
  );

const OUTLINES: Record<string, Polygon> = {
  square: rectangle(12, 12),
  'an L': [
    { x: 0, y: 0 },
    { x: 5, y: 0 },
    { x: 5, y: 6 },
    { x: 12, y: 6 },
    { x: 12, y: 12 },
    { x: 0, y: 12 },
  ],
};

describe('patches against boolean operations on bare coordinates', () => {
  for (const [name, outline] of Object.entries(OUTLINES)) {
    it(`fill ${name} without gap or overlap, 20 drawings`, () => {
      const random = seeded(7);
      for (let drawing = 0; drawing < 20; drawing += 1) {
        const splits = Array.from({ length: 5 }, () => {
          const [a, b] = [onBoundary(outline, random()), onBoundary(outline, random())];
          return line(a.x, a.y, b.x, b.y);
        });
        const { patches } = arranged(outline, splits);
        const [first, ...rest] = patches.map(({ polygon }) => ring(polygon));
        expect(areaOf(polygonClipping.union(first!, ...rest))).toBeCloseTo(area(outline), 6);
        for (const [i, p] of patches.entries()) {
          for (const q of patches.slice(i + 1)) {
            const common = polygonClipping.intersection(ring(p.polygon), ring(q.polygon));
            expect(areaOf(common)).toBeLessThan(1e-9);
          }
        }
      }
    });
  }

  it('the boundary of some patches is their union', () => {
    const lattice = [2, 4, 7].flatMap((v) => [line(v, 0, v, 12), line(0, v, 12, v)]);
    const block = arranged(rectangle(12, 12), [...lattice, line(0, 12, 12, 0)]);
    const random = seeded(9);
    for (let pick = 0; pick < 30; pick += 1) {
      // Grow a connected set by four patches.
      const chosen = new Set([Math.floor(random() * block.patches.length)]);
      for (const { left, right } of block.edges) {
        if (chosen.size > 4) break;
        if (left >= 0 && right >= 0 && chosen.has(left) !== chosen.has(right)) chosen.add(left).add(right);
      }
      const [first, ...rest] = [...chosen].map((p) => ring(block.patches[p]!.polygon));
      const united = polygonClipping.union(first!, ...rest);
      expect(united).toHaveLength(1);
      const boundary = cornersOfRing(block, boundaryRing(block, chosen));
      expect(area(boundary)).toBeCloseTo(area(united[0]![0]!.map(([x, y]) => ({ x, y }))), 9);
    }
  });
});
