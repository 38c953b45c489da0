import type { Drawing } from '@seamwright/arrangement';
import {
  checkSimple,
  distance,
  FARTHEST_POINT,
  fail,
  ok,
  type Point,
  type Result,
  SNAP_DISTANCE,
} from '@seamwright/geometry';
import { type DrawnLine, drawnLines } from './lines.ts';
import { checkSizes, sizeOf } from './size.ts';

/** The corners of the drawing's outline, in order. */
export const outlineOf = (drawing: Drawing) => drawing.outline.map((id) => drawing.points[id]!);

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

/** The outline is simple, and of a size that blocks have. */
export function checkOutline(drawing: Drawing): Result<unknown> {
  const corners = outlineOf(drawing);
  return passes(
    drawing,
    () => checkSimple(corners),
    () => checkSizes(sizeOf(corners)),
  );
}

/**
 * An edit leaves every line longer than what counts as one point ({@link SNAP_DISTANCE}). Only lines that the edit
 * made shorter are looked at: drawings from files may hold such lines, and must be open to every other edit.
 */
export const checkLengths =
  (before?: Drawing) =>
  (after: Drawing): Result<unknown> => {
    const linesBefore = before === undefined ? undefined : drawnLines(before);
    for (const line of drawnLines(after).values()) {
      if (lengthOf(line) > SNAP_DISTANCE) continue;
      const past = linesBefore?.get(line.id);
      if (past !== undefined && lengthOf(past) <= lengthOf(line)) continue;
      return line.kind === 'edge'
        ? fail('Two corners of the outline would lie on one spot', '', 'Put them farther apart')
        : fail('A line would have no length', '', 'Put its ends farther apart');
    }
    return ok(after);
  };

/** No point is farther out than what is written and read again. */
export function checkReach(drawing: Drawing): Result<unknown> {
  const isOut = ({ x, y }: Point) => Math.max(Math.abs(x), Math.abs(y)) > FARTHEST_POINT;
  return Object.values(drawing.points).some(isOut)
    ? fail(
        `A line would run farther out than ${FARTHEST_POINT} in`,
        '',
        'Shorten the lines that run past the edge of the block, or give a smaller size',
      )
    : ok(drawing);
}

const lengthOf = ({ from, to }: DrawnLine): number => distance(from, to);
