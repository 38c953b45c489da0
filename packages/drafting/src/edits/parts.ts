import type { Drawing, LineId, PointId } from '@seamwright/arrangement';
import { fail, ok, type Result, type Transform, transformPoint } from '@seamwright/geometry';
import { keepSoundFacts } from '../facts.ts';
import { withFactsByPlace } from '../facts-by-place.ts';
import { drawnLines } from '../lines.ts';
import type { Placement } from '../placement.ts';
import { withoutOrphans } from '../tidy.ts';
import { addLines } from './add-lines.ts';
import { deletePoint } from './delete-point.ts';
import { loosened } from './loosen.ts';
import { movePoints } from './move-point.ts';

/** Points and lines of a drawing that something is done to together. What is not in the drawing any more is left out. */
export interface Parts {
  readonly points: readonly PointId[];
  /** Splits and edges. */
  readonly lines: readonly LineId[];
}

export const NOTHING = fail('Nothing is chosen', '', 'Choose points or lines first');

/**
 * Moves, turns or mirrors parts of a drawing (`translation`, `rotation`, {@link mirrorAcross}): their points go to
 * their images, lines stretch after them. Splits leave the corners of the outline, which keep their places unless they or
 * their edges are among the parts. Points that come to lie on others become one with them; on lines, they are on
 * those from then on.
 *
 * Refused: what {@link movePoints} refuses.
 */
export function transformParts(drawing: Drawing, parts: Parts, transform: Transform): Result<Drawing> {
  const drawn = drawnLines(drawing);
  const { drawing: loose, endOf } = loosened(drawing, new Set(parts.lines), new Set(parts.points));
  const moving = new Set(parts.points.filter((id) => drawing.points[id] !== undefined));
  for (const id of parts.lines) {
    const line = drawn.get(id);
    if (line !== undefined) moving.add(endOf(id, line.from.id)).add(endOf(id, line.to.id));
  }
  if (moving.size === 0) return NOTHING;
  const moves = new Map<PointId, Placement>();
  for (const id of moving) {
    const { x, y, on } = loose.points[id]!;
    moves.set(id, { at: transformPoint(transform, { x, y }), ...(on && { on }) });
  }
  const moved = movePoints(loose, moves);
  return moved.ok ? ok(withFactsByPlace(moved.value, new Set(moves.keys()))) : moved;
}

/**
 * Draws the images of lines and leaves the lines where they are. What lies outside the block is cut off, what is there
 * already is not drawn twice.
 *
 * Refused: images of which nothing is left to draw.
 */
export function copyLines(drawing: Drawing, lines: readonly LineId[], transform: Transform): Result<Drawing> {
  const drawn = drawnLines(drawing);
  const images = lines.flatMap((id) => {
    const line = drawn.get(id);
    if (line === undefined) return [];
    return [{ a: transformPoint(transform, line.from), b: transformPoint(transform, line.to) }];
  });
  return images.length === 0 ? NOTHING : addLines(drawing, images);
}

/**
 * Deletes points and splits. Corners of the outline are taken out of it, their splits stay, as in {@link deletePoint}.
 *
 * Refused: an edge by itself; fewer than three corners; an outline that would cross itself.
 */
export function deleteParts(drawing: Drawing, { points, lines }: Parts): Result<Drawing> {
  const drawn = drawnLines(drawing);
  const gone = new Set(lines.filter((id) => drawn.has(id)));
  const there = points.filter((id) => drawing.points[id] !== undefined);
  if (gone.size === 0 && there.length === 0) return NOTHING;
  const edge = [...gone].find((id) => drawn.get(id)!.kind === 'edge');
  if (edge !== undefined)
    return fail(
      'An edge of the outline cannot be deleted by itself',
      '',
      'Remove one of its corners instead',
    );
  const splits = drawing.splits.filter(({ id }) => !gone.has(id));
  let next = keepSoundFacts(withoutOrphans({ ...drawing, splits }));
  for (const id of there) {
    // It may have gone with the last line that needed it.
    if (next.points[id] === undefined) continue;
    const result = deletePoint(next, id);
    if (!result.ok) return result;
    next = result.value;
  }
  return ok(next);
}
