import { type Arrangement, type Drawing, type Finding, inches, placeOn, say } from '@seamwright/arrangement';
import { distance, lineCrossing, midpoint, type Point, parameterOn, pointAt } from '@seamwright/geometry';
import { findNearLineUps, type NearLineUp } from '../diagnosis/shapes/line-ups.ts';
import type { Candidate } from './candidate.ts';
import { DrawingEdit } from './edit.ts';
import { bringAlong, singleSplit } from './follow.ts';

/** The ways of making one straight line of two that nearly line up where the finding says. */
export function lineUps(drawing: Drawing, arrangement: Arrangement, { at }: Finding): Candidate[] {
  const isThere = ({ x, y }: Point) => at.some((p) => p.x === x && p.y === y);
  return findNearLineUps(arrangement)
    .filter(({ ends }) => ends.every(({ vertex }) => isThere(arrangement.vertices[vertex]!.at)))
    .flatMap((pair) => linedUp(drawing, arrangement, pair) ?? []);
}

/** The two lines' outer ends stay where they are; where they meet, or cross the line between them, comes onto the straight way. */
function linedUp(drawing: Drawing, arrangement: Arrangement, { ends, across }: NearLineUp): Candidate | null {
  const edit = new DrawingEdit(drawing);
  const { vertices, lines, outline } = arrangement;
  const [first, second] = ends.map(({ line, vertex }) => singleSplit(edit, arrangement, line, vertex));
  if (first == null || second == null) return null;
  const [a, b] = [edit.at(first.other), edit.at(second.other)];
  const [p, q] = ends.map(({ vertex }) => vertices[vertex]!.at) as [Point, Point];
  const goal =
    across === null
      ? pointAt(a, b, parameterOn(a, b, p))
      : lineCrossing(a, b, lines[across]!.a, lines[across]!.b);
  if (goal === null) return null;

  const meeting = first.split[first.end];
  if (across === null && meeting === second.split[second.end]) {
    if (edit.isCorner(meeting)) return null;
    edit.move(meeting, goal);
  } else {
    const on = across === null ? [] : lines[across]!.members.slice(0, 1);
    const point = edit.pointAt(goal, on);
    for (const { split, end } of [first, second]) edit.setEnd(split.id, end, point);
  }
  const meetings = ends.map(({ vertex }) => vertex);
  const kept = ends.every(({ line }, i) =>
    bringAlong(edit, arrangement, line, meetings, i === 0 ? a : b, goal),
  );
  if (!kept) return null;
  const moved = Math.max(distance(p, goal), distance(q, goal));
  return {
    kind: 'line-up',
    message: say`Line the two lines up at ${placeOn(midpoint(p, q), outline)}: their ends move by up to ${inches(moved)}`,
    drawing: edit.finish(),
    splits: [],
    patches: 0,
    seamLength: distance(a, b) - distance(a, p) - distance(b, q),
    takesAway: false,
  };
}
