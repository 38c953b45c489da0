import type { Drawing, LineId } from '@seamwright/arrangement';
import {
  distance,
  fail,
  normalize,
  ok,
  type Point,
  parameterOn,
  type Result,
  subtract,
} from '@seamwright/geometry';
import { withFactsByPlace } from '../facts-by-place.ts';
import { type DrawnLine, linesThrough } from '../lines.ts';
import { nearest } from '../nearest.ts';
import { placedAt } from '../place-at.ts';
import type { Placement } from '../placement.ts';
import { type RunTo, runFrom } from '../reach.ts';
import { splitOf } from './line-of.ts';
import { type Meeting, meetingsOn } from './meetings.ts';
import { onPoint, type Piece, redrawSplit } from './redraw-split.ts';

/** The place of a meeting as an end for a piece of the split: on the lines that meet it there, not on itself. */
function endAt(drawing: Drawing, split: DrawnLine, { at }: Meeting): Placement {
  const placed = placedAt(drawing, at);
  const on = placed.on?.filter((line) => line !== split.id) ?? [];
  return on.length === 0
    ? { at: placed.at, ...(placed.point !== undefined && { point: placed.point }) }
    : { at, on };
}

/**
 * Takes away the stretch of a split that is nearest to `near`, from one line that meets it to the next: at an end the
 * split becomes shorter, in the middle it becomes two.
 *
 * Refused: a split that no other line meets.
 */
export function trimSplit(drawing: Drawing, id: LineId, near: Point): Result<Drawing> {
  const split = splitOf(drawing, id);
  if (!split.ok) return split;
  const { from, to } = split.value;
  const meetings = meetingsOn(drawing, split.value);
  if (meetings.length === 0)
    return fail('No other line meets this one between its ends', '', 'Delete the whole line instead');
  const share = parameterOn(from, to, near);
  const before = meetings.filter((meeting) => meeting.share <= share).at(-1);
  const after = meetings.find((meeting) => meeting.share > share);
  const pieces: Piece[] = [];
  if (before !== undefined) pieces.push([onPoint(from), endAt(drawing, split.value, before)]);
  if (after !== undefined) pieces.push([endAt(drawing, split.value, after), onPoint(to)]);
  return redrawSplit(drawing, id, pieces);
}

/**
 * Makes two splits of one, where the line that meets it nearest to `near` does.
 *
 * Refused: a split that no other line meets.
 */
export function cutSplit(drawing: Drawing, id: LineId, near: Point): Result<Drawing> {
  const split = splitOf(drawing, id);
  if (!split.ok) return split;
  const { from, to } = split.value;
  const meeting = nearest(meetingsOn(drawing, split.value), Infinity, ({ at }) => distance(at, near));
  if (meeting === undefined)
    return fail('No other line meets this one between its ends', '', 'Draw a line across it first');
  const middle = endAt(drawing, split.value, meeting);
  return redrawSplit(drawing, id, [
    [onPoint(from), middle],
    [middle, onPoint(to)],
  ]);
}

/**
 * Lets one end of a split run straight on, to the next line or to the edge. Other lines that end where it ended stay,
 * on it.
 *
 * Refused: an end that is on the edge of the block already.
 */
export function extendSplit(
  drawing: Drawing,
  id: LineId,
  end: 'from' | 'to',
  to: RunTo = 'line',
): Result<Drawing> {
  const split = splitOf(drawing, id);
  if (!split.ok) return split;
  const [moving, other] =
    end === 'to' ? [split.value.to, split.value.from] : [split.value.from, split.value.to];
  const direction = normalize(subtract(moving, other));
  const reached = runFrom(drawing, moving, direction, to, linesThrough(drawing, moving.id));
  if (reached === null)
    return fail('Beyond this end there is no line to run to', '', 'Choose its other end, or another line');
  const extended = redrawSplit(drawing, id, [
    end === 'to' ? [onPoint(other), reached] : [reached, onPoint(other)],
  ]);
  return extended.ok ? ok(withFactsByPlace(extended.value, new Set([moving.id]))) : extended;
}
