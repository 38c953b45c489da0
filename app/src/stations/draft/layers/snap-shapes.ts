import type { SnapKind } from '@seamwright/drafting';

/** CSS pixels: half the size of a mark. */
export const MARK = 8;

const R = MARK;

/** A mark in strokes, CSS pixels about the place that it marks; a number: a ring of that radius. */
export interface SnapShape {
  readonly strokes: readonly (readonly number[])[];
  readonly closed?: boolean;
  readonly ring?: number;
  readonly dot?: number;
}

const DIAMOND = [0, -R, R, 0, 0, R, -R, 0];

/** What marks each kind of place that catches: on the drawing, and in the list of kinds. */
export const SNAP_SHAPES: Readonly<Record<SnapKind, SnapShape>> = {
  corner: { strokes: [[-R, -R, R, -R, R, R, -R, R]], closed: true },
  end: { strokes: [], ring: R },
  crossing: {
    strokes: [
      [-R, R, R, -R],
      [-R, -R, R, R],
    ],
  },
  middle: { strokes: [[0, -R - 2, R + 1, R - 1, -R - 1, R - 1]], closed: true },
  line: { strokes: [DIAMOND], closed: true },
  // A diamond that is cut by the edge of the block.
  edge: { strokes: [DIAMOND, [-R, 0, R, 0]], closed: true },
  grid: {
    strokes: [
      [-R, 0, R, 0],
      [0, -R, 0, R],
    ],
  },
  // A foot with an upright on it.
  perpendicular: {
    strokes: [
      [-R, R, R, R],
      [0, R, 0, -R],
      [0, R - 6, 6, R - 6, 6, R],
    ],
  },
  // Two strokes that run beside each other.
  parallel: {
    strokes: [
      [-R, 3, 1, -R],
      [-1, R, R, -3],
    ],
  },
  // Two bars of one length, as the sign of equality.
  equal: {
    strokes: [
      [-R, -4, R, -4],
      [-R, 4, R, 4],
    ],
  },
  // Two legs and the turn between them.
  angle: {
    strokes: [
      [R, -R, -R, R, R, R],
      [1, 1, 3, 4, 4, R],
    ],
  },
  free: { strokes: [], dot: 3 },
};
