import type { Arrangement } from '@seamwright/arrangement';
import {
  add,
  distance,
  edgesOf,
  nearestOnSegment,
  normalize,
  type Point,
  type Polygon,
  type Segment,
  scale,
  subtract,
} from '@seamwright/geometry';
import type { Section } from '@seamwright/sewing';
import type { RingEdge, RingVertex } from './ring.ts';
import { type Bounds, throughAllowance } from './run-ons.ts';

/** Inches: how long a match mark is where there is no allowance to cross. */
const BARE_MARK = 1 / 8;

/**
 * A tick across the allowance, square to the edge, at every point inside an edge of the section that has to meet
 * a point of another section: where a seam of another section, or a join between other sections, ends on the
 * edge, and where the joined stretch of an edge ends short of the section's corner.
 *
 * Corners of the section need no tick: they are match points by themselves.
 */
export const matchMarks = (
  arrangement: Arrangement,
  section: Section,
  ring: readonly RingVertex[],
  bounds: Bounds,
): readonly Segment[] =>
  matchPoints(arrangement, section, ring).map(({ at, after }) =>
    tick(at, subtract(after.to, after.from), bounds),
  );

/** The points of {@link matchMarks}. */
export function matchPoints(
  arrangement: Arrangement,
  section: Section,
  ring: readonly RingVertex[],
): readonly RingVertex[] {
  const own = new Set(section.order);
  const seamEnds = new Set<number>();
  for (const { from, to, left, right } of arrangement.edges) {
    const between = left >= 0 && right >= 0;
    if (between && !own.has(left) && !own.has(right)) seamEnds.add(from).add(to);
  }
  return ring
    .filter(({ before, after }) => before.line === after.line)
    .filter(({ vertex, before, after }) => seamEnds.has(vertex) || isJoined(before) !== isJoined(after));
}

const isJoined = (edge: RingEdge): boolean => edge.beyond >= 0;

/**
 * The tick at a point of the outline.
 *
 * @param onward the way of the outline there, walked clockwise on the screen
 */
export function tick(at: Point, onward: Point, bounds: Bounds): Segment {
  const along = normalize(onward);
  // Clockwise on the screen: outside is on the left hand.
  const outward = { x: along.y, y: -along.x };
  if (bounds.allowance === 0) return { a: at, b: add(at, scale(outward, BARE_MARK)) };
  return { a: at, b: throughAllowance(at, outward, bounds) };
}

/** Inches: how far the two ticks where a partial seam stops are from where it does. */
const STOP_TICKS_APART = 1 / 32;

/**
 * Two ticks side by side where the sewing of a partial seam stops, across the allowance as match marks are: they match those of the
 * section on the other side, too.
 *
 * @param stop on an edge of the outline
 */
export function stopTicks(stop: Point, bounds: Bounds): readonly Segment[] {
  const onward = normalize(onOutline(bounds.outline, stop).onward);
  return [-STOP_TICKS_APART, STOP_TICKS_APART].map((by) =>
    tick(add(stop, scale(onward, by)), onward, bounds),
  );
}

/** The nearest point of the outline, and the way of its edge there. */
export function onOutline(outline: Polygon, p: Point): { readonly at: Point; readonly onward: Point } {
  const feet = edgesOf(outline).map(({ a, b }) => ({
    at: nearestOnSegment(p, a, b),
    onward: subtract(b, a),
  }));
  return feet.reduce((best, foot) => (distance(p, foot.at) < distance(p, best.at) ? foot : best));
}
