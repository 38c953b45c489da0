import type { Drawing } from '@seamwright/arrangement';
import { distance, fail, ok, type Result, SAME_COORDINATE, type Segment } from '@seamwright/geometry';
import type { DrawnLine } from '../lines.ts';
import { drawnLines } from '../lines.ts';
import { placedAt } from '../place-at.ts';
import type { Placement } from '../placement.ts';
import { uncovered } from '../stretches.ts';
import { deleteSplit } from './delete-split.ts';
import { onPoint, type Piece, redrawSplit } from './redraw-split.ts';

/**
 * Takes away what of the splits runs along the given segments; what is left of a split stays, in one piece or several. So
 * two patches become one when the seam between them is erased.
 *
 * Refused: segments along which no split runs.
 */
export function eraseAlong(drawing: Drawing, segments: readonly Segment[]): Result<Drawing> {
  let next = drawing;
  for (const { id } of drawing.splits) {
    const line = drawnLines(next).get(id);
    // It may have become one with another.
    if (line === undefined) continue;
    const whole = { a: line.from, b: line.to };
    const left = uncovered(whole, segments);
    const first = left[0];
    if (left.length === 1 && lengthOf(first!) >= lengthOf(whole) - SAME_COORDINATE) continue;
    const pieces = left.map(({ a, b }): Piece => [endAt(next, line, a), endAt(next, line, b)]);
    const result = pieces.length === 0 ? deleteSplit(next, id) : redrawSplit(next, id, pieces);
    if (!result.ok) return result;
    next = result.value;
  }
  return next === drawing
    ? fail('There is no line to take away', '', 'The edge of the block stays; choose a line within it')
    : ok(next);
}

const lengthOf = ({ a, b }: Segment): number => distance(a, b);

/** An end of a piece: the split's own end, or what is known of the place besides that the split runs there. */
function endAt(drawing: Drawing, split: DrawnLine, at: Segment['a']): Placement {
  for (const end of [split.from, split.to]) if (at === end) return onPoint(end);
  const placed = placedAt(drawing, at);
  const on = placed.on?.filter((line) => line !== split.id) ?? [];
  if (placed.point !== undefined || on.length === 0)
    return { at: placed.at, ...(placed.point !== undefined && { point: placed.point }) };
  return { at, on };
}
