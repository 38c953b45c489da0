import type { Drawing, LineId } from '@seamwright/arrangement';
import {
  distanceToSegment,
  fail,
  nearestOnSegment,
  ok,
  parameterOn,
  type Result,
  SAME_COORDINATE,
  SNAP_DISTANCE,
} from '@seamwright/geometry';
import { angleFrom, placeByMeasure, toward } from '../angles.ts';
import { withFactsByPlace } from '../facts-by-place.ts';
import { placedAt } from '../place-at.ts';
import type { Placement } from '../placement.ts';
import { type RunTo, runFrom } from '../reach.ts';
import { addSplit, type Ends } from './add-split.ts';
import { checkPlace } from './check-place.ts';
import { lineOf } from './line-of.ts';

const badAngle = () => fail('The angle is not a number', '', 'Give degrees, such as 45');

/**
 * Draws a split through a place at an angle (degrees, see angles.ts), both ways as far as `to` says; from a place on the
 * edge, the one way that leads into the block. A point that is there is on the split from then on. With `ways` 'ahead',
 * it begins at the place and runs only in the direction of the angle.
 *
 * Refused: a place from which no such way leads into the block.
 */
export function splitThrough(
  drawing: Drawing,
  through: Placement,
  angle: number,
  to: RunTo = 'line',
  ways: 'both' | 'ahead' = 'both',
): Result<Drawing> {
  const place = checkPlace(through.at);
  if (!place.ok) return place;
  if (!Number.isFinite(angle)) return badAngle();
  const ahead = runFrom(drawing, through.at, toward(angle), to);
  const back = ways === 'ahead' ? null : runFrom(drawing, through.at, toward(angle + 180), to);
  const [from, end] = [back ?? through, ahead ?? through];
  if (ahead === null && back === null)
    return fail('At this angle no line leads into the block', '', 'Give another angle or another place');
  const result = addSplit(drawing, from, end);
  if (!result.ok || through.point === undefined) return result;
  return ok(withFactsByPlace(result.value, new Set([through.point])));
}

/**
 * Draws a split of a given length (inches) at an angle (degrees, see angles.ts).
 *
 * Refused: what {@link addSplit} refuses; a length that is no length.
 */
export function splitByMeasure(
  drawing: Drawing,
  start: Placement,
  length: number,
  angle: number,
  ends: Ends = 'held',
): Result<Drawing> {
  if (!Number.isFinite(angle)) return badAngle();
  if (!(length > SNAP_DISTANCE))
    return fail('The length is too short for a line', '', 'Give a length such as 2 3/8');
  return addSplit(drawing, start, placedAt(drawing, placeByMeasure(start.at, length, angle)), ends);
}

/**
 * Draws a split from a place square to a line, to where it meets that line; from a place on the line itself, square to
 * it to the next line or the edge.
 *
 * Refused: a place from which the way square to the line misses it.
 */
export function splitSquareTo(drawing: Drawing, start: Placement, line: LineId): Result<Drawing> {
  const place = checkPlace(start.at);
  if (!place.ok) return place;
  const drawn = lineOf(drawing, line);
  if (!drawn.ok) return drawn;
  const { from, to } = drawn.value;
  if (distanceToSegment(start.at, from, to) <= SNAP_DISTANCE)
    return splitThrough(drawing, start, angleFrom(from, to) + 90);
  const share = parameterOn(from, to, start.at);
  if (share < -SAME_COORDINATE || share > 1 + SAME_COORDINATE)
    return fail(
      'Square to this line, the new one would pass beyond its end',
      '',
      'Extend the line first, or begin opposite to it',
    );
  return addSplit(drawing, start, placedAt(drawing, nearestOnSegment(start.at, from, to)));
}
