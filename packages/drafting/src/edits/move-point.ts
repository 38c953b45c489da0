import type { Drawing, DrawingPoint, LineId, PointId, Split } from '@seamwright/arrangement';
import { fail, ok, type Result } from '@seamwright/geometry';
import { checkLengths, checkOutline, passes } from '../checks.ts';
import { followersOf, keepSoundFacts, withOn } from '../facts.ts';
import type { Placement } from '../placement.ts';
import { settle } from '../settle.ts';
import { checkPlace } from './check-place.ts';
import { linesOfPlacement, pointIn } from './put-down.ts';

/**
 * Moves a point, and with it all lines that meet there; points on those lines follow ({@link settle}).
 *
 * The point takes over the facts of its target: on the lines that were caught, or on none. A line that itself
 * follows the point cannot hold it (it would hang on itself): that fact is dropped, the place is kept. Put on
 * another point, the two become one; lines that thereby join the same two points become one line. A corner of the
 * outline keeps its name, and has no facts: edges hang on it.
 *
 * Refused: a line without length, two corners on one spot, an outline that crosses itself or grows too large.
 */
export function movePoint(drawing: Drawing, id: PointId, target: Placement): Result<Drawing> {
  const point = drawing.points[id];
  if (point === undefined)
    return fail('That point is not in the drawing', `point ${id}`, 'Choose another point');
  const place = checkPlace(target.at);
  if (!place.ok) return place;

  const caught =
    target.point === undefined
      ? pointIn(drawing, target.at, followersOf(drawing, id).points)
      : drawing.points[target.point];
  const next =
    caught === undefined || caught.id === id
      ? ok({ drawing: relocated(drawing, point, target), survivor: id })
      : unite(drawing, point, caught);
  if (!next.ok) return next;

  const { survivor } = next.value;
  const sound = keepSoundFacts(next.value.drawing, survivor);
  const settled = settle(drawing, sound, new Set([survivor]));
  return passes(
    settled,
    checkLengths(drawing),
    ...(drawing.outline.some(isMoved(drawing, settled)) ? [checkOutline] : []),
  );
}

const isMoved = (before: Drawing, after: Drawing) => (id: PointId) => before.points[id] !== after.points[id];

function relocated(drawing: Drawing, point: DrawingPoint, target: Placement): Drawing {
  const { x, y } = target.at;
  const moved = withOn({ ...point, x, y }, linesOfPlacement(drawing, target));
  return { ...drawing, points: { ...drawing.points, [point.id]: moved } };
}

/** Makes one point of two, at the place of `target`. A corner survives, else the target does. */
function unite(
  drawing: Drawing,
  point: DrawingPoint,
  target: DrawingPoint,
): Result<{ readonly drawing: Drawing; readonly survivor: PointId }> {
  const isCorner = drawing.outline.includes(point.id);
  if (isCorner && drawing.outline.includes(target.id))
    return fail('Two corners of the outline would lie on one spot', '', 'Remove one of the corners instead');
  const [survivor, gone] = isCorner ? [point.id, target.id] : [target.id, point.id];

  const splits: Split[] = [];
  const renamed = new Map<LineId, LineId>();
  for (const split of drawing.splits) {
    const from = split.from === gone ? survivor : split.from;
    const to = split.to === gone ? survivor : split.to;
    if (from === to)
      return fail('A line would have no length', '', 'Put its ends farther apart, or delete the line');
    const twin = splits.find((s) => (s.from === from && s.to === to) || (s.from === to && s.to === from));
    if (twin === undefined) splits.push({ ...split, from, to });
    else renamed.set(split.id, twin.id);
  }

  const points: Record<PointId, DrawingPoint> = {};
  for (const other of Object.values(drawing.points)) {
    if (other.id === gone) continue;
    const on = other.on?.map((line) => renamed.get(line) ?? line) ?? [];
    points[other.id] = withOn(other, on);
  }
  const { x, y } = target;
  points[survivor] = withOn({ id: survivor, x, y }, isCorner ? [] : (points[survivor]!.on ?? []));
  return ok({ drawing: { ...drawing, points, splits }, survivor });
}
