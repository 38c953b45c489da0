import { type Arrangement, type Drawing, inches, placeOn, say } from '@seamwright/arrangement';
import { distance, type Point } from '@seamwright/geometry';
import type { Candidate } from './candidate.ts';
import { DrawingEdit } from './edit.ts';
import { bringAlong, singleSplit } from './follow.ts';
import { alongLine, type SeamEnd } from './ways-on.ts';

/** Places along a line to which a seam's end is tried to be slid, the nearest first. */
const NEAREST_TRIED = 8;

/** The ways of sliding a seam's end along a line on which it ends, to where another line meets that one. */
export function slides(drawing: Drawing, arrangement: Arrangement, seam: SeamEnd): Candidate[] {
  const { vertices, edges } = arrangement;
  const others = edges.flatMap(({ line, from, to }) =>
    line !== seam.line && (from === seam.vertex || to === seam.vertex) ? [line] : [],
  );
  return [...new Set(others)].flatMap((line) =>
    alongLine(arrangement, line, seam.vertex)
      .filter((goal) => !vertices[goal]!.lines.includes(seam.line))
      .slice(0, NEAREST_TRIED)
      .flatMap((goal) => slide(drawing, arrangement, seam, goal) ?? []),
  );
}

function slide(drawing: Drawing, arrangement: Arrangement, seam: SeamEnd, goal: number): Candidate | null {
  const changed = slid(drawing, arrangement, seam, goal);
  if (changed === null) return null;
  const { vertices, outline } = arrangement;
  const [start, old, now] = [seam.start, seam.vertex, goal].map((v) => vertices[v]!.at) as [
    Point,
    Point,
    Point,
  ];
  return {
    kind: 'slide',
    message: say`Slide the end at ${placeOn(old, outline)} of the line from ${placeOn(start, outline)} by ${inches(distance(old, now))}, to ${placeOn(now, outline)}`,
    drawing: changed,
    splits: [],
    patches: 0,
    seamLength: distance(start, now) - distance(start, old),
    takesAway: false,
  };
}

/**
 * The drawing with a seam's end at another vertex; lines that end on the seam are made longer or shorter so that they still
 * do. Null where that cannot be: the seam is not one split of its own, or a line's end would come off it.
 */
function slid(
  drawing: Drawing,
  arrangement: Arrangement,
  { line, vertex }: SeamEnd,
  goal: number,
): Drawing | null {
  const edit = new DrawingEdit(drawing);
  const single = singleSplit(edit, arrangement, line, vertex);
  if (single === null) return null;
  const { split, end, other } = single;
  edit.setEnd(split.id, end, edit.pointAtVertex(arrangement, goal));
  const now = edit.split(split.id)![end];
  const kept = bringAlong(edit, arrangement, line, [vertex], edit.at(other), edit.at(now));
  return kept ? edit.finish() : null;
}
