import {
  add,
  boundingBox,
  commonParts,
  distance,
  dot,
  edgesOf,
  type Point,
  type Polygon,
  type Segment,
  scale,
  subtract,
} from '@seamwright/geometry';

/**
 * The parts of the region outside a convex piece, clockwise, none with a hole: outside of its first side; outside of the
 * second and inside of the first; and so on.
 */
export function partsOutside(needed: Polygon, piece: Polygon): readonly Polygon[] {
  const { minX, minY, maxX, maxY } = boundingBox(needed);
  // All of the plane that matters, and no edge of it near the region.
  const room = 1 + maxX - minX + maxY - minY;
  let inside: Polygon = [
    { x: minX - room, y: minY - room },
    { x: maxX + room, y: minY - room },
    { x: maxX + room, y: maxY + room },
    { x: minX - room, y: maxY + room },
  ];
  return edgesOf(piece).flatMap((side) => {
    const normal = outward(side);
    const outside = clipConvex(inside, side.a, scale(normal, -1));
    inside = clipConvex(inside, side.a, normal);
    return outside.length < 3 ? [] : commonParts(needed, outside);
  });
}

/** Of length 1, out of a clockwise polygon. */
export function outward({ a, b }: Segment): Point {
  const size = distance(a, b);
  return { x: (b.y - a.y) / size, y: (a.x - b.x) / size };
}

/**
 * What of a convex polygon lies behind the line through a point with the given normal. One step of I. E. Sutherland,
 * G. W. Hodgman, Reentrant polygon clipping, Communications of the ACM 17(1), 1974.
 */
const clipConvex = (polygon: Polygon, through: Point, normal: Point): Polygon =>
  edgesOf(polygon).flatMap(({ a, b }) => {
    const [from, to] = [a, b].map((p) => dot(subtract(p, through), normal)) as [number, number];
    const kept = from <= 0 ? [a] : [];
    const crosses = from < 0 !== to < 0 && from !== 0 && to !== 0;
    return crosses ? [...kept, add(a, scale(subtract(b, a), from / (from - to)))] : kept;
  });
