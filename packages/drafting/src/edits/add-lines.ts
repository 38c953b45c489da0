import type { Drawing } from '@seamwright/arrangement';
import { distance, fail, ok, type Result, type Segment, SNAP_DISTANCE } from '@seamwright/geometry';
import { outlineOf } from '../checks.ts';
import { withFactsByPlace } from '../facts-by-place.ts';
import { drawnLines } from '../lines.ts';
import { placedAt } from '../place-at.ts';
import { inside, uncovered, united } from '../stretches.ts';
import { addSplit } from './add-split.ts';
import { checkPlace } from './check-place.ts';

/**
 * Draws lines that were worked out together. Of each, the stretches inside the block are drawn; such as overlap each
 * other become one; what runs along a line that is there already is left out. All new ends know the lines they are on,
 * the new ones too.
 *
 * Refused: places that are no places; lines of which nothing is left to draw.
 */
export function addLines(drawing: Drawing, segments: readonly Segment[]): Result<Drawing> {
  for (const { a, b } of segments) {
    for (const end of [a, b]) {
      const place = checkPlace(end);
      if (!place.ok) return place;
    }
  }
  const outline = outlineOf(drawing);
  const known = [...drawnLines(drawing).values()].map(({ from, to }) => ({ a: from, b: to }));
  const stretches = united(segments.flatMap((segment) => inside(outline, segment)))
    .flatMap((segment) => uncovered(segment, known))
    .filter(({ a, b }) => distance(a, b) > SNAP_DISTANCE);

  let next = drawing;
  for (const { a, b } of stretches) {
    const result = addSplit(next, placedAt(next, a), placedAt(next, b));
    // Between ends on one line nothing would be divided.
    if (result.ok) next = result.value;
  }
  if (next === drawing)
    return fail(
      'Nothing would be divided',
      '',
      'Lines are there already, or the new ones lie outside the block',
    );
  const fresh = new Set(Object.keys(next.points).filter((id) => drawing.points[id] === undefined));
  return ok(withFactsByPlace(next, fresh));
}
