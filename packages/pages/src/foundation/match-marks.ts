import type { Arrangement } from '@seamwright/arrangement';
import {
  add,
  distance,
  edgesOf,
  nearestOnSegment,
  normalize,
  type Point,
  type Polygon,
  SAME_COORDINATE,
  type Segment,
  scale,
  segmentCrossing,
  subtract,
} from '@seamwright/geometry';
import type { RingEdge, RingVertex } from './ring.ts';
import { type Bounds, throughAllowance } from './run-ons.ts';

/** Inches: how long a match mark is where there is no allowance to cross, and how much of a narrower section it crosses. */
const BARE_MARK = 1 / 8;
const BARE_SHARE = 0.4;

/** A point of a section's outline that has to meet a point of another section. */
export interface MatchPoint {
  /** Index in the arrangement. */
  readonly vertex: number;
  readonly at: Point;
  /** The way of the outline along which the point is matched, from the point or towards it, walked clockwise on the screen. */
  readonly along: RingEdge;
}

/**
 * The points inside a section's edges that have to meet points of other sections: where a seam, of this section or another,
 * or a join of others ends on a joined edge, and where the joined stretch of an edge ends short of the section's corner.
 * Each gets a tick across the allowance, square to the edge.
 */
export const matchPoints = (arrangement: Arrangement, ring: readonly RingVertex[]): readonly MatchPoint[] => {
  const seams = new Map<number, Set<number>>();
  for (const { from, to, line, left, right } of arrangement.edges)
    if (left >= 0 && right >= 0)
      for (const end of [from, to]) seams.set(end, (seams.get(end) ?? new Set()).add(line));
  return ring
    .filter(({ before, after }) => before.line === after.line)
    .filter(({ vertex, before, after }) => {
      const ends = [...(seams.get(vertex) ?? [])].some((line) => line !== after.line);
      return isJoined(before) !== isJoined(after) || (isJoined(after) && ends);
    })
    .map(({ vertex, at, after }) => ({ vertex, at, along: after }));
};

/**
 * The corners of a section at which another section has a match point inside an edge. They need no tick, a corner is a match
 * point by itself, but the other's number.
 *
 * @param inside the vertices at which any section has a match point inside an edge
 */
export const matchCorners = (
  ring: readonly RingVertex[],
  inside: ReadonlySet<number>,
): readonly MatchPoint[] =>
  ring
    .filter(({ vertex, before, after }) => before.line !== after.line && inside.has(vertex))
    .flatMap(({ vertex, at, before, after }) => {
      const along = isJoined(after) ? after : before;
      return isJoined(along) ? [{ vertex, at, along }] : [];
    });

const isJoined = (edge: RingEdge): boolean => edge.beyond >= 0;

/**
 * The tick at a point of the outline: across the allowance; where there is none inside the outline, as what is outside is
 * cut off.
 *
 * @param onward the way of the outline there, walked clockwise on the screen
 */
export function tick(at: Point, onward: Point, bounds: Bounds): Segment {
  const along = normalize(onward);
  // Clockwise on the screen: outside is on the left hand.
  const outward = { x: along.y, y: -along.x };
  if (bounds.allowance > 0) return { a: at, b: throughAllowance(at, outward, bounds) };
  const inward = scale(outward, -1);
  const far = add(at, scale(inward, BARE_MARK / BARE_SHARE));
  const across = edgesOf(bounds.outline)
    .map(({ a, b }) => segmentCrossing(at, far, a, b)?.at ?? far)
    .map((hit) => distance(at, hit))
    .filter((way) => way > SAME_COORDINATE);
  return { a: at, b: add(at, scale(inward, BARE_SHARE * Math.min(...across))) };
}

/** Inches: how far the two ticks where a partial seam stops are from where it does. */
const STOP_TICKS_APART = 1 / 32;

/**
 * Two ticks side by side where the sewing of a partial seam stops, across the allowance as match marks are: they match those of the
 * section on the other side, too.
 *
 * @param stop on an edge of the outline
 * @param way of that edge
 */
export function stopTicks(stop: Point, way: Point, bounds: Bounds): readonly Segment[] {
  const onward = normalize(way);
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
