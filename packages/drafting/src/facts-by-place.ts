import {
  type Drawing,
  type DrawingPoint,
  type LineId,
  MOST_FACTS,
  type PointId,
} from '@seamwright/arrangement';
import { cross, isOnSegment, normalize, type Point, SAME_COORDINATE, subtract } from '@seamwright/geometry';
import { keepSoundFacts, withOn } from './facts.ts';
import { type DrawnLine, drawnLines } from './lines.ts';

/** Whether two lines run in one direction, either way round. */
export function areParallel(
  one: { readonly from: Point; readonly to: Point },
  other: { readonly from: Point; readonly to: Point },
): boolean {
  const u = normalize(subtract(one.to, one.from));
  const v = normalize(subtract(other.to, other.from));
  return Math.abs(cross(u, v)) <= SAME_COORDINATE;
}

/**
 * Of the drawing's lines that run through a place ({@link SAME_COORDINATE}), those that can hold a point there: one to
 * slide on, or two that cross. Edges come first, then splits in the order in which they were drawn. Lines that end in
 * the point `besides` are left out.
 */
export function holdersAt(drawing: Drawing, at: Point, besides?: PointId): readonly LineId[] {
  const found: DrawnLine[] = [];
  for (const line of drawnLines(drawing).values()) {
    if (line.from.id === besides || line.to.id === besides) continue;
    if (!isOnSegment(at, line.from, line.to, SAME_COORDINATE)) continue;
    if (found.some((known) => areParallel(known, line))) continue;
    found.push(line);
    if (found.length === MOST_FACTS) break;
  }
  return found.map(({ id }) => id);
}

/**
 * The drawing with the facts that its coordinates tell: each point (of `points`, when given) is on the lines that run
 * through its place. Facts that were known already come first.
 */
export function withFactsByPlace(drawing: Drawing, points?: ReadonlySet<PointId>): Drawing {
  const corners = new Set(drawing.outline);
  const told: Record<PointId, DrawingPoint> = { ...drawing.points };
  for (const point of Object.values(drawing.points)) {
    if (corners.has(point.id) || (points !== undefined && !points.has(point.id))) continue;
    const known = point.on ?? [];
    if (known.length === MOST_FACTS) continue;
    const lines = drawnLines(drawing);
    const more = holdersAt(drawing, point, point.id).filter((id) =>
      known.every((held) => held !== id && !areParallel(lines.get(held)!, lines.get(id)!)),
    );
    told[point.id] = withOn(point, [...known, ...more].slice(0, MOST_FACTS));
  }
  return keepSoundFacts({ ...drawing, points: told });
}
