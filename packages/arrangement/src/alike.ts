import {
  distance,
  motionsOnto,
  type Polygon,
  perimeter,
  SNAP_DISTANCE,
  STRAIGHT_WITHIN,
  transformPoint,
  withoutFlatCorners,
} from '@seamwright/geometry';
import type { Arrangement, Patch } from './types.ts';

/**
 * The patches in the same place as one: those that it comes to lie on when the block is turned so that its outline lies on
 * itself; with `turnedOver`, also when it is turned over. (A pinwheel's blades are in the same place by turns alone, the
 * points of a star by mirrors too.) Itself is among them. Corners may miss by {@link SNAP_DISTANCE}, as drawn ends may.
 *
 * @returns indices, ascending
 */
export function inTheSamePlace(
  { patches, outline }: Arrangement,
  patch: Patch,
  turnedOver: boolean,
): readonly number[] {
  const block = corners(outline);
  const shape = corners(patch.polygon);
  const found = new Set([patch.index]);
  for (const { transform, mirrored } of motionsOnto(block, block, SNAP_DISTANCE)) {
    if (mirrored && !turnedOver) continue;
    const image = shape.map((corner) => transformPoint(transform, corner));
    const there = patches.find(
      (one) => isAsLarge(one, patch) && haveSameCorners(image, corners(one.polygon)),
    );
    if (there !== undefined) found.add(there.index);
  }
  return [...found].sort((a, b) => a - b);
}

/**
 * The patches of the same shape as one, wherever they lie, turned and turned over too. Itself is among them.
 *
 * @returns indices, ascending
 */
export function ofTheSameShape({ patches }: Arrangement, patch: Patch): readonly number[] {
  const shape = corners(patch.polygon);
  return patches
    .filter((one) => isAsLarge(one, patch) && areCongruent(shape, corners(one.polygon)))
    .map(({ index }) => index);
}

const areCongruent = (shape: Polygon, other: Polygon): boolean =>
  motionsOnto(shape, other, SNAP_DISTANCE).next().done !== true;

/** Whether two areas are the same but for corners that miss: holes are taken off, so a hole tells shapes apart. */
const isAsLarge = (one: Patch, other: Patch): boolean =>
  Math.abs(one.area - other.area) <= perimeter(other.polygon) * SNAP_DISTANCE;

const haveSameCorners = (image: Polygon, polygon: Polygon): boolean =>
  image.length === polygon.length && image.every((p) => polygon.some((q) => distance(p, q) <= SNAP_DISTANCE));

/** The corners that a sewer sees: without those at which a seam of a neighbour ends. */
function corners(polygon: Polygon): Polygon {
  const left = withoutFlatCorners(polygon, STRAIGHT_WITHIN);
  // A sliver has corners all the same.
  return left.length < 3 ? polygon : left;
}
