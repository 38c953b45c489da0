import type { Point, Polygon, Space } from './point.ts';
import { turn } from './predicates.ts';

/** All triples of sides are tried, and their number grows with the third power: more corners than this take too long. */
const MOST_CORNERS = 8;

/** A side of a convex polygon as the half-plane inside of it: at depth `x·nx + y·ny − offset` from the side's line. */
interface Side {
  readonly nx: number;
  readonly ny: number;
  readonly offset: number;
}

/**
 * The centre of the largest circle inside a convex polygon of few corners, exact but for rounding; null when the
 * polygon is not convex, or has too many corners.
 *
 * Where several points are within `slack` of the greatest depth (along the middle of a strip), the centre of gravity is
 * preferred if it is one of them, otherwise it is a point amid the extreme ones.
 *
 * The largest circle touches three sides, so it is the deepest of the points that lie at one depth from three sides.
 * Depth is a concave function inside a convex polygon, so that a mean of points is as deep as the least deep of them.
 *
 * @param polygon clockwise on the screen
 * @param slack inches, 0 or more
 */
export function inscribedCircle<S extends Space = 'block'>(
  polygon: Polygon<S>,
  slack: number,
): { at: Point<S>; depth: number } | null {
  if (polygon.length > MOST_CORNERS || !isConvex(polygon)) return null;
  const sides = polygon.map((p, i): Side => {
    const q = polygon[(i + 1) % polygon.length]!;
    const size = Math.hypot(q.x - p.x, q.y - p.y);
    const [nx, ny] = [(p.y - q.y) / size, (q.x - p.x) / size];
    // From a corner's own coordinates, as everything below: a small shape far out would lose its digits.
    return { nx, ny, offset: (p.x - polygon[0]!.x) * nx + (p.y - polygon[0]!.y) * ny };
  });
  const candidates = equallyDeepInThree(sides);
  const depths = candidates.map((p) => depthIn(sides, p));
  const greatest = Math.max(...depths);
  const middle = centreOfGravity(polygon);
  const chosen =
    depthIn(sides, middle) >= greatest - slack
      ? middle
      : mean(candidates.filter((_, i) => depths[i]! >= greatest - slack));
  const depth = depthIn(sides, chosen);
  if (!(depth > 0)) return null;
  return { at: { x: polygon[0]!.x + chosen.x, y: polygon[0]!.y + chosen.y }, depth };
}

function isConvex<S extends Space>(polygon: Polygon<S>): boolean {
  const count = polygon.length;
  return polygon.every((p, i) => turn(p, polygon[(i + 1) % count]!, polygon[(i + 2) % count]!) >= 0);
}

interface Place {
  readonly x: number;
  readonly y: number;
}

/** For every three sides, the point that lies equally deep in all of them, where there is one. */
function equallyDeepInThree(sides: readonly Side[]): Place[] {
  const found: Place[] = [];
  for (const [i, f] of sides.entries()) {
    for (let j = i + 1; j < sides.length; j++) {
      const g = sides[j]!;
      for (let k = j + 1; k < sides.length; k++) {
        const h = sides[k]!;
        // Cramer's rule for x·nx + y·ny − depth = offset, after the third equation is taken off the other two.
        const [ax, ay, a] = [f.nx - h.nx, f.ny - h.ny, f.offset - h.offset];
        const [bx, by, b] = [g.nx - h.nx, g.ny - h.ny, g.offset - h.offset];
        const determinant = ax * by - ay * bx;
        const place = { x: (a * by - ay * b) / determinant, y: (ax * b - a * bx) / determinant };
        if (Number.isFinite(place.x) && Number.isFinite(place.y)) found.push(place);
      }
    }
  }
  return found;
}

function depthIn(sides: readonly Side[], { x, y }: Place): number {
  let depth = Infinity;
  for (const { nx, ny, offset } of sides) depth = Math.min(depth, x * nx + y * ny - offset);
  return depth;
}

/** The centre of gravity of a convex polygon, seen from its first corner. */
function centreOfGravity<S extends Space>(polygon: Polygon<S>): Place {
  const origin = polygon[0]!;
  let [x, y, area] = [0, 0, 0];
  for (let i = 1; i + 1 < polygon.length; i++) {
    const [ux, uy] = [polygon[i]!.x - origin.x, polygon[i]!.y - origin.y];
    const [vx, vy] = [polygon[i + 1]!.x - origin.x, polygon[i + 1]!.y - origin.y];
    const size = ux * vy - uy * vx;
    x += (size * (ux + vx)) / 3;
    y += (size * (uy + vy)) / 3;
    area += size;
  }
  return { x: x / area, y: y / area };
}

function mean(places: readonly Place[]): Place {
  let [x, y] = [0, 0];
  for (const place of places) {
    x += place.x / places.length;
    y += place.y / places.length;
  }
  return { x, y };
}
