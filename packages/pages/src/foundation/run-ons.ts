import {
  add,
  boundingBox,
  cross,
  distance,
  dot,
  edgesOf,
  normalize,
  type Point,
  type Polygon,
  SAME_COORDINATE,
  scale,
  segmentCrossing,
  subtract,
} from '@seamwright/geometry';
import type { SewLine } from '@seamwright/sewing';
import type { RingVertex } from './ring.ts';

/** A section's two outlines, in one space. */
export interface Bounds {
  readonly outline: Polygon;
  readonly cuttingLine: Polygon;
  readonly allowance: number;
}

/** Where a sew line runs on through the allowance: from a point of the outline, in its own direction. */
export interface RunStart {
  readonly end: Point;
  /** A unit vector. */
  readonly onward: Point;
}

/**
 * Where sew lines that reach the section's outline are carried on through the allowance, at their own angle, to the cutting line.
 *
 * A line that ends at a corner of the outline and would carry on inside the section, or along the outline, has no
 * run there: its way does not lie in the allowance. Where a notch is so narrow that the allowances of its two
 * sides overlap, the run ends at the far side of the notch.
 *
 * @param ring in the space of the sew lines
 */
export const runStarts = (sewLines: readonly SewLine[], ring: readonly RingVertex[]): readonly RunStart[] =>
  sewLines.flatMap(({ a, b, line }) => {
    const ends = [
      { end: a, onward: normalize(subtract(a, b)) },
      { end: b, onward: normalize(subtract(b, a)) },
    ];
    return ends.filter(({ end, onward }) => {
      const corner = ring.find(({ at }) => distance(at, end) <= SAME_COORDINATE);
      return corner !== undefined && leavesSection(corner, line, onward);
    });
  });

/** Whether someone who walks on from the vertex, on `line`, steps into the allowance. */
function leavesSection(corner: RingVertex, line: number, onward: Point): boolean {
  const arriving = subtract(corner.before.to, corner.before.from);
  const leaving = subtract(corner.after.to, corner.after.from);
  // Along the outline: known from the lines, not from the angle.
  if (corner.before.line === line && dot(arriving, onward) < 0) return false;
  if (corner.after.line === line && dot(leaving, onward) > 0) return false;
  // The ring runs clockwise on the screen: inside lies to the right of each edge.
  const rightOfArriving = cross(arriving, onward) > 0;
  const rightOfLeaving = cross(leaving, onward) > 0;
  const notch = corner.before.line !== corner.after.line && cross(arriving, leaving) < 0;
  return notch ? !rightOfArriving && !rightOfLeaving : !(rightOfArriving && rightOfLeaving);
}

/** From a point of the outline straight on to where the allowance ends. */
export function throughAllowance(
  from: Point,
  onward: Point,
  { outline, cuttingLine, allowance }: Bounds,
): Point {
  const { minX, minY, maxX, maxY } = boundingBox(cuttingLine);
  const far = add(from, scale(onward, Math.hypot(maxX - minX, maxY - minY)));
  const stops: Point[] = [];
  for (const { a, b } of edgesOf(cuttingLine)) {
    const crossing = segmentCrossing(from, far, a, b);
    if (crossing) stops.push(crossing.at);
  }
  for (const { a, b } of edgesOf(outline)) {
    const crossing = segmentCrossing(from, far, a, b);
    // The edges that the walk starts from are no stop.
    if (crossing && distance(from, crossing.at) > SAME_COORDINATE) stops.push(crossing.at);
  }
  stops.sort((p, q) => distance(from, p) - distance(from, q));
  return stops[0] ?? add(from, scale(onward, allowance));
}
