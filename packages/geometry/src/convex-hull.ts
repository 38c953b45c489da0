import type { Point, Polygon, Space } from './point.ts';
import { turn } from './predicates.ts';

/**
 * The corners of the smallest convex shape round the points, clockwise on the screen, from the leftmost (of these the
 * topmost) on; no corner lies on a straight run. Exact. One point or two where the points have no area.
 *
 * Monotone chains: A. M. Andrew, Another efficient algorithm for convex hulls in two dimensions, Information
 * Processing Letters 9(5), 1979 (from memory).
 */
export function convexHull<S extends Space = 'block'>(points: readonly Point<S>[]): Polygon<S> {
  const sorted = [...points]
    .sort((p, q) => p.x - q.x || p.y - q.y)
    .filter(({ x, y }, i, all) => i === 0 || x !== all[i - 1]!.x || y !== all[i - 1]!.y);
  if (sorted.length < 3) return sorted;
  return [...chain(sorted), ...chain(sorted.reverse())];
}

/** From the first point to the last, turning clockwise; without the last. */
function chain<S extends Space>(points: readonly Point<S>[]): Point<S>[] {
  const corners: Point<S>[] = [];
  for (const p of points) {
    while (corners.length > 1 && turn(corners.at(-2)!, corners.at(-1)!, p) <= 0) corners.pop();
    corners.push(p);
  }
  return corners.slice(0, -1);
}
