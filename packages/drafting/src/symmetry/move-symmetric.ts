import type { Drawing, DrawingPoint, LineId, PointId } from '@seamwright/arrangement';
import {
  distance,
  fail,
  ok,
  type Point,
  type Result,
  SAME_COORDINATE,
  type Transform,
  transformPoint,
} from '@seamwright/geometry';
import { centreOf } from '../centre.ts';
import { lineOf } from '../edits/line-of.ts';
import { loosened } from '../edits/loosen.ts';
import { moveLines } from '../edits/move-lines.ts';
import { movePoints } from '../edits/move-point.ts';
import { NOTHING, type Parts } from '../edits/parts.ts';
import { withFactsByPlace } from '../facts-by-place.ts';
import { drawnLines } from '../lines.ts';
import type { Placement } from '../placement.ts';
import { moveSideways, rightOf } from '../stretches.ts';
import { fixedBy } from './fixed.ts';
import { PointIndex } from './point-index.ts';
import { type Symmetry, transformsOf } from './symmetry.ts';

/**
 * Moves points and their images: where a point of the drawing lies in the place of an image, it goes to the image of the
 * new place. A point on an axis stays on it, one in the centre stays there. What follows is brought to
 * images of each other, too, so that a drawing that has the symmetry still has it.
 *
 * Refused: what {@link movePoints} and `transformsOf` refuse.
 */
export function movePointsSymmetric(
  drawing: Drawing,
  moves: ReadonlyMap<PointId, Placement>,
  symmetry: Symmetry,
): Result<Drawing> {
  const transforms = transformsOf(symmetry, centreOf(drawing));
  if (!transforms.ok) return transforms;
  if (transforms.value.length === 1) return movePoints(drawing, moves);
  const all = withImagesOfMoves(drawing, moves, transforms.value);
  return evened(drawing, movePoints(drawing, all), transforms.value, all);
}

/**
 * Moves a line parallel to itself, and its images by as much; see `moveLines`.
 *
 * Refused: a line that is its own mirror image along an axis.
 */
export function moveLineSymmetric(
  drawing: Drawing,
  line: LineId,
  by: number,
  symmetry: Symmetry,
): Result<Drawing> {
  const transforms = transformsOf(symmetry, centreOf(drawing));
  if (!transforms.ok) return transforms;
  const found = lineOf(drawing, line);
  if (!found.ok) return found;
  const { from, to } = found.value;
  const target = moveSideways({ a: from, b: to }, by).a;
  const index = new PointIndex(drawing);
  const distances = new Map<LineId, number>();
  for (const transform of transforms.value) {
    const image = imageOfLine(drawing, index, line, transform);
    if (image === undefined) continue;
    const drawn = drawnLines(drawing).get(image)!;
    const own = rightOf({ a: drawn.from, b: drawn.to }, transformPoint(transform, target));
    const known = distances.get(image);
    if (known !== undefined && Math.abs(known - own) > SAME_COORDINATE)
      return fail(
        'This line lies on an axis of the repetition and is its own image',
        '',
        'Turn the repetition off to move it',
      );
    distances.set(image, known ?? own);
  }
  return evened(drawing, moveLines(drawing, distances), transforms.value, new Map());
}

/**
 * Moves, turns or mirrors parts of a drawing, and their images to the images of the new places; see `transformParts`. Where
 * a part is an image of another, what comes first counts.
 *
 * Refused: what `transformParts` and `transformsOf` refuse.
 */
export function transformPartsSymmetric(
  drawing: Drawing,
  parts: Parts,
  by: Transform,
  symmetry: Symmetry,
): Result<Drawing> {
  const transforms = transformsOf(symmetry, centreOf(drawing));
  if (!transforms.ok) return transforms;
  const index = new PointIndex(drawing);
  const all = withImages(drawing, parts, symmetry);
  const { drawing: loose, endOf } = loosened(drawing, new Set(all.lines), new Set(all.points));
  const moves = new Map<PointId, Placement>();
  /** Moves a point, or the end of a line, and its images. */
  const move = (point: DrawingPoint, line?: LineId) => {
    const images = transforms.value.map((transform) => {
      const end = index.at(transformPoint(transform, point))?.id;
      const image = line === undefined ? undefined : imageOfLine(drawing, index, line, transform);
      if (end === undefined || (line !== undefined && image === undefined)) return undefined;
      return image === undefined ? end : endOf(image, end);
    });
    const own = images[0];
    if (own === undefined || moves.has(own)) return;
    const at = fixedBy(
      transforms.value.filter((_, k) => images[k] === own),
      transformPoint(by, point),
    );
    images.forEach((id, k) => {
      if (id === undefined || moves.has(id)) return;
      const { on } = loose.points[id]!;
      moves.set(id, { at: transformPoint(transforms.value[k]!, at), ...(on && { on }) });
    });
  };
  for (const id of parts.points) if (drawing.points[id] !== undefined) move(drawing.points[id]);
  for (const id of parts.lines) {
    const line = drawnLines(drawing).get(id);
    if (line === undefined) continue;
    move(line.from, id);
    move(line.to, id);
  }
  if (moves.size === 0) return NOTHING;
  return evened(drawing, movePoints(loose, moves), transforms.value, moves);
}

