import type { Drawing, DrawingPoint, PointId } from '@seamwright/arrangement';
import { distance, type Point, SAME_COORDINATE } from '@seamwright/geometry';
import { holdersAt } from './facts-by-place.ts';
import type { Placement } from './placement.ts';

/** The drawing's point in this very place ({@link SAME_COORDINATE}), if there is one that `skip` does not name. */
export function pointIn(drawing: Drawing, at: Point, skip?: ReadonlySet<PointId>): DrawingPoint | undefined {
  return Object.values(drawing.points).find(
    (point) => !skip?.has(point.id) && distance(point, at) <= SAME_COORDINATE,
  );
}

/**
 * A computed place with what is known of it: the drawing's point in the very place ({@link pointIn}), else the
 * lines that run through it. Unlike a snap, it is never moved to something near.
 */
export function placedAt(drawing: Drawing, at: Point): Placement {
  const there = pointIn(drawing, at);
  if (there !== undefined) return { at: { x: there.x, y: there.y }, point: there.id };
  const on = holdersAt(drawing, at);
  return on.length === 0 ? { at } : { at, on };
}
