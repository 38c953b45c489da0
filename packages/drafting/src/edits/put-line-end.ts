import type { Drawing, LineId } from '@seamwright/arrangement';
import { fail, ok, type Point, type Result, SNAP_DISTANCE } from '@seamwright/geometry';
import { placeByMeasure } from '../angles.ts';
import { holdersAt } from '../facts-by-place.ts';
import { lineOf } from './line-of.ts';
import { loosened } from './loosen.ts';
import { movePoint } from './move-point.ts';

/**
 * Where an end of a line goes when the line is to be so long (inches) and at such an angle (degrees, see angles.ts; as
 * seen from the end that stays).
 *
 * Refused: a line that is not there; a length that is no length of a line; an angle that is no number.
 */
export function measuredEnd(
  drawing: Drawing,
  line: LineId,
  end: 'from' | 'to',
  length: number,
  angle: number,
): Result<Point> {
  const found = lineOf(drawing, line);
  if (!found.ok) return found;
  if (!Number.isFinite(angle)) return fail('The angle is not a number', '', 'Give degrees, such as 45');
  if (!(length > SNAP_DISTANCE))
    return fail('The length is too short for a line', '', 'Give a length such as 2 3/8');
  return ok(placeByMeasure(found.value[end === 'to' ? 'from' : 'to'], length, angle));
}

/**
 * Puts an end of a line in a place, with all lines that meet there; a split leaves a corner of the outline, and the
 * outline keeps its shape.
 *
 * Refused: a line that is not there; what {@link movePoint} refuses.
 */
export function putLineEnd(drawing: Drawing, line: LineId, end: 'from' | 'to', at: Point): Result<Drawing> {
  const found = lineOf(drawing, line);
  if (!found.ok) return found;
  const { from, to } = found.value;
  const [moving, staying] = end === 'to' ? [to, from] : [from, to];
  const { drawing: loose, endOf } = loosened(drawing, new Set([line]), new Set([staying.id]));
  const own = endOf(line, moving.id);
  return movePoint(loose, own, { at, on: holdersAt(loose, at, own) });
}
