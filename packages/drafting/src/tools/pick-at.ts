import type { Drawing } from '@seamwright/arrangement';
import { distance, distanceToSegment, type Point } from '@seamwright/geometry';
import { drawnLines } from '../lines.ts';
import { nearest } from '../nearest.ts';
import type { Pick } from './tool.ts';

/**
 * The point or line of the drawing that a pointer chooses: the nearest point within reach, else the nearest line,
 * splits before edges.
 */
export function pickAt(drawing: Drawing, at: Point, reach: number): Pick | undefined {
  const point = nearest(Object.values(drawing.points), reach, (p) => distance(p, at));
  if (point !== undefined) return { kind: 'point', id: point.id };
  const lines = [...drawnLines(drawing).values()].reverse();
  const line = nearest(lines, reach, ({ from, to }) => distanceToSegment(at, from, to));
  return line === undefined ? undefined : { kind: 'line', id: line.id };
}
