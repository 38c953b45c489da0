import type { Drawing } from '@seamwright/arrangement';
import { distance, type Point, SAME_COORDINATE } from '@seamwright/geometry';
import { holdersAt } from './facts-by-place.ts';
import type { Placement } from './placement.ts';

/**
 * A computed place with what is known of it: the drawing's point in the very place ({@link SAME_COORDINATE}), else the
 * lines that run through it. Unlike a snap, it is never moved to something near.
 */
export function placedAt(drawing: Drawing, at: Point): Placement {
  const there = Object.values(drawing.points).find((point) => distance(point, at) <= SAME_COORDINATE);
  if (there !== undefined) return { at: { x: there.x, y: there.y }, point: there.id };
  const on = holdersAt(drawing, at);
  return on.length === 0 ? { at } : { at, on };
}
