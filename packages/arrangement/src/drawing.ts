import type { Point } from '@seamwright/geometry';

/** Names a point of a drawing; unique within the drawing. */
export type PointId = string;

/** Names a line of a drawing: a split's own id, or {@link edgeId} of an edge of the outline. */
export type LineId = string;

/**
 * A point that the maker placed. Lines that meet there share it, so moving it moves them all.
 *
 * Coordinates are inches on the finished block. `on` holds the facts of the drawing that are not to be found
 * again from rounded coordinates: lines on which the point was placed, other than the ones that end in it. One
 * line: the point slides on it. Two: it is their crossing.
 */
export interface DrawingPoint extends Point {
  readonly id: PointId;
  readonly on?: readonly LineId[];
}

/** A straight line that divides the block, from one point of the drawing to another. */
export interface Split {
  readonly id: LineId;
  readonly from: PointId;
  readonly to: PointId;
}

/** What the maker drew: a closed outline through `outline`'s points, and splits. Plain data, never changed in place. */
export interface Drawing {
  readonly points: Readonly<Record<PointId, DrawingPoint>>;
  /** Corners in order; the last is joined to the first. */
  readonly outline: readonly PointId[];
  readonly splits: readonly Split[];
}

/** The id of the outline's edge that starts at `corner` and runs to the next corner. */
export const edgeId = (corner: PointId): LineId => `edge:${corner}`;

/** The most lines that place a point: one to slide on, two that cross. A third could not be kept true. */
export const MOST_FACTS = 2;
