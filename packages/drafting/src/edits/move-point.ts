import type { Drawing, DrawingPoint, LineId, PointId, Split } from '@seamwright/arrangement';
import { distance, fail, ok, type Result, SAME_COORDINATE } from '@seamwright/geometry';
import { checkLengths, checkOutline, passes } from '../checks.ts';
import { followersOf, keepSoundFacts, keepTrueFacts, withOn } from '../facts.ts';
import { pointIn } from '../place-at.ts';
import type { Placement } from '../placement.ts';
import { settle } from '../settle.ts';
import { checkPlace } from './check-place.ts';

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
export const movePoint = (drawing: Drawing, id: PointId, target: Placement): Result<Drawing> =>
  movePoints(drawing, new Map([[id, target]]));

/** Moves several points at once, each as {@link movePoint} does; facts that no longer hold at their new places go. */
export function movePoints(drawing: Drawing, moves: ReadonlyMap<PointId, Placement>): Result<Drawing> {
  for (const [id, target] of moves) {
    if (drawing.points[id] === undefined)
      return fail('That point is not in the drawing', `point ${id}`, 'Choose another point');
    const place = checkPlace(target.at);
    if (!place.ok) return place;
  }
  const followers = followersOf(drawing, ...moves.keys());
  const taken = new Map<PointId, PointId>();
  const points: Record<PointId, DrawingPoint> = { ...drawing.points };
  for (const [id, target] of moves) {
    const caught =
      target.point === undefined
        ? pointIn(drawing, target.at, followers.points)
        : drawing.points[target.point];
    if (caught !== undefined && caught.id !== id && !moves.has(caught.id)) taken.set(id, caught.id);
    else points[id] = withOn({ ...points[id]!, x: target.at.x, y: target.at.y }, target.on ?? []);
  }

  let next: Drawing = { ...drawing, points };
  const moved = new Set<PointId>();
  const settleOn = (id: PointId, other: PointId): Result<Drawing> => {
    const result = unite(next, next.points[id]!, next.points[other]!);
    if (result.ok) moved.add(result.value.survivor);
    return result.ok ? ok(result.value.drawing) : result;
  };
  for (const [id] of moves) {
    // A point that was put on another, or on one that was moved before it.
    const other = taken.get(id) ?? [...moved].find((known) => isOneSpot(next, known, id));
    if (other === undefined || next.points[other] === undefined) {
      moved.add(id);
      continue;
    }
    const one = settleOn(id, other);
    if (!one.ok) return one;
    next = one.value;
  }
  for (const id of moved) if (next.points[id] === undefined) moved.delete(id);

  const settled = settle(drawing, keepSoundFacts(next, moved), moved);
  return passes(
    keepTrueFacts(settled, moved),
    checkLengths(drawing),
    ...(drawing.outline.some(isMoved(drawing, settled)) ? [checkOutline] : []),
  );
}

const isOneSpot = ({ points }: Drawing, one: PointId, other: PointId): boolean =>
  points[one] !== undefined && distance(points[one], points[other]!) <= SAME_COORDINATE;

const isMoved = (before: Drawing, after: Drawing) => (id: PointId) => before.points[id] !== after.points[id];

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
