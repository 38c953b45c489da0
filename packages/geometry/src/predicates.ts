import { orient2d } from 'robust-predicates';
import type { Point, Space } from './point.ts';

/**
 * Which way the path a → b → c turns, without rounding error: +1 clockwise **as seen on the screen** (y down),
 * −1 anticlockwise, 0 when the three points lie exactly on one line.
 *
 * Exact wherever the products of coordinates do not underflow (sizes above 1e-140).
 *
 * Put differently: +1 when c lies to the right of someone who walks from a to b on the screen.
 *
 * Adaptive-precision predicate: J. R. Shewchuk, Adaptive Precision Floating-Point Arithmetic and Fast Robust
 * Geometric Predicates, Discrete & Computational Geometry 18(3), 1997, as in the library robust-predicates.
 */
export function turn<S extends Space = 'block'>(a: Point<S>, b: Point<S>, c: Point<S>): -1 | 0 | 1 {
  const doubledArea = areaOfTurn(a, b, c);
  return doubledArea > 0 ? 1 : doubledArea < 0 ? -1 : 0;
}

/**
 * Twice the area of the triangle a, b, c, with the sign of {@link turn}; the sign is exact, the size within a few
 * units in the last place.
 */
export const areaOfTurn = <S extends Space = 'block'>(a: Point<S>, b: Point<S>, c: Point<S>): number =>
  // orient2d is positive for anticlockwise with y down. Taken from 0, so that there is no −0.
  0 - orient2d(a.x, a.y, b.x, b.y, c.x, c.y);

/** Whether p, known to lie on the line through a and b, lies between them (ends included). Exact. */
export const between = <S extends Space = 'block'>(a: Point<S>, b: Point<S>, p: Point<S>): boolean =>
  Math.min(a.x, b.x) <= p.x &&
  p.x <= Math.max(a.x, b.x) &&
  Math.min(a.y, b.y) <= p.y &&
  p.y <= Math.max(a.y, b.y);
