import type { Arrangement, PointId, Split } from '@seamwright/arrangement';
import { distanceToSegment, lineCrossing, type Point, SAME_COORDINATE } from '@seamwright/geometry';
import type { DrawingEdit } from './edit.ts';

/** A line that is one split and no more, and ends at a vertex: which of its ends that is, and the point at the other. */
export interface SingleSplit {
  readonly split: Split;
  readonly end: 'from' | 'to';
  readonly other: PointId;
}

export function singleSplit(
  edit: DrawingEdit,
  { lines, vertices }: Arrangement,
  line: number,
  vertex: number,
): SingleSplit | null {
  const { members } = lines[line]!;
  const split = members.length === 1 ? edit.split(members[0]!) : undefined;
  const { points } = vertices[vertex]!;
  if (split === undefined) return null;
  if (points.includes(split.to)) return { split, end: 'to', other: split.from };
  return points.includes(split.from) ? { split, end: 'from', other: split.to } : null;
}

/**
 * Makes the lines that end on a line longer or shorter so that they still do, where it runs from now on.
 *
 * @param except vertices that are seen to otherwise
 * @returns false where that cannot be: a line's end would come off it, or two lines end there that would need two places
 */
export function bringAlong(
  edit: DrawingEdit,
  { lines, vertices }: Arrangement,
  line: number,
  except: readonly number[],
  from: Point,
  to: Point,
): boolean {
  const own = new Set(lines[line]!.members);
  for (const { index, points, lines: through } of vertices) {
    if (except.includes(index) || !through.includes(line)) continue;
    for (const point of points) {
      const ending = edit.endingIn(point);
      const others = ending.filter(({ id }) => !own.has(id));
      if (others.length === 0 || others.length < ending.length) continue;
      const ends = new Set(others.map(({ id }) => lines.findIndex(({ members }) => members.includes(id))));
      if (ends.size > 1 || edit.isCorner(point)) return false;
      const { a, b } = lines[[...ends][0]!]!;
      const crossing = lineCrossing(from, to, a, b);
      if (crossing === null || distanceToSegment(crossing, from, to) > SAME_COORDINATE) return false;
      edit.move(point, crossing);
    }
  }
  return true;
}
