import type { Drawing, PointId } from '@seamwright/arrangement';
import { fail, ok, type Result } from '@seamwright/geometry';
import { keepSoundFacts } from '../facts.ts';
import { withoutOrphans } from '../tidy.ts';
import { removeCorner } from './outline-corners.ts';

/**
 * Deletes a point and the splits that end in it; their other ends go where no other line needs them. A corner of
 * the outline is taken out of the outline instead, and its splits stay ({@link removeCorner}).
 */
export function deletePoint(drawing: Drawing, id: PointId): Result<Drawing> {
  if (drawing.points[id] === undefined)
    return fail('That point is not in the drawing', `point ${id}`, 'Choose another point');
  if (drawing.outline.includes(id)) return removeCorner(drawing, id);
  const splits = drawing.splits.filter((split) => split.from !== id && split.to !== id);
  return ok(keepSoundFacts(withoutOrphans({ ...drawing, splits })));
}
