import { type Arrangement, type Drawing, inches, placeOn, say } from '@seamwright/arrangement';
import type { Candidate } from './candidate.ts';
import { DrawingEdit } from './edit.ts';
import { type SeamEnd, type Stop, stopsAhead } from './ways-on.ts';

/** Lines met on the way to the block's edge that are tried as a seam's new end, beside the edge itself. */
const NEAREST_TRIED = 4;

/** The ways of letting a seam run straight on: to each of the next lines, and to the block's edge. */
export function extensions(drawing: Drawing, arrangement: Arrangement, seam: SeamEnd): Candidate[] {
  const stops = stopsAhead(arrangement, seam);
  return stops
    .map((stop, i) => ({ stop, crossed: i }))
    .filter(({ crossed }) => crossed < NEAREST_TRIED || crossed === stops.length - 1)
    .map(({ stop, crossed }) => extension(drawing, arrangement, seam, stop, crossed));
}

function extension(
  drawing: Drawing,
  arrangement: Arrangement,
  seam: SeamEnd,
  stop: Stop,
  crossed: number,
): Candidate {
  const { at } = arrangement.vertices[seam.vertex]!;
  const where = placeOn(at, arrangement.outline);
  const what = stop.onOutline ? 'the edge of the block' : crossed === 0 ? 'the next line' : 'the line';
  const goal = say`${what} at ${placeOn(stop.at, arrangement.outline)}`;
  return {
    kind: 'extend',
    message: say`Let the line that ends at ${where} run straight on for ${inches(stop.length)}, to ${goal}`,
    drawing: extended(drawing, arrangement, seam, stop),
    splits: [[at, stop.at]],
    patches: crossed + 1,
    seamLength: stop.length,
    takesAway: false,
  };
}

/** The drawing with a seam that runs on to a stop: the split itself made longer where it is one that ends there. */
export function extended(
  drawing: Drawing,
  arrangement: Arrangement,
  { line, vertex }: SeamEnd,
  stop: Stop,
): Drawing {
  const edit = new DrawingEdit(drawing);
  const { points } = arrangement.vertices[vertex]!;
  const { members } = arrangement.lines[line]!;
  const ending = members
    .flatMap((id) => edit.split(id) ?? [])
    .filter(({ from, to }) => points.includes(from) || points.includes(to));
  const met = arrangement.edges[stop.edge]!.drawn.slice(0, 1);
  const goal = stop.vertex >= 0 ? edit.pointAtVertex(arrangement, stop.vertex) : edit.pointAt(stop.at, met);
  const [split] = ending;
  if (split === undefined || ending.length > 1) {
    edit.addSplit(edit.pointAtVertex(arrangement, vertex), goal);
    return edit.finish();
  }
  const end = points.includes(split.to) ? 'to' : 'from';
  const old = split[end];
  edit.setEnd(split.id, end, goal);
  // Other lines that ended where the seam did now end on it.
  if (!edit.isCorner(old)) edit.setFacts(old, [split.id, ...(drawing.points[old]!.on ?? [])]);
  return edit.finish();
}
