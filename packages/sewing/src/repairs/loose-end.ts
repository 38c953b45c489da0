import {
  type Arrangement,
  type Drawing,
  type Finding,
  inches,
  type LineId,
  placeOn,
  say,
} from '@seamwright/arrangement';
import { distance, nearestOnSegment, type Point, SNAP_DISTANCE } from '@seamwright/geometry';
import type { Candidate } from './candidate.ts';
import { DrawingEdit } from './edit.ts';

/** The ways of mending a line that ends loose: to the next line, or back to the last line that it meets. */
export function looseEndRepairs(drawing: Drawing, arrangement: Arrangement, finding: Finding): Candidate[] {
  const [tip] = finding.at;
  if (tip === undefined) return [];
  const loose = drawing.splits.filter(({ id, from, to }) => {
    const nearest = Math.min(...[from, to].map((end) => distance(drawing.points[end]!, tip)));
    return finding.lines.includes(id) && nearest <= SNAP_DISTANCE;
  });
  const ahead = finding.repairs.flatMap(({ splits }) => splits.map(([, end]) => end));
  const gap = ahead.reduce((least, end) => Math.min(least, distance(tip, end)), Number.POSITIVE_INFINITY);
  return [
    ...ahead.flatMap((end) => drawnOut(drawing, arrangement, loose, tip, end)),
    ...trimmed(drawing, arrangement, loose, tip, gap),
  ];
}

type Loose = Drawing['splits'];

const endAt = ({ points }: Drawing, { from, to }: Loose[number], tip: Point): 'from' | 'to' =>
  distance(points[from]!, tip) < distance(points[to]!, tip) ? 'from' : 'to';

function drawnOut(
  drawing: Drawing,
  arrangement: Arrangement,
  loose: Loose,
  tip: Point,
  ahead: Point,
): Candidate[] {
  const edit = new DrawingEdit(drawing);
  const goal = edit.pointAt(ahead, linesAt(arrangement, ahead).slice(0, 1));
  for (const split of loose) edit.setEnd(split.id, endAt(drawing, split, tip), goal);
  const length = distance(tip, ahead);
  return [
    {
      kind: 'extend',
      message: say`Let the line that ends loose at ${placeOn(tip, arrangement.outline)} run on for ${inches(length)}, to the next line at ${placeOn(ahead, arrangement.outline)}`,
      drawing: edit.finish(),
      splits: [[tip, ahead]],
      patches: 1,
      seamLength: length,
      takesAway: false,
    },
  ];
}

/**
 * Back to the last place where the line divides patches, or away with it where it divides none.
 *
 * @param gap inches to the next line: a tail that is shorter was hardly meant to be there
 */
function trimmed(
  drawing: Drawing,
  arrangement: Arrangement,
  loose: Loose,
  tip: Point,
  gap: number,
): Candidate[] {
  const edit = new DrawingEdit(drawing);
  let back: Point | null = null;
  for (const split of loose) {
    const last = lastDivided(arrangement, split.id, tip);
    if (last === null) {
      edit.remove(split.id);
    } else {
      edit.setEnd(split.id, endAt(drawing, split, tip), edit.pointAtVertex(arrangement, last, [split.id]));
      back = arrangement.vertices[last]!.at;
    }
  }
  const where = placeOn(tip, arrangement.outline);
  return [
    {
      kind: 'trim',
      message:
        back === null
          ? say`Take away the line that ends loose at ${where}`
          : say`Trim the line that ends loose at ${where} by ${inches(distance(tip, back))}, back to the line it meets`,
      drawing: edit.finish(),
      splits: [],
      patches: 0,
      seamLength: 0,
      takesAway: back === null || distance(tip, back) >= gap,
    },
  ];
}

/** Of the vertices at which a drawn line divides patches, the one nearest to its loose end. */
function lastDivided({ edges, vertices }: Arrangement, id: LineId, tip: Point): number | null {
  const along = edges.filter(({ drawn }) => drawn.includes(id)).flatMap(({ from, to }) => [from, to]);
  return along.reduce<number | null>(
    (best, v) =>
      best === null || distance(vertices[v]!.at, tip) < distance(vertices[best]!.at, tip) ? v : best,
    null,
  );
}

/** The drawn lines that run through a place. */
const linesAt = ({ edges, vertices }: Arrangement, at: Point): LineId[] =>
  edges.flatMap(({ from, to, drawn }) =>
    distance(at, nearestOnSegment(at, vertices[from]!.at, vertices[to]!.at)) <= SNAP_DISTANCE ? drawn : [],
  );
