import type { Point, Space } from './point.ts';

/** u + v. */
export const add = <S extends Space = 'block'>(u: Point<S>, v: Point<S>): Point<S> => ({
  x: u.x + v.x,
  y: u.y + v.y,
});

/** u − v: the way from v to u. */
export const subtract = <S extends Space = 'block'>(u: Point<S>, v: Point<S>): Point<S> => ({
  x: u.x - v.x,
  y: u.y - v.y,
});

/** v made k times as long. */
export const scale = <S extends Space = 'block'>(v: Point<S>, k: number): Point<S> => ({
  x: v.x * k,
  y: v.y * k,
});

/** Scalar product. */
export const dot = <S extends Space = 'block'>(u: Point<S>, v: Point<S>): number => u.x * v.x + u.y * v.y;

/**
 * u.x·v.y − u.y·v.x: positive when v points clockwise of u on the screen (y down). Rounded: to decide on which
 * side a point lies, use {@link turn}.
 */
export const cross = <S extends Space = 'block'>(u: Point<S>, v: Point<S>): number => u.x * v.y - u.y * v.x;

export const length = <S extends Space = 'block'>(v: Point<S>): number => Math.hypot(v.x, v.y);

export const distance = <S extends Space = 'block'>(a: Point<S>, b: Point<S>): number =>
  Math.hypot(b.x - a.x, b.y - a.y);

export const midpoint = <S extends Space = 'block'>(a: Point<S>, b: Point<S>): Point<S> => ({
  x: (a.x + b.x) / 2,
  y: (a.y + b.y) / 2,
});

/** The point at share t of the way from a (t = 0, exactly a) to b (t = 1, exactly b). t may lie outside 0 … 1. */
export const lerp = <S extends Space = 'block'>(a: Point<S>, b: Point<S>, t: number): Point<S> =>
  // Measured from the nearer end, so that t = 1 gives b itself and not b give or take a rounding.
  t <= 0.5
    ? { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t }
    : { x: b.x - (b.x - a.x) * (1 - t), y: b.y - (b.y - a.y) * (1 - t) };

/** v made 1 long; the zero vector stays the zero vector. */
export function normalize<S extends Space = 'block'>(v: Point<S>): Point<S> {
  const size = length(v);
  return size === 0 ? v : { x: v.x / size, y: v.y / size };
}
