import type { Drawing, DrawingPoint, LineId, PointId } from '@seamwright/arrangement';
import {
  distance,
  distanceToSegment,
  dot,
  fail,
  isClockwise,
  lineCrossing,
  ok,
  type Point,
  type Result,
  SAME_COORDINATE,
  type Segment,
  subtract,
} from '@seamwright/geometry';
import { outlineOf } from '../checks.ts';
import { areParallel } from '../facts-by-place.ts';
import { type DrawnLine, drawnLines, linesEndingIn } from '../lines.ts';
import { nearest } from '../nearest.ts';
import type { Placement } from '../placement.ts';
import { moveSideways } from '../stretches.ts';
import { lineOf } from './line-of.ts';
import { loosened } from './loosen.ts';
import { movePoints } from './move-point.ts';

/**
 * Moves lines parallel to themselves, each by its own distance, inches: to the right hand of who walks from its first
 * end to its second, to the left when negative.
 *
 * - An end that is on another line slides on that line; one in a corner of the outline leaves it and slides on its edge.
 * - A free end goes straight sideways, with all lines that meet there.
 * - Where two of the moved lines meet, they meet again.
 * - A moved edge of the outline takes its corners along the neighbouring edges.
 *
 * Refused: an end that would slide off the line that it is on; what {@link movePoints} refuses.
 */
export function moveLines(drawing: Drawing, distances: ReadonlyMap<LineId, number>): Result<Drawing> {
  const paths = new Map<LineId, Segment>();
  for (const [id, by] of distances) {
    const line = lineOf(drawing, id);
    if (!line.ok) return line;
    if (!Number.isFinite(by)) return fail('The distance is not a number', '', 'Give a length such as 1/4');
    paths.set(id, moveSideways({ a: line.value.from, b: line.value.to }, by));
  }
  const { drawing: loose, endOf } = loosened(drawing, new Set(paths.keys()));
  const held = new Map<PointId, readonly LineId[]>();
  for (const id of paths.keys()) {
    const { from, to } = drawnLines(drawing).get(id)!;
    for (const end of [from.id, to.id])
      if (endOf(id, end) !== end) held.set(endOf(id, end), edgesAt(drawing, end));
  }
  const moves = new Map<PointId, Placement>();
  for (const id of paths.keys()) {
    const { from, to } = drawnLines(loose).get(id)!;
    for (const end of [from, to]) {
      if (moves.has(end.id)) continue;
      const target = targetOf(loose, end, paths, held);
      if (!target.ok) return target;
      moves.set(end.id, target.value);
    }
  }
  for (const [id, path] of paths) {
    const { from, to } = drawnLines(loose).get(id)!;
    const now = subtract(moves.get(to.id)!.at, moves.get(from.id)!.at);
    if (dot(now, subtract(path.b, path.a)) <= 0)
      return fail('The line would turn about or lose its length', '', 'Move it less far');
  }
  const moved = movePoints(loose, moves);
  if (moved.ok && isClockwise(outlineOf(moved.value)) !== isClockwise(outlineOf(drawing)))
    return fail('The edge would pass through the whole block', '', 'Move it less far');
  return moved;
}

/** Moves one line parallel to itself; see {@link moveLines}. */
export const moveLine = (drawing: Drawing, line: LineId, by: number): Result<Drawing> =>
  moveLines(drawing, new Map([[line, by]]));

/** The edges on which an end may slide that leaves a corner. */
const edgesAt = (drawing: Drawing, corner: PointId): readonly LineId[] =>
  linesEndingIn(drawing, corner).flatMap(({ id, kind }) => (kind === 'edge' ? [id] : []));

const TOO_FAR = fail('An end of the line would slide off the line that it is on', '', 'Move it less far');

/** Where an end of moved lines goes. */
function targetOf(
  drawing: Drawing,
  end: DrawingPoint,
  paths: ReadonlyMap<LineId, Segment>,
  held: ReadonlyMap<PointId, readonly LineId[]>,
): Result<Placement> {
  const lines = drawnLines(drawing);
  const ending = linesEndingIn(drawing, end.id);
  const moving = ending.filter(({ id }) => paths.has(id));
  const path = paths.get(moving[0]!.id)!;
  const other = moving.find((line) => !areParallel(line, moving[0]!));
  if (other !== undefined) {
    const { a, b } = paths.get(other.id)!;
    const at = lineCrossing(path.a, path.b, a, b);
    return at === null ? TOO_FAR : ok({ at, ...(end.on && { on: end.on }) });
  }
  const sideways = subtract(path.a, moving[0]!.from);
  const straight = { x: end.x + sideways.x, y: end.y + sideways.y };

  if (drawing.outline.includes(end.id)) {
    // A corner of a moved edge: along the neighbouring edge, however far.
    const neighbour = ending.find((line) => line.kind === 'edge' && !paths.has(line.id));
    const at =
      neighbour === undefined || areParallel(neighbour, moving[0]!) ? straight : crossing(path, neighbour);
    return at === null ? TOO_FAR : ok({ at });
  }
  const hosts = (held.get(end.id) ?? end.on ?? []).map((id) => lines.get(id)!);
  if (hosts.length === 0) return ok({ at: straight });
  const places = hosts.flatMap((host) => {
    const at = crossing(path, host);
    return at !== null && distanceToSegment(at, host.from, host.to) <= SAME_COORDINATE ? [{ at, host }] : [];
  });
  const place = nearest(places, Infinity, ({ at }) => distance(at, straight));
  return place === undefined ? TOO_FAR : ok({ at: place.at, on: [place.host.id] });
}

const crossing = ({ a, b }: Segment, line: DrawnLine): Point | null =>
  areParallel({ from: a, to: b }, line) ? null : lineCrossing(a, b, line.from, line.to);
