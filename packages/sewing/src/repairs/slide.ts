import { type Arrangement, type Drawing, placeName } from '@seamwright/arrangement';
import { distance, distanceToSegment, lineCrossing, SAME_COORDINATE } from '@seamwright/geometry';
import { type Candidate, inches } from './candidate.ts';
import { DrawingEdit } from './edit.ts';
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
  const [start, old, now] = [seam.start, seam.vertex, goal].map((v) => vertices[v]!.at) as [Pt, Pt, Pt];
  return {
    kind: 'slide',
    message: `Slide the end of the line at ${placeName(old, outline)} along the line it ends on by ${inches(distance(old, now))}, to ${placeName(now, outline)}`,
    drawing: changed,
    splits: [],
    patches: 0,
    seamLength: distance(start, now) - distance(start, old),
  };
}

type Pt = Arrangement['vertices'][number]['at'];

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
  const { lines, vertices } = arrangement;
  const { members } = lines[line]!;
  const split = members.length === 1 ? edit.split(members[0]!) : undefined;
  if (split === undefined) return null;
  const end = vertices[vertex]!.points.includes(split.to) ? 'to' : 'from';
  const fixed = edit.at(split[end === 'to' ? 'from' : 'to']);
  if (!vertices[vertex]!.points.includes(split[end])) return null;
  edit.setEnd(split.id, end, edit.pointAtVertex(arrangement, goal));
  const now = edit.at(edit.split(split.id)![end]);

  for (const { index, points, lines: through } of vertices) {
    if (index === vertex || !through.includes(line)) continue;
    for (const point of points) {
      const ending = edit.endingIn(point).filter(({ id }) => id !== split.id);
      if (ending.length === 0 || point === split.from || point === split.to) continue;
      const own = new Set(ending.map(({ id }) => lines.findIndex((l) => l.members.includes(id))));
      if (own.size > 1 || edit.isCorner(point)) return null;
      const { a, b } = lines[[...own][0]!]!;
      const crossing = lineCrossing(fixed, now, a, b);
      if (crossing === null || distanceToSegment(crossing, fixed, now) > SAME_COORDINATE) return null;
      edit.move(point, crossing);
    }
  }
  return edit.finish();
}
