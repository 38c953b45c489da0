import type { Drawing, LineId } from '@seamwright/arrangement';
import {
  distance,
  distanceToSegment,
  fail,
  lineCrossing,
  normalize,
  type Point,
  type Result,
  SAME_COORDINATE,
  type Segment,
  SNAP_DISTANCE,
  subtract,
} from '@seamwright/geometry';
import { outlineOf } from '../checks.ts';
import { type DrawnLine, drawnLines, linesThrough } from '../lines.ts';
import { nearest } from '../nearest.ts';
import { placedAt } from '../place-at.ts';
import type { Placement } from '../placement.ts';
import { runFrom } from '../reach.ts';
import { inside, moveSideways } from '../stretches.ts';
import { addSplit, type Ends } from './add-split.ts';
import { lineOf } from './line-of.ts';

/**
 * Draws a parallel copy of a split or of an edge at a distance, inches: to the right hand of who walks from its first end
 * to its second, to the left when it is negative. (Edges run clockwise: to their right is the block.)
 *
 * With ends that run, the copy ends on the lines that the original ends on, longer or shorter than it; where it
 * misses them, on the next line or the edge. Held, it is as long as the original.
 *
 * Refused: a distance too small to tell the two apart; a copy outside the block.
 */
export function parallelCopy(
  drawing: Drawing,
  line: LineId,
  by: number,
  ends: Ends = 'run',
): Result<Drawing> {
  const found = lineOf(drawing, line);
  if (!found.ok) return found;
  const original = found.value;
  if (!(Math.abs(by) > SNAP_DISTANCE && Number.isFinite(by)))
    return fail('The copy would lie on the line itself', '', 'Give a distance such as 1/4');
  const copy = moveSideways({ a: original.from, b: original.to }, by);
  if (ends === 'held') return addSplit(drawing, placedAt(drawing, copy.a), placedAt(drawing, copy.b));

  const ahead = normalize(subtract(copy.b, copy.a));
  const back = normalize(subtract(copy.a, copy.b));
  const from = endOn(drawing, original.from, copy.a, copy);
  const to = endOn(drawing, original.to, copy.b, copy);
  const between = { a: from?.at ?? copy.a, b: to?.at ?? copy.b };
  const within = inside(outlineOf(drawing), between);
  const [first, last] = [within[0], within.at(-1)];
  if (first === undefined || last === undefined)
    return fail('The copy lies outside the block', '', 'Give a smaller distance, or one to the other side');
  const run = (there: Placement | null, end: Point, trimmed: Point, direction: Point): Placement => {
    if (there !== null) return there;
    if (distance(end, trimmed) > SAME_COORDINATE) return placedAt(drawing, trimmed);
    const here = placedAt(drawing, end);
    return here.on === undefined && here.point === undefined
      ? (runFrom(drawing, end, direction) ?? here)
      : here;
  };
  return addSplit(drawing, run(from, copy.a, first.a, back), run(to, copy.b, last.b, ahead));
}

/** Where the copy meets a line that the original's end lies on; of several such places the one nearest to its own end. */
function endOn(drawing: Drawing, end: DrawnLine['from'], own: Point, { a, b }: Segment): Placement | null {
  const lines = drawnLines(drawing);
  const places = [...linesThrough(drawing, end.id)].flatMap((id) => {
    const { from, to } = lines.get(id)!;
    const at = lineCrossing(a, b, from, to);
    return at !== null && distanceToSegment(at, from, to) <= SAME_COORDINATE ? [at] : [];
  });
  const at = nearest(places, Infinity, (p) => distance(p, own));
  return at === undefined ? null : placedAt(drawing, at);
}
