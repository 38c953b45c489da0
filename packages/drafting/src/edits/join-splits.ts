import type { Drawing, DrawingPoint, LineId, PointId } from '@seamwright/arrangement';
import {
  distance,
  distanceToLine,
  fail,
  nearestOnSegment,
  ok,
  type Point,
  parameterOn,
  type Result,
  SAME_COORDINATE,
  SNAP_DISTANCE,
  STRAIGHT_WITHIN,
} from '@seamwright/geometry';
import { withOn } from '../facts.ts';
import { type DrawnLine, drawnLines, linesEndingIn } from '../lines.ts';
import type { Placement } from '../placement.ts';
import { splitOf } from './line-of.ts';
import { movePoints } from './move-point.ts';
import { onPoint, redrawSplit } from './redraw-split.ts';

/**
 * Makes one split of two that lie on one straight line (within {@link STRAIGHT_WITHIN}) and touch or overlap. It keeps
 * the id of the first. Lines that ended where the two met end on it, moved onto it where the two were not quite straight.
 *
 * Refused: two that are not on one line, or do not reach each other.
 */
export function joinSplits(drawing: Drawing, one: LineId, other: LineId): Result<Drawing> {
  const first = splitOf(drawing, one);
  if (!first.ok) return first;
  const second = splitOf(drawing, other);
  if (!second.ok) return second;
  if (one === other) return fail('That is one line already', '', 'Choose a second line');
  const ends = endsTogether(first.value, second.value);
  if (!ends.ok) return ends;
  const [from, to] = ends.value;

  const joined = redrawSplit(takenTogether(drawing, one, other), one, [[onPoint(from), onPoint(to)]]);
  if (!joined.ok) return joined;
  const met = [first.value.from, first.value.to, second.value.from, second.value.to].map(({ id }) => id);
  const riders = Object.values(drawing.points)
    .filter(({ id, on }) => met.includes(id) || on?.some((line) => line === one || line === other))
    .map(({ id }) => id);
  return ontoLine(joined.value, one, riders);
}

/** The splits that {@link joinSplits} can make one with this one. */
export function joinableWith(drawing: Drawing, one: LineId): readonly LineId[] {
  const first = splitOf(drawing, one);
  if (!first.ok) return [];
  return drawing.splits
    .map(({ id }) => id)
    .filter((id) => id !== one && endsTogether(first.value, drawnLines(drawing).get(id)!).ok);
}

/** The ends of the line that two splits make together. */
function endsTogether(first: DrawnLine, second: DrawnLine): Result<readonly [DrawingPoint, DrawingPoint]> {
  const [from, to] = farEnds(first, second);
  const isOff = ({ from: a, to: b }: DrawnLine) =>
    Math.max(distanceToLine(a, from, to), distanceToLine(b, from, to)) > STRAIGHT_WITHIN;
  if (isOff(first) || isOff(second))
    return fail('The two lines are not on one straight line', '', 'Choose two that are');
  if (gapBetween(from, to, first, second) > SNAP_DISTANCE)
    return fail('The two lines do not reach each other', '', 'Extend one of them first');
  return ok([from, to]);
}

/** The two ends that are farthest apart, the first split's own first where that goes. */
function farEnds(one: DrawnLine, other: DrawnLine): readonly [DrawingPoint, DrawingPoint] {
  let best = [one.from, one.to] as const;
  for (const a of [one.from, one.to, other.from])
    for (const b of [one.to, other.from, other.to])
      if (distance(a, b) > distance(...best) + SAME_COORDINATE) best = [a, b];
  return best;
}

/** How far the two are apart along the line, inches; less than 0 where they overlap. */
function gapBetween(from: Point, to: Point, one: DrawnLine, other: DrawnLine): number {
  const reach = (line: DrawnLine) =>
    [line.from, line.to].map((end) => parameterOn(from, to, end)).sort((s, t) => s - t) as [number, number];
  const [first, second] = [reach(one), reach(other)];
  return (Math.max(first[0], second[0]) - Math.min(first[1], second[1])) * distance(from, to);
}

/** The drawing without the other split; points that were on it are on the first. */
function takenTogether(drawing: Drawing, one: LineId, other: LineId): Drawing {
  const points = Object.fromEntries(
    Object.values(drawing.points).map((point) => [
      point.id,
      point.on?.includes(other)
        ? withOn(point, [...new Set(point.on.map((line) => (line === other ? one : line)))])
        : point,
    ]),
  );
  return { ...drawing, points, splits: drawing.splits.filter(({ id }) => id !== other) };
}

/** Puts those of the points that are still there, but are no ends of the line, onto it. */
function ontoLine(drawing: Drawing, id: LineId, riders: readonly PointId[]): Result<Drawing> {
  const line = drawnLines(drawing).get(id);
  // The joined line may have been there already, under another name.
  if (line === undefined) return { ok: true, value: drawing };
  const { from, to } = line;
  const moves = new Map<PointId, Placement>();
  for (const rider of riders) {
    const point = drawing.points[rider];
    if (point === undefined || drawing.outline.includes(rider)) continue;
    if (linesEndingIn(drawing, rider).some((ended) => ended.id === id)) continue;
    const foot = nearestOnSegment(point, from, to);
    const off = distance(point, foot);
    if (off > SNAP_DISTANCE) continue;
    const on = [id, ...(point.on ?? []).filter((held) => held !== id)];
    moves.set(rider, { at: off <= SAME_COORDINATE ? { x: point.x, y: point.y } : foot, on });
  }
  return movePoints(drawing, moves);
}
