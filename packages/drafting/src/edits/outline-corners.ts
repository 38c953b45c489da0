import { type Drawing, type DrawingPoint, edgeId, type LineId, type PointId } from '@seamwright/arrangement';
import {
  distanceToSegment,
  fail,
  nearestOnSegment,
  type Point,
  parameterOn,
  type Result,
  SAME_COORDINATE,
} from '@seamwright/geometry';
import { checkLengths, checkOutline, passes } from '../checks.ts';
import { keepSoundFacts, withOn } from '../facts.ts';
import { freshIds } from '../ids.ts';
import { drawnLines } from '../lines.ts';
import { pointIn } from '../place-at.ts';
import { withoutOrphans } from '../tidy.ts';
import { checkPlace } from './check-place.ts';

/**
 * Puts a new corner on an edge of the outline, at the place of the edge nearest to `at`; the outline keeps its
 * shape until the corner is moved. A split's end that lies there becomes the corner. Points that were placed on
 * the edge are then on the half that they lie on.
 */
export function addCorner(drawing: Drawing, edge: LineId, at: Point): Result<Drawing> {
  const place = checkPlace(at);
  if (!place.ok) return place;
  const index = drawing.outline.findIndex((corner) => edgeId(corner) === edge);
  const line = drawnLines(drawing).get(edge);
  if (index < 0 || line === undefined)
    return fail('That edge is not in the drawing', `edge ${edge}`, 'Choose another edge');

  const foot = nearestOnSegment(at, line.from, line.to);
  const corner = withOn(pointIn(drawing, foot) ?? { id: freshIds(drawing).point(), ...foot }, []);
  if (drawing.outline.includes(corner.id))
    return fail('There is a corner already', '', 'Choose a place between two corners');

  const share = parameterOn(line.from, line.to, corner);
  const points: Record<PointId, DrawingPoint> = {};
  for (const point of Object.values(drawing.points)) {
    const isBeyond = point.on?.includes(edge) && parameterOn(line.from, line.to, point) > share;
    points[point.id] = isBeyond ? renameFact(point, edge, edgeId(corner.id)) : point;
  }
  points[corner.id] = corner;
  const outline = [...drawing.outline.slice(0, index + 1), corner.id, ...drawing.outline.slice(index + 1)];
  return passes(keepSoundFacts({ ...drawing, points, outline }), checkLengths(drawing), checkOutline);
}

/**
 * Takes a corner out of the outline; its neighbours are then joined by one edge. Splits that end in it stay, with
 * their end where the corner was. Points on its two edges stay, and are on the new edge only if it runs
 * through them.
 *
 * Refused: fewer than three corners, an outline that would cross itself.
 */
export function removeCorner(drawing: Drawing, corner: PointId): Result<Drawing> {
  const { outline } = drawing;
  const index = outline.indexOf(corner);
  if (index < 0)
    return fail('That corner is not in the drawing', `corner ${corner}`, 'Choose another corner');
  if (outline.length <= 3)
    return fail(
      'The outline needs at least three corners',
      '',
      'Move this corner, or choose another outline',
    );

  const before = outline[(index + outline.length - 1) % outline.length]!;
  const after = outline[(index + 1) % outline.length]!;
  const [from, to] = [drawing.points[before]!, drawing.points[after]!];
  const isOnNewEdge = (point: Point) => distanceToSegment(point, from, to) <= SAME_COORDINATE;

  const points: Record<PointId, DrawingPoint> = {};
  for (const point of Object.values(drawing.points)) {
    const others = (point.on ?? []).filter((line) => line !== edgeId(before) && line !== edgeId(corner));
    const wasOnEdge = point.id === corner || others.length < (point.on?.length ?? 0);
    points[point.id] = wasOnEdge
      ? withOn(point, isOnNewEdge(point) ? [edgeId(before), ...others] : others)
      : point;
  }
  const remaining = outline.filter((id) => id !== corner);
  const next = keepSoundFacts(withoutOrphans({ ...drawing, points, outline: remaining }));
  return passes(next, checkLengths(drawing), checkOutline);
}

const renameFact = (point: DrawingPoint, from: LineId, to: LineId): DrawingPoint =>
  withOn(
    point,
    point.on!.map((line) => (line === from ? to : line)),
  );
