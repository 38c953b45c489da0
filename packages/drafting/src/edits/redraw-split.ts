import type { Drawing, DrawingPoint, LineId, PointId, Split } from '@seamwright/arrangement';
import { distanceToSegment, type Result, SAME_COORDINATE } from '@seamwright/geometry';
import { checkLengths, passes } from '../checks.ts';
import { keepSoundFacts, withOn } from '../facts.ts';
import { freshIds } from '../ids.ts';
import type { Placement } from '../placement.ts';
import { withoutOrphans } from '../tidy.ts';
import { putDown } from './put-down.ts';

/** From where to where a piece of a split runs. */
export type Piece = readonly [from: Placement, to: Placement];

/**
 * Draws a split anew as the given pieces of its straight line, none of which may overlap. The first keeps its id. Points
 * that were on the split are on the piece that they lie on; those on none keep their place and lose the fact. Ends
 * that no line needs any more go.
 *
 * Refused: a piece without length.
 */
export function redrawSplit(drawing: Drawing, id: LineId, pieces: readonly Piece[]): Result<Drawing> {
  const ids = freshIds(drawing);
  let next = drawing;
  const splits: Split[] = [];
  for (const [start, end] of pieces) {
    const from = putDown(next, start, ids);
    const to = putDown(from.drawing, end, ids);
    next = to.drawing;
    splits.push({ id: splits.length === 0 ? id : ids.split(), from: from.id, to: to.id });
  }
  const rest = next.splits.filter((split) => split.id !== id);
  // A piece between the ends of another line would be the same line twice.
  const isDrawn = (piece: Split) => rest.some((split) => joinsTheSame(split, piece));
  const drawn = splits.filter((piece) => !isDrawn(piece));
  const at = next.splits.findIndex((split) => split.id === id);
  next = { ...next, splits: [...rest.slice(0, at), ...drawn, ...rest.slice(at)] };
  const carriers = [...drawn, ...rest.filter((split) => splits.some((piece) => joinsTheSame(split, piece)))];
  return passes(keepSoundFacts(withoutOrphans(handOver(next, id, carriers))), checkLengths(drawing));
}

const joinsTheSame = (one: Split, other: Split): boolean =>
  (one.from === other.from && one.to === other.to) || (one.from === other.to && one.to === other.from);

/** Gives the points that were on the line `id` to the first of the carriers that runs through their place. */
function handOver(drawing: Drawing, id: LineId, carriers: readonly Split[]): Drawing {
  const points: Record<PointId, DrawingPoint> = { ...drawing.points };
  for (const point of Object.values(drawing.points)) {
    if (!point.on?.includes(id)) continue;
    const carrier = carriers.find(
      ({ from, to }) =>
        distanceToSegment(point, drawing.points[from]!, drawing.points[to]!) <= SAME_COORDINATE,
    );
    const on = point.on.flatMap((line) => (line !== id ? [line] : carrier === undefined ? [] : [carrier.id]));
    points[point.id] = withOn(point, [...new Set(on)]);
  }
  return { ...drawing, points };
}

/** The placement of a point that is there. */
export const onPoint = ({ id, x, y }: DrawingPoint): Placement => ({ at: { x, y }, point: id });
