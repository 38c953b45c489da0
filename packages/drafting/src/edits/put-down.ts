import { type Drawing, type LineId, MOST_FACTS, type PointId } from '@seamwright/arrangement';
import { distanceToSegment, SNAP_DISTANCE } from '@seamwright/geometry';
import { withOn } from '../facts.ts';
import type { FreshIds } from '../ids.ts';
import { drawnLines } from '../lines.ts';
import { pointIn } from '../place-at.ts';
import type { Placement } from '../placement.ts';

/** Of the lines that a placement names, those that are there and do run through it. */
function linesOfPlacement(drawing: Drawing, { at, on }: Placement): readonly LineId[] {
  const lines = drawnLines(drawing);
  const sound = (on ?? []).filter((id) => {
    const line = lines.get(id);
    return line !== undefined && distanceToSegment(at, line.from, line.to) <= SNAP_DISTANCE;
  });
  return [...new Set(sound)].slice(0, MOST_FACTS);
}

/** Finds or makes the point of a placement: the one it caught, else the one in the very place, else a new one. */
export function putDown(
  drawing: Drawing,
  placement: Placement,
  ids: FreshIds,
): { readonly drawing: Drawing; readonly id: PointId } {
  const caught = placement.point === undefined ? undefined : drawing.points[placement.point];
  const there = caught ?? pointIn(drawing, placement.at);
  if (there !== undefined) return { drawing, id: there.id };
  const { x, y } = placement.at;
  const id = ids.point();
  const point = withOn({ id, x, y }, linesOfPlacement(drawing, placement));
  return { drawing: { ...drawing, points: { ...drawing.points, [id]: point } }, id };
}
