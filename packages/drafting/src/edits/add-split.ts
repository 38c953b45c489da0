import type { Drawing } from '@seamwright/arrangement';
import { distance, fail, ok, type Result, SNAP_DISTANCE } from '@seamwright/geometry';
import { freshIds } from '../ids.ts';
import { linesThrough } from '../lines.ts';
import type { Placement } from '../placement.ts';
import { checkPlace } from './check-place.ts';
import { putDown } from './put-down.ts';

/**
 * Draws a split from one placement to the other. Points that were caught are shared, new ones remember the
 * lines they were put on. The new split is the last of `splits`.
 *
 * Refused: ends in one place; a split both of whose ends are on one line, which would divide nothing.
 */
export function addSplit(drawing: Drawing, start: Placement, end: Placement): Result<Drawing> {
  for (const { at } of [start, end]) {
    const place = checkPlace(at);
    if (!place.ok) return place;
  }
  const ids = freshIds(drawing);
  const from = putDown(drawing, start, ids);
  const to = putDown(from.drawing, end, ids);
  const { points, splits } = to.drawing;
  if (from.id === to.id || distance(points[from.id]!, points[to.id]!) <= SNAP_DISTANCE)
    return fail('Both ends of the line are in one place', '', 'Put the second end farther away');

  const through = linesThrough(to.drawing, to.id);
  if ([...linesThrough(to.drawing, from.id)].some((line) => through.has(line)))
    return fail(
      'Both ends are on the same line, so nothing would be divided',
      '',
      'Put one end on another line',
    );

  return ok({ ...to.drawing, splits: [...splits, { id: ids.split(), from: from.id, to: to.id }] });
}
