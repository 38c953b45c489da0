import type { Point, Space } from './point.ts';
import { areaOfTurn, between } from './predicates.ts';
import { cross, distance, dot, lerp, subtract } from './vector.ts';

/**
 * Where the foot of p falls on the line through a and b: 0 at a, 1 at b, less or more beyond them. 0 when a and b
 * are the same point.
 */
export function parameterOn<S extends Space = 'block'>(a: Point<S>, b: Point<S>, p: Point<S>): number {
  const along = subtract(b, a);
  const squared = dot(along, along);
  if (squared === 0) return 0;
  // From the nearer end, so that p = b gives exactly 1.
  const fromA = dot(subtract(p, a), along) / squared;
  return fromA <= 0.5 ? fromA : 1 + dot(subtract(p, b), along) / squared;
}

/** The point of the line through a and b whose {@link parameterOn} is t. */
export const pointAt = lerp;

/** Distance of p from the whole line through a and b; from the point a when a and b are the same. */
export function distanceToLine<S extends Space = 'block'>(p: Point<S>, a: Point<S>, b: Point<S>): number {
  const size = distance(a, b);
  return size === 0 ? distance(p, a) : Math.abs(cross(subtract(b, a), subtract(p, a))) / size;
}

/** The point of the segment from a to b that is nearest to p. */
export const nearestOnSegment = <S extends Space = 'block'>(
  p: Point<S>,
  a: Point<S>,
  b: Point<S>,
): Point<S> => lerp(a, b, Math.min(1, Math.max(0, parameterOn(a, b, p))));

/**
 * Whether p is within so many inches of the segment from a to b, ends included. Most points are not, and the box round the
 * segment tells so without a square root.
 */
export const isOnSegment = <S extends Space = 'block'>(
  p: Point<S>,
  a: Point<S>,
  b: Point<S>,
  within: number,
): boolean =>
  p.x >= Math.min(a.x, b.x) - within &&
  p.x <= Math.max(a.x, b.x) + within &&
  p.y >= Math.min(a.y, b.y) - within &&
  p.y <= Math.max(a.y, b.y) + within &&
  distanceToSegment(p, a, b) <= within;

/** Distance of p from the segment from a to b, ends included. */
export const distanceToSegment = <S extends Space = 'block'>(p: Point<S>, a: Point<S>, b: Point<S>): number =>
  distance(p, nearestOnSegment(p, a, b));

/**
 * Where the whole lines through a, b and through c, d cross; null when they are parallel or when a pair is one
 * point. Lines that are parallel but for rounding cross far away: whoever must not take that for a crossing
 * compares with the extent of the drawing.
 */
export function lineCrossing<S extends Space = 'block'>(
  a: Point<S>,
  b: Point<S>,
  c: Point<S>,
  d: Point<S>,
): Point<S> | null {
  const along = subtract(b, a);
  const other = subtract(d, c);
  const crossed = cross(along, other);
  if (crossed === 0) return null;
  const at = lerp(a, b, cross(subtract(c, a), other) / crossed);
  return Number.isFinite(at.x) && Number.isFinite(at.y) ? at : null;
}

/** The one point that two segments share. */
export interface SegmentCrossing<S extends Space = 'block'> {
  readonly at: Point<S>;
  /** Share of the way from a to b, 0 … 1; exactly 0 or 1 when they meet in that end. */
  readonly t: number;
  /** Share of the way from c to d, 0 … 1; exactly 0 or 1 when they meet in that end. */
  readonly u: number;
}

/**
 * Where the segments from a to b and from c to d meet in one point: crossing, or touching with an end. null when
 * they do not meet, and when they share a stretch of one line (there is no one point then).
 *
 * Whether they meet is decided without rounding error (the ends as given, no tolerance); the place is rounded as
 * any quotient is. Where an end touches, `at` is exactly that end.
 */
export function segmentCrossing<S extends Space = 'block'>(
  a: Point<S>,
  b: Point<S>,
  c: Point<S>,
  d: Point<S>,
): SegmentCrossing<S> | null {
  // Most pairs of a drawing are far apart: the boxes tell so without the exact arithmetic.
  if (boxesApart(a, b, c, d)) return null;
  const sideA = areaOfTurn(c, d, a);
  const sideB = areaOfTurn(c, d, b);
  const sideC = areaOfTurn(a, b, c);
  const sideD = areaOfTurn(a, b, d);
  if (sideA === 0 && sideB === 0 && sideC === 0 && sideD === 0) return endsMeetInLine(a, b, c, d);
  if (Math.sign(sideA) * Math.sign(sideB) > 0 || Math.sign(sideC) * Math.sign(sideD) > 0) return null;

  // The areas have opposite signs or one is 0, so both shares lie within 0 … 1 whatever the rounding.
  const t = sideA === 0 ? 0 : sideA / (sideA - sideB);
  const u = sideC === 0 ? 0 : sideC / (sideC - sideD);
  const at = t === 0 ? a : t === 1 ? b : u === 0 ? c : u === 1 ? d : lerp(a, b, t);
  return { at, t, u };
}

function boxesApart<S extends Space>(a: Point<S>, b: Point<S>, c: Point<S>, d: Point<S>): boolean {
  return (
    Math.max(a.x, b.x) < Math.min(c.x, d.x) ||
    Math.max(c.x, d.x) < Math.min(a.x, b.x) ||
    Math.max(a.y, b.y) < Math.min(c.y, d.y) ||
    Math.max(c.y, d.y) < Math.min(a.y, b.y)
  );
}

/** For segments on one line: their common end when that is all they share. */
function endsMeetInLine<S extends Space>(
  a: Point<S>,
  b: Point<S>,
  c: Point<S>,
  d: Point<S>,
): SegmentCrossing<S> | null {
  const shared: SegmentCrossing<S>[] = [];
  const note = (at: Point<S>, t: number, u: number) => {
    if (!shared.some((known) => known.at.x === at.x && known.at.y === at.y)) shared.push({ at, t, u });
  };
  if (between(a, b, c)) note(c, parameterOn(a, b, c), 0);
  if (between(a, b, d)) note(d, parameterOn(a, b, d), 1);
  if (between(c, d, a)) note(a, 0, parameterOn(c, d, a));
  if (between(c, d, b)) note(b, 1, parameterOn(c, d, b));
  return shared.length === 1 ? shared[0]! : null;
}
