import type { Drawing, LineId } from '@seamwright/arrangement';
import {
  add,
  contains,
  distanceToLine,
  distanceToSegment,
  dot,
  lineCrossing,
  midpoint,
  type Point,
  SAME_COORDINATE,
  subtract,
} from '@seamwright/geometry';
import { outlineOf } from './checks.ts';
import { drawnLines } from './lines.ts';
import { nearest } from './nearest.ts';
import { placedAt } from './place-at.ts';
import type { Placement } from './placement.ts';

/** How far a line runs: to the nearest line (or the edge), or through all lines to the edge of the block. */
export type RunTo = 'line' | 'edge';

/**
 * Where someone who walks from a place in a direction (a unit vector) first meets a line, with what is known of that
 * place; null when there is none, or when the way there leads outside the block. Lines through the place itself are
 * not met, lines that the way runs along are met at their nearer end.
 */
export function runFrom(
  drawing: Drawing,
  from: Point,
  direction: Point,
  to: RunTo = 'line',
  skip?: ReadonlySet<LineId>,
): Placement | null {
  const ahead = add(from, direction);
  const along = (p: Point): number => dot(subtract(p, from), direction);
  const met: Point[] = [];
  for (const line of drawnLines(drawing).values()) {
    if ((to === 'edge' && line.kind !== 'edge') || skip?.has(line.id)) continue;
    if ([line.from, line.to].every((end) => distanceToLine(end, from, ahead) <= SAME_COORDINATE)) {
      met.push(line.from, line.to);
      continue;
    }
    const crossing = lineCrossing(from, ahead, line.from, line.to);
    if (crossing !== null && distanceToSegment(crossing, line.from, line.to) <= SAME_COORDINATE)
      met.push(crossing);
  }
  const before = met.filter((p) => along(p) > SAME_COORDINATE);
  const at = nearest(before, Infinity, along);
  if (at === undefined || contains(outlineOf(drawing), midpoint(from, at)) !== 'inside') return null;
  return placedAt(drawing, { x: at.x, y: at.y });
}
