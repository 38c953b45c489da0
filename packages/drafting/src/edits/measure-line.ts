import type { Drawing, LineId, PointId } from '@seamwright/arrangement';
import { fail, type Point, type Result, SNAP_DISTANCE } from '@seamwright/geometry';
import { placeByMeasure } from '../angles.ts';
import { holdersAt } from '../facts-by-place.ts';
import { lineOf } from './line-of.ts';
import { loosened } from './loosen.ts';
import { movePoint } from './move-point.ts';

/** One end of a line, to where it is put, and the other, which stays. */
export interface MeasuredEnd {
  readonly moving: PointId;
  readonly staying: PointId;
  /** Inches on the block. */
  readonly at: Point;
}

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
): Result<MeasuredEnd> {
  const found = lineOf(drawing, line);
  if (!found.ok) return found;
  if (!Number.isFinite(angle)) return fail('The angle is not a number', '', 'Give degrees, such as 45');
  if (!(length > SNAP_DISTANCE))
    return fail('The length is too short for a line', '', 'Give a length such as 2 3/8');
  const { from, to } = found.value;
  const [moving, staying] = end === 'to' ? [to, from] : [from, to];
  const at = placeByMeasure(staying, length, angle);
  return { ok: true, value: { moving: moving.id, staying: staying.id, at } };
}

/**
 * Gives a line a length and an angle by moving one of its ends, with all lines that meet there; a split leaves a corner
 * of the outline, and the outline keeps its shape. See {@link measuredEnd}.
 *
 * Refused: what {@link measuredEnd} and {@link movePoint} refuse.
 */
export function measureLine(
  drawing: Drawing,
  line: LineId,
  end: 'from' | 'to',
  length: number,
  angle: number,
): Result<Drawing> {
  const measured = measuredEnd(drawing, line, end, length, angle);
  if (!measured.ok) return measured;
  const { moving, staying, at } = measured.value;
  const { drawing: loose, endOf } = loosened(drawing, new Set([line]), new Set([staying]));
  const own = endOf(line, moving);
  return movePoint(loose, own, { at, on: holdersAt(loose, at, own) });
}
