import { fail, LARGEST_SIZE, ok, type Point, type Result } from '@seamwright/geometry';

/**
 * The place itself when something can be put there: finite coordinates, no farther from the origin than twice the
 * largest block (lines may run past the outline while it is being drawn, but not out of reach).
 */
export function checkPlace(at: Point): Result<Point> {
  if (!Number.isFinite(at.x) || !Number.isFinite(at.y))
    return fail('A coordinate is not a number', '', 'Give a length such as 2 3/8');
  if (Math.max(Math.abs(at.x), Math.abs(at.y)) > 2 * LARGEST_SIZE)
    return fail('That is too far away from the block', '', `Stay within ${2 * LARGEST_SIZE} in`);
  return ok(at);
}
