import {
  area,
  convexHull,
  distance,
  isClockwise,
  type Point,
  type Polygon,
  reversed,
  turn,
} from '@seamwright/geometry';

type Ring = Polygon<'page'>;

/** How much of a part may be hollow, so that two are seen as one: each part more costs the packing time. */
const HOLLOW = 0.08;

/**
 * Convex polygons that cover the outlines and little more, clockwise: an outline with hollows is cut along diagonals, and
 * parts whose common hull is hardly larger than both become one.
 *
 * @param outlines simple polygons either way round; also single stretches, as two points
 */
export function convexParts(outlines: readonly Ring[]): readonly Ring[] {
  const parts = outlines.flatMap((outline) => (outline.length < 3 ? [outline] : cutUp(clockwise(outline))));
  for (let i = 0; i < parts.length; i++)
    for (let j = i + 1; j < parts.length; j++) {
      const hull = convexHull([...parts[i]!, ...parts[j]!]);
      if (area(parts[i]!) + area(parts[j]!) < (1 - HOLLOW) * area(hull)) continue;
      parts.splice(j, 1);
      parts[i] = hull;
      // What is larger now may hold what it did not hold before.
      j = i;
    }
  return parts;
}

const clockwise = (ring: Ring): Ring => (isClockwise(ring) ? ring : reversed(ring));

/** From each hollow corner along a diagonal, until none is hollow. Every simple polygon has such diagonals. */
function cutUp(ring: Ring): readonly Ring[] {
  const at = ring.findIndex((_, i) => isHollow(ring, i));
  if (at < 0) return [ring];
  const from = [...ring.slice(at), ...ring.slice(0, at)];
  const [corner, ...others] = from as [Point<'page'>, ...Point<'page'>[]];
  const ends = others
    .map((end, i) => ({ i: i + 1, away: distance(corner, end), good: straightens(from, end) }))
    .slice(1, -1)
    .sort((p, q) => Number(q.good) - Number(p.good) || p.away - q.away);
  const end = ends.find(({ i }) => isDiagonal(from, i));
  if (end === undefined) return [convexHull(ring)];
  return [from.slice(0, end.i + 1), [...from.slice(end.i), corner]].flatMap(cutUp);
}

const isHollow = (ring: Ring, i: number): boolean =>
  turn(ring[(i + ring.length - 1) % ring.length]!, ring[i]!, ring[(i + 1) % ring.length]!) < 0;

/** Whether a diagonal from the first corner leaves no hollow there. */
const straightens = (ring: Ring, end: Point<'page'>): boolean =>
  turn(end, ring[0]!, ring[1]!) >= 0 && turn(ring.at(-1)!, ring[0]!, end) >= 0;

/** Whether the stretch from the first corner, a hollow one, to corner `i` lies inside and touches nothing on its way. */
function isDiagonal(ring: Ring, i: number): boolean {
  const [a, b] = [ring[0]!, ring[i]!];
  if (turn(ring.at(-1)!, a, b) <= 0 && turn(a, ring[1]!, b) <= 0) return false;
  return ring.every((c, k) => {
    const d = ring[(k + 1) % ring.length]!;
    if ([a, b].includes(c) || [a, b].includes(d)) return true;
    return turn(a, b, c) * turn(a, b, d) > 0 || turn(c, d, a) * turn(c, d, b) > 0;
  });
}