/** The parts and all their images that are in the drawing: for deleting and choosing. */
export function withImages(drawing: Drawing, parts: Parts, symmetry: Symmetry): Parts {
  const transforms = transformsOf(symmetry, centreOf(drawing));
  if (!transforms.ok) return parts;
  const index = new PointIndex(drawing);
  const points = parts.points.flatMap((id) => {
    const point = drawing.points[id];
    if (point === undefined) return [];
    return transforms.value.flatMap((transform) => index.at(transformPoint(transform, point))?.id ?? []);
  });
  const lines = parts.lines.flatMap((id) =>
    transforms.value.flatMap((transform) => imageOfLine(drawing, index, id, transform) ?? []),
  );
  return { points: [...new Set(points)], lines: [...new Set(lines)] };
}

function imageOfLine(
  drawing: Drawing,
  index: PointIndex,
  id: LineId,
  transform: Transform,
): LineId | undefined {
  const line = drawnLines(drawing).get(id);
  if (line === undefined) return undefined;
  const [from, to] = [line.from, line.to].map((end) => index.at(transformPoint(transform, end)));
  return from === undefined || to === undefined ? undefined : index.between(from.id, to.id);
}

/** The moves and, for each image of a moved point that is there, the image of its move; what comes first counts. */
function withImagesOfMoves(
  drawing: Drawing,
  moves: ReadonlyMap<PointId, Placement>,
  transforms: readonly Transform[],
): ReadonlyMap<PointId, Placement> {
  const index = new PointIndex(drawing);
  const all = new Map<PointId, Placement>();
  for (const [id, target] of moves) {
    const point = drawing.points[id];
    if (point === undefined) {
      all.set(id, target);
      continue;
    }
    if (all.has(id)) continue;
    const group = transforms.filter((transform) => index.at(transformPoint(transform, point))?.id === id);
    const at = fixedBy(group, target.at);
    // What was caught beside the axis is not what is on it.
    const caught = distance(at, target.at) <= SAME_COORDINATE ? target : { at };
    for (const transform of transforms) {
      const image = index.at(transformPoint(transform, point));
      if (image === undefined || all.has(image.id)) continue;
      all.set(image.id, imageOfPlacement(drawing, index, { ...caught, at }, transform));
    }
  }
  return all;
}

function imageOfPlacement(
  drawing: Drawing,
  index: PointIndex,
  { at, point, on }: Placement,
  transform: Transform,
): Placement {
  const image = transformPoint(transform, at);
  const caught =
    point === undefined ? undefined : index.at(transformPoint(transform, drawing.points[point] ?? at));
  if (caught !== undefined) return { at: image, point: caught.id };
  const lines = (on ?? []).flatMap((line) => imageOfLine(drawing, index, line, transform) ?? []);
  return lines.length === 0 ? { at: image } : { at: image, on: lines };
}

/**
 * Brings what followed a symmetric move to images of each other: facts may differ from image to image (a ring of
 * lines that end on one another has to begin somewhere), so followers may, too.
 */
function evened(
  before: Drawing,
  moved: Result<Drawing>,
  transforms: readonly Transform[],
  meant: ReadonlyMap<PointId, Placement>,
): Result<Drawing> {
  if (!moved.ok) return moved;
  const index = new PointIndex(before);
  const after = moved.value;
  const seen = new Set<PointId>();
  const places = new Map<PointId, Point>();
  for (const { id } of Object.values(after.points)) {
    const point = before.points[id];
    if (point === undefined || seen.has(id)) continue;
    const orbit = transforms.map((transform) => index.at(transformPoint(transform, point))?.id);
    for (const member of orbit) if (member !== undefined) seen.add(member);
    if (orbit.every((member) => member === undefined || after.points[member] === before.points[member]))
      continue;
    const group = transforms.filter((_, k) => orbit[k] === id);
    const at = fixedBy(group, after.points[id]!);
    orbit.forEach((member, k) => {
      if (member !== undefined && after.points[member] !== undefined && !places.has(member))
        places.set(member, transformPoint(transforms[k]!, at));
    });
  }
  const changed = new Set([...places.keys(), ...meant.keys()]);
  if (places.size === 0) return ok(withFactsByPlace(after, changed));
  const moves = new Map<PointId, Placement>();
  for (const [id, at] of places) {
    const { on } = after.points[id]!;
    moves.set(id, { at, ...(on && { on }) });
  }
  const even = movePoints(after, moves);
  return ok(withFactsByPlace(even.ok ? even.value : after, changed));
}
