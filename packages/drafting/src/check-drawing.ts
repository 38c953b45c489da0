import type { Drawing } from '@seamwright/arrangement';
import {
  checkSimple,
  distance,
  distanceToLine,
  fail,
  ok,
  type Result,
  SNAP_DISTANCE,
} from '@seamwright/geometry';
import { keepSoundFacts } from './facts.ts';
import { drawnLines } from './lines.ts';
import { checkSizes, sizeOf } from './size.ts';

/** The corners of the drawing's outline, in order. */
export const outlineOf = (drawing: Drawing) => drawing.outline.map((id) => drawing.points[id]!);

/**
 * The drawing itself when its outline is a simple polygon of a size that is sewn, every line has length, and
 * names and facts hold together; otherwise what is wrong. What the lines make of the block (loose ends, lines
 * outside) is not asked here: the arrangement tells that in findings.
 *
 * Every edit of this package keeps a drawing that passes passing.
 */
export function checkDrawing(drawing: Drawing): Result<Drawing> {
  return passes(drawing, checkNames, checkOutline, checkLengths, checkFacts);
}

/** The drawing when it passes all the checks, else what the first one says against it. */
export function passes(
  drawing: Drawing,
  ...checks: readonly ((drawing: Drawing) => Result<unknown>)[]
): Result<Drawing> {
  for (const check of checks) {
    const result = check(drawing);
    if (!result.ok) return result;
  }
  return ok(drawing);
}

const again = 'Undo the last change, or draw this part again';

function checkNames({ points, outline, splits }: Drawing): Result<unknown> {
  const used = new Set(outline);
  if (used.size !== outline.length) return fail('The outline passes one of its corners twice', '', again);
  const ids = new Set<string>();
  for (const split of splits) {
    if (ids.has(split.id)) return fail('Two lines have the same name', split.id, again);
    ids.add(split.id);
    used.add(split.from).add(split.to);
  }
  for (const id of used) {
    if (points[id] === undefined)
      return fail('A line runs to a point that is not there', `point ${id}`, again);
  }
  for (const [id, point] of Object.entries(points)) {
    if (point.id !== id) return fail('A point is filed under another name', `point ${id}`, again);
    if (!used.has(id)) return fail('A point belongs to no line', `point ${id}`, again);
    if (!Number.isFinite(point.x) || !Number.isFinite(point.y))
      return fail('A coordinate is not a number', `point ${id}`, 'Give this point a place again');
  }
  return ok(undefined);
}

/** The outline alone: simple, and no larger than blocks are. */
export function checkOutline(drawing: Drawing): Result<Drawing> {
  const corners = outlineOf(drawing);
  return passes(
    drawing,
    () => checkSimple(corners),
    () => checkSizes(sizeOf(corners)),
  );
}

/**
 * Every line is longer than what counts as one point ({@link SNAP_DISTANCE}), and no two splits join the same
 * two points.
 */
export function checkLengths(drawing: Drawing): Result<Drawing> {
  const pairs = new Set<string>();
  for (const { id, kind, from, to } of drawnLines(drawing).values()) {
    if (distance(from, to) <= SNAP_DISTANCE)
      return kind === 'edge'
        ? fail(
            'Two corners of the outline would lie on one spot',
            '',
            'Put the corner farther away from the next',
          )
        : fail('A line would have no length', '', 'Put its ends farther apart');
    if (kind === 'edge') continue;
    const pair = from.id < to.id ? `${from.id} ${to.id}` : `${to.id} ${from.id}`;
    if (pairs.has(pair)) return fail('Two lines join the same two points', id, again);
    pairs.add(pair);
  }
  return ok(drawing);
}

function checkFacts(drawing: Drawing): Result<unknown> {
  const sound = keepSoundFacts(drawing);
  const lines = drawnLines(drawing);
  for (const point of Object.values(drawing.points)) {
    if (point.on === undefined) continue;
    if (point.on.length === 0 || sound.points[point.id]!.on?.length !== point.on.length)
      return fail('A point is said to be on a line that it cannot be on', `point ${point.id}`, again);
    for (const id of point.on) {
      const { from, to } = lines.get(id)!;
      if (distanceToLine(point, from, to) > SNAP_DISTANCE)
        return fail('A point is said to be on a line that it is not on', `point ${point.id}`, again);
    }
  }
  return ok(undefined);
}
