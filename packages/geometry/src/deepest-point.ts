/// <reference path="./polylabel.d.ts" />
import polylabel from 'polylabel';
import { inscribedCircle } from './inscribed-circle.ts';
import { distanceToSegment } from './line.ts';
import type { Point, Polygon, Space } from './point.ts';
import { area, contains, edgesOf, isClockwise, perimeter, reversed } from './polygon.ts';
import { DEEPEST_WITHIN, SLIVER_RATIO } from './tolerance.ts';

/** A point inside a shape, and how far it is from the nearest edge. */
export interface Depth<S extends Space = 'block'> {
  readonly at: Point<S>;
  /** Distance to the nearest edge (of the outside or of a hole), inches for shapes in inches. */
  readonly depth: number;
}

/**
 * The point deepest inside a simple polygon (its pole of inaccessibility), for labels.
 *
 * Its depth is within {@link DEEPEST_WITHIN} of the greatest there is, and within an eighth of it in shapes
 * thinner than that; only in slivers (see {@link SLIVER_RATIO}) it is merely a good point inside. It is always
 * strictly inside when the numbers leave room for a point there. The same shape gives the same point, whichever
 * corner comes first and whichever way round the corners run.
 *
 * Most patches are convex and have few corners: the largest circle inside them is computed ({@link inscribedCircle}).
 * Otherwise quadtree search, V. Agafonkin, A new algorithm for finding a visual center of a polygon, 2016, as in the
 * library polylabel.
 */
export function deepestPoint<S extends Space = 'block'>(
  polygon: Polygon<S>,
  holes: readonly Polygon<S>[] = [],
): Depth<S> {
  const rings = [polygon, ...holes].map(canonical);
  const rim = rings.reduce((sum, ring) => sum + perimeter(ring), 0);
  const cloth = rings.reduce((sum, ring, i) => (i === 0 ? area(ring) : sum - area(ring)), 0);
  if (rim * rim > cloth * SLIVER_RATIO) return deepestChord(rings);

  // Every shape is at least area ÷ rim deep, so an eighth of that is a precision fine enough for it. Without this
  // the library gives a corner as the answer for shapes narrower than the precision.
  const precision = Math.min(DEEPEST_WITHIN, cloth / rim / 8);
  const circle = holes.length === 0 ? inscribedCircle(rings[0]!, precision) : null;
  if (circle !== null) return circle;
  const [x, y] = polylabel(
    rings.map((ring) => ring.map((p) => [p.x, p.y] as const)),
    precision,
  );
  return { at: { x, y }, depth: depthOf(rings, { x, y }) };
}

/** The same ring from its least corner on, clockwise: rounding then no longer depends on where the walk began. */
function canonical<S extends Space>(ring: Polygon<S>): Polygon<S> {
  const clockwise = isClockwise(ring) ? ring : reversed(ring);
  let least = 0;
  clockwise.forEach((p, i) => {
    const q = clockwise[least]!;
    if (p.x < q.x || (p.x === q.x && p.y < q.y)) least = i;
  });
  return [...clockwise.slice(least), ...clockwise.slice(0, least)];
}

function depthOf<S extends Space>(rings: readonly Polygon<S>[], p: Point<S>): number {
  let depth = Infinity;
  for (const ring of rings)
    for (const { a, b } of edgesOf(ring)) depth = Math.min(depth, distanceToSegment(p, a, b));
  return depth;
}

/**
 * For slivers, in which the quadtree would need millions of cells: the deepest of the middles of the chords half
 * way between neighbouring corners' heights, and likewise across.
 */
function deepestChord<S extends Space>(rings: readonly Polygon<S>[]): Depth<S> {
  const corners = rings.flat();
  let best: Depth<S> = { at: corners[0]!, depth: 0 };
  for (const [along, across] of [
    ['x', 'y'],
    ['y', 'x'],
  ] as const) {
    const levels = [...new Set(corners.map((p) => p[across]))].sort((k, l) => k - l);
    for (let i = 0; i + 1 < levels.length; i++) {
      const level = (levels[i]! + levels[i + 1]!) / 2;
      const hits = rings
        .flatMap(edgesOf)
        .filter(({ a, b }) => a[across] <= level !== b[across] <= level)
        .map(({ a, b }) => a[along] + ((b[along] - a[along]) * (level - a[across])) / (b[across] - a[across]))
        .sort((k, l) => k - l);
      for (let k = 0; k + 1 < hits.length; k += 2) {
        const middle = (hits[k]! + hits[k + 1]!) / 2;
        const at: Point<S> = along === 'x' ? { x: middle, y: level } : { x: level, y: middle };
        if (rings.some((ring, r) => contains(ring, at) !== (r === 0 ? 'inside' : 'outside'))) continue;
        const depth = depthOf(rings, at);
        if (depth > best.depth) best = { at, depth };
      }
    }
  }
  return best;
}
