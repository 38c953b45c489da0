import { dot, type Point, turn } from '@seamwright/geometry';

/**
 * Points that are added batch by batch, and the farthest of them in any direction.
 *
 * The hulls of 1, 2, 4, 8 … batches are kept, and two of one size merged into the next (the logarithmic method: Bentley,
 * Saxe, Decomposable searching problems, Journal of Algorithms 1(4), 1980; from memory). n batches take O(n log² n), a
 * question O(log² n).
 */
export class GrowingHull<T> {
  /** The hull of 2^i batches, or undefined. */
  private readonly hulls: (Hull<T> | undefined)[] = [];

  constructor(private readonly at: (item: T) => Point) {}

  add(batch: readonly T[]): void {
    let carried = batch;
    let size = 0;
    for (let hull = this.hulls[0]; hull !== undefined; hull = this.hulls[size]) {
      carried = [...carried, ...hull.upper, ...hull.lower];
      this.hulls[size] = undefined;
      size += 1;
    }
    this.hulls[size] = hullOf(carried, this.at);
  }

  /** The item farthest in the direction; undefined when there is none. */
  farthest(direction: Point): T | undefined {
    let best: T | undefined;
    let bestReach = Number.NEGATIVE_INFINITY;
    for (const hull of this.hulls) {
      if (hull === undefined) continue;
      const item = farthestOf(direction.y > 0 ? hull.lower : hull.upper, direction, this.at);
      const reach = dot(direction, this.at(item));
      if (reach > bestReach) {
        best = item;
        bestReach = reach;
      }
    }
    return best;
  }
}

/** The corners of a convex hull from left to right, along its upper and its lower side as seen on the screen. */
interface Hull<T> {
  readonly upper: readonly T[];
  readonly lower: readonly T[];
}

/** Monotone chains: A. M. Andrew, Information Processing Letters 9(5), 1979; from memory. */
function hullOf<T>(items: readonly T[], at: (item: T) => Point): Hull<T> {
  const sorted = [...items].sort((p, q) => at(p).x - at(q).x || at(p).y - at(q).y);
  const chain = (bend: 1 | -1): T[] => {
    const corners: T[] = [];
    for (const item of sorted) {
      while (corners.length > 1 && turn(at(corners.at(-2)!), at(corners.at(-1)!), at(item)) !== bend) {
        corners.pop();
      }
      corners.push(item);
    }
    return corners;
  };
  // Walked from left to right, the upper side bends to the right, the lower side to the left.
  return { upper: chain(1), lower: chain(-1) };
}

/** Along a side of a hull the reach in a direction that the side faces rises, then falls. */
function farthestOf<T>(side: readonly T[], direction: Point, at: (item: T) => Point): T {
  let low = 0;
  let high = side.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (dot(direction, at(side[middle]!)) < dot(direction, at(side[middle + 1]!))) low = middle + 1;
    else high = middle;
  }
  return side[low]!;
}
