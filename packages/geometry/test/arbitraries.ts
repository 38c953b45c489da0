import fc from 'fast-check';
import type { Point } from '../src/point.ts';

/**
 * Coordinates spread evenly over ±120 in. (fc.double spreads over the doubles instead: most of its values would be
 * smaller than 1e-100.)
 */
export const coordinate = fc.integer({ min: -120e9, max: 120e9 }).map((n) => n / 1e9);

export const point: fc.Arbitrary<Point> = fc.record({ x: coordinate, y: coordinate });

/** A share, in −1 … 2. */
export const share = fc.integer({ min: -1e9, max: 2e9 }).map((n) => n / 1e9);
