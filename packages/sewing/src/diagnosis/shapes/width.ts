import type { Arrangement, Patch } from '@seamwright/arrangement';
import {
  area,
  contains,
  cross,
  DEEPEST_WITHIN,
  distance,
  dot,
  edgesOf,
  midpoint,
  nearestOnSegment,
  type Point,
  type Polygon,
  perimeter,
  pointAt,
  SAME_COORDINATE,
  type Segment,
  subtract,
} from '@seamwright/geometry';

/** A place where a patch is narrow. */
export interface Narrow {
  /** Inches, across. */
  readonly width: number;
  readonly at: Point;
}

/**
 * The width of the largest circle in a patch, inches. Exact for triangles; for others it may be told too large by up to 1/128
 * in, never too small.
 */
export function widestCircle({ polygon, holes, depth }: Patch): number {
  if (polygon.length === 3 && holes.length === 0) return (4 * area(polygon)) / perimeter(polygon);
  return 2 * (depth + DEEPEST_WITHIN);
}

/**
 * Where a patch is narrower than a limit, if that matters: over its whole extent, between two sides that face each other for as
 * far as the limit, or where one of its corners comes near another side. The tips of triangles do not count: sides that meet
 * in a corner are always near each other there.
 */
export function narrowestPlace(arrangement: Arrangement, patch: Patch, limit: number): Narrow | null {
  const rings: Polygon[] = [
    patch.polygon,
    ...patch.holes.map((hole) => hole.map((vertex) => arrangement.vertices[vertex]!.at)),
  ];
  const circle = widestCircle(patch);
  const found: Narrow[] = circle < limit ? [{ width: circle, at: patch.heart }] : [];
  const sides = rings.flatMap(sidesOf);
  const isInside = (p: Point) =>
    rings.every((ring, i) => contains(ring, p) === (i === 0 ? 'inside' : 'outside'));
  for (const [i, side] of sides.entries()) {
    for (const [j, other] of sides.entries()) {
      if (i === j || areNeighbours(side, other)) continue;
      const facing = j > i ? facingNarrowly(side, other, limit) : null;
      if (facing !== null && isInside(facing.at)) found.push(facing);
      const near = nearCorner(side, other, limit);
      if (near !== null && isInside(near.at)) found.push(near);
    }
  }
  return found
    .filter(({ width }) => limit - width > SAME_COORDINATE)
    .reduce<Narrow | null>(
      (least, place) => (least === null || place.width < least.width ? place : least),
      null,
    );
}

/** A side of a patch, the corner before the one that it comes from, and whether that corner points into the patch. */
interface Side extends Segment {
  readonly before: Point;
  readonly pointsIn: boolean;
}

const sidesOf = (ring: Polygon): Side[] =>
  edgesOf(ring).map(({ a, b }, i) => {
    const before = ring.at(i - 1)!;
    return { a, b, before, pointsIn: cross(subtract(a, before), subtract(b, a)) < 0 };
  });

const areNeighbours = (side: Segment, other: Segment): boolean =>
  other.a === side.a || other.a === side.b || other.b === side.a || other.b === side.b;

/** Where two sides face each other at less than the limit for at least as far along. */
function facingNarrowly(side: Segment, other: Segment, limit: number): Narrow | null {
  const length = distance(side.a, side.b);
  const u = subtract(side.b, side.a);
  const across = (p: Point) => cross(u, subtract(p, side.a)) / length;
  // The inside lies on the right as one walks along a side, where `across` is more than 0; the facing side comes back.
  const [widthStart, widthEnd] = [across(other.b), across(other.a)];
  // Asked of all sides of all patches, and mostly so: no need to know where they face each other.
  if (Math.min(widthStart, widthEnd) >= limit || Math.max(widthStart, widthEnd) <= 0) return null;
  const along = (p: Point) => dot(subtract(p, side.a), u) / length;
  const [start, end] = [along(other.b), along(other.a)];
  if (end <= start) return null;
  const widthAt = (s: number) => widthStart + ((widthEnd - widthStart) * (s - start)) / (end - start);
  const low = Math.max(0, start);
  const high = Math.min(length, end);
  const [widthLow, widthHigh] = [widthAt(low), widthAt(high)];
  if (low >= high || widthLow <= 0 || widthHigh <= 0) return null;
  // The stretch in which the width, which changes evenly, is less than the limit.
  const reached = (limit - widthLow) / (widthHigh - widthLow);
  const from = widthLow < limit ? 0 : widthHigh < limit ? reached : 1;
  const to = widthHigh < limit ? 1 : widthLow < limit ? reached : 0;
  if ((to - from) * (high - low) < limit) return null;
  const s = widthLow <= widthHigh ? low : high;
  const middle = low + ((from + to) / 2) * (high - low);
  const foot = pointAt(side.a, side.b, middle / length);
  const facingPoint = pointAt(other.b, other.a, (middle - start) / (end - start));
  return { width: widthAt(s), at: midpoint(foot, facingPoint) };
}

/** Where a corner that points into the patch comes nearer than the limit to a side that does not end there. */
function nearCorner(side: Segment, { a: corner, before, pointsIn }: Side, limit: number): Narrow | null {
  if (!pointsIn || before === side.a || before === side.b) return null;
  const foot = nearestOnSegment(corner, side.a, side.b);
  const width = distance(corner, foot);
  return width < limit ? { width, at: midpoint(corner, foot) } : null;
}
