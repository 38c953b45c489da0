import { distanceToLine } from './line.ts';
import type { Box, Point, Polygon, Segment, Space } from './point.ts';
import { between, turn } from './predicates.ts';
import { cross, distance, subtract } from './vector.ts';

/** The straight stretches between neighbouring corners: `edgesOf(p)[i]` starts at corner i. */
export const edgesOf = <S extends Space = 'block'>(polygon: Polygon<S>): readonly Segment<S>[] =>
  polygon.map((a, i) => ({ a, b: polygon[(i + 1) % polygon.length]! }));

/** Area with a sign: positive when the corners run clockwise on the screen (y down). Shoelace formula. */
export function signedArea<S extends Space = 'block'>(polygon: Polygon<S>): number {
  const origin = polygon[0];
  if (origin === undefined) return 0;
  // From a corner, not from (0, 0): a small patch far out would lose its digits.
  let doubled = 0;
  for (let i = 1; i + 1 < polygon.length; i++)
    doubled += cross(subtract(polygon[i]!, origin), subtract(polygon[i + 1]!, origin));
  return doubled / 2;
}

export const area = <S extends Space = 'block'>(polygon: Polygon<S>): number => Math.abs(signedArea(polygon));

/** Whether the corners run clockwise on the screen (y down). */
export const isClockwise = <S extends Space = 'block'>(polygon: Polygon<S>): boolean =>
  signedArea(polygon) > 0;

/** The same polygon, the other way round; the first corner stays first. */
export const reversed = <S extends Space = 'block'>(polygon: Polygon<S>): Polygon<S> => [
  ...polygon.slice(0, 1),
  ...polygon.slice(1).reverse(),
];

export const perimeter = <S extends Space = 'block'>(polygon: Polygon<S>): number =>
  edgesOf(polygon).reduce((sum, { a, b }) => sum + distance(a, b), 0);

/** The mean of the corners: of a convex polygon a place inside it. */
export const middleOfCorners = <S extends Space = 'block'>(polygon: Polygon<S>): Point<S> => ({
  x: polygon.reduce((sum, { x }) => sum + x, 0) / polygon.length,
  y: polygon.reduce((sum, { y }) => sum + y, 0) / polygon.length,
});

/** The smallest upright rectangle round the points. Throws a RangeError when there are none. */
export function boundingBox<S extends Space = 'block'>(points: readonly Point<S>[]): Box<S> {
  if (points.length === 0) throw new RangeError('No points have no bounding box');
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  for (const { x, y } of points) {
    minX = Math.min(minX, x);
    minY = Math.min(minY, y);
    maxX = Math.max(maxX, x);
    maxY = Math.max(maxY, y);
  }
  return { minX, minY, maxX, maxY };
}

/**
 * Where p lies with respect to a simple polygon (either way round). Exact for the numbers as given: `edge` only
 * when p is on the boundary without rounding.
 */
export function contains<S extends Space = 'block'>(
  polygon: Polygon<S>,
  p: Point<S>,
): 'inside' | 'edge' | 'outside' {
  let inside = false;
  for (let i = 0; i < polygon.length; i++) {
    const a = polygon[i]!;
    const b = polygon[(i + 1) % polygon.length]!;
    const straddles = a.y <= p.y !== b.y <= p.y;
    // Only the edges that straddle p's height, or lie at it, can matter: no exact arithmetic for the others.
    if (!straddles && a.y !== p.y && b.y !== p.y) continue;
    const side = turn(a, b, p);
    if (side === 0 && between(a, b, p)) return 'edge';
    // Does the edge cross the ray from p to the left? Yes when p is to the right of it on the screen: on the left
    // hand (−1) of someone who walks down, on the right hand (+1) of someone who walks up.
    if (straddles && side === (b.y > a.y ? -1 : 1)) inside = !inside;
  }
  return inside ? 'inside' : 'outside';
}

/** The polygon without corners within so many inches of the straight line through their neighbours. */
export function withoutFlatCorners<S extends Space = 'block'>(
  polygon: Polygon<S>,
  within: number,
): Polygon<S> {
  const count = polygon.length;
  return polygon.filter((corner, i) => {
    const before = polygon[(i + count - 1) % count]!;
    const after = polygon[(i + 1) % count]!;
    return distanceToLine(corner, before, after) > within;
  });
}

/** The polygon without corners that lie exactly between their neighbours, on a straight run of its boundary. */
export function withoutStraightCorners<S extends Space = 'block'>(polygon: Polygon<S>): Polygon<S> {
  const count = polygon.length;
  return polygon.filter((corner, i) => {
    const before = polygon[(i + count - 1) % count]!;
    const after = polygon[(i + 1) % count]!;
    return turn(before, corner, after) !== 0 || !between(before, after, corner);
  });
}
