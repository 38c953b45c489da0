import type { Drawing, LineId } from '@seamwright/arrangement';
import {
  type Point,
  type Result,
  type Segment,
  type Transform,
  transformSegment,
} from '@seamwright/geometry';
import { centreOf } from '../centre.ts';
import { addLines } from '../edits/add-lines.ts';
import { eraseAlong } from '../edits/erase-along.ts';
import { lineOf } from '../edits/line-of.ts';
import { deleteParts } from '../edits/parts.ts';
import { putLineEnd } from '../edits/put-line-end.ts';
import { holdersAt } from '../facts-by-place.ts';
import { drawnLines } from '../lines.ts';
import { placedAt } from '../place-at.ts';
import { addSymmetric } from './add-symmetric.ts';
import { fixedBy, fixing } from './fixed.ts';
import { movePointsSymmetric, withImages } from './move-symmetric.ts';
import { type Symmetry, transformsOf } from './symmetry.ts';

/**
 * Carries out an edit that draws lines, and draws their images, too. Ends next to an axis or the centre are put there, as in
 * {@link addSymmetric}.
 *
 * Refused: what the edit, {@link addLines} and `transformsOf` refuse.
 */
export function addRepeated(
  drawing: Drawing,
  add: (drawing: Drawing) => Result<Drawing>,
  symmetry: Symmetry,
): Result<Drawing> {
  const transforms = transformsOf(symmetry, centreOf(drawing));
  if (!transforms.ok) return transforms;
  const added = add(drawing);
  if (!added.ok || transforms.value.length === 1) return added;
  const known = new Set(drawing.splits.map(({ id }) => id));
  const fresh = [...drawnLines(added.value).values()].filter(
    ({ id, kind }) => kind === 'split' && !known.has(id),
  );
  const onAxis = ({ x, y }: Point) => fixedBy(fixing(transforms.value, { x, y }), { x, y });
  const segments = fresh.map(({ from, to }): Segment => ({ a: onAxis(from), b: onAxis(to) }));
  return addLines(drawing, imagesOfAll(segments, transforms.value));
}

/**
 * Takes away what of the splits runs along the given segments and their images; see {@link eraseAlong}.
 *
 * Refused: what {@link eraseAlong} and `transformsOf` refuse.
 */
export function eraseSymmetric(
  drawing: Drawing,
  segments: readonly Segment[],
  symmetry: Symmetry,
): Result<Drawing> {
  const transforms = transformsOf(symmetry, centreOf(drawing));
  return transforms.ok ? eraseAlong(drawing, imagesOfAll(segments, transforms.value)) : transforms;
}

const imagesOfAll = (segments: readonly Segment[], transforms: readonly Transform[]): readonly Segment[] =>
  segments.flatMap((segment) => transforms.map((transform) => transformSegment(transform, segment)));

/**
 * Puts an end of a line in a place, and the ends of its images in the images of the place; see {@link putLineEnd}.
 *
 * Refused: what {@link putLineEnd}, {@link movePointsSymmetric} and `transformsOf` refuse.
 */
export function putLineEndSymmetric(
  drawing: Drawing,
  line: LineId,
  end: 'from' | 'to',
  at: Point,
  symmetry: Symmetry,
): Result<Drawing> {
  const transforms = transformsOf(symmetry, centreOf(drawing));
  if (!transforms.ok) return transforms;
  const found = lineOf(drawing, line);
  if (!found.ok) return found;
  if (transforms.value.length === 1) return putLineEnd(drawing, line, end, at);
  const { kind, from, to } = found.value;
  const [moving, staying] = end === 'to' ? [to, from] : [from, to];
  if (kind === 'edge' || !drawing.outline.includes(moving.id)) {
    const target = { at, on: holdersAt(drawing, at, moving.id) };
    return movePointsSymmetric(drawing, new Map([[moving.id, target]]), symmetry);
  }
  // Lines that leave corners: drawn anew, as the corners stay.
  const rest = deleteParts(drawing, withImages(drawing, { points: [], lines: [line] }, symmetry));
  if (!rest.ok) return rest;
  const { x, y } = staying;
  return addSymmetric(rest.value, placedAt(rest.value, { x, y }), placedAt(rest.value, at), symmetry);
}
