import { dot, type Point } from '@seamwright/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GrowingHull } from '../src/order/growing-hull.ts';

/** On a lattice, so that points coincide, lie on one line, and are equally far. */
const point: fc.Arbitrary<Point> = fc.record({
  x: fc.integer({ min: -6, max: 6 }),
  y: fc.integer({ min: -6, max: 6 }),
});

describe('the farthest of points that are added batch by batch', () => {
  it('none is farther, in any direction, after any batch', () => {
    fc.assert(
      fc.property(
        fc.noBias(
          fc.array(fc.tuple(fc.array(point, { minLength: 1, maxLength: 6 }), point), {
            size: 'max',
            maxLength: 20,
          }),
        ),
        (batches) => {
          const hull = new GrowingHull<Point>((p) => p);
          const all: Point[] = [];
          for (const [batch, direction] of batches) {
            hull.add(batch);
            all.push(...batch);
            const farthest = hull.farthest(direction)!;
            expect(all).toContain(farthest);
            expect(all.filter((p) => dot(direction, p) > dot(direction, farthest))).toEqual([]);
          }
        },
      ),
      { seed: 51, numRuns: 500, endOnFailure: true },
    );
  });

  it('none of none', () => {
    expect(new GrowingHull<Point>((p) => p).farthest({ x: 1, y: 0 })).toBeUndefined();
  });
});
