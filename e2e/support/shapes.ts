/** What blocks are drawn from in tests of cutting and of printing: corners, and splits from place to place, inches. It stands here because packages do not import each other’s tests. */

export type Pair = readonly [x: number, y: number];
export type Line = readonly [x1: number, y1: number, x2: number, y2: number];

export interface Shape {
  readonly outline: readonly Pair[];
  readonly splits: readonly Line[];
}

export const rectangle = (width: number, height: number): readonly Pair[] => [
  [0, 0],
  [width, 0],
  [width, height],
  [0, height],
];

/** A jib, 15.2° at the peak: the tip of its allowance is cut off square. */
export const JIB: Shape = {
  outline: [
    [0, 6],
    [1.6, 0],
    [1.6, 6],
  ],
  splits: [[0.5, 6, 1.6, 3]],
};

/** An L: its sew line runs from the notch's corner along the line of an outline edge. */
export const PIER: Shape = {
  outline: [
    [0, 0],
    [4, 0],
    [4, 2],
    [2, 2],
    [2, 5],
    [0, 5],
  ],
  splits: [[0, 2, 2, 2]],
};

/** A paper boat's hull with a keel notch: concave, the seams leave through slanting edges and the notch. */
export const BOAT: Shape = {
  outline: [
    [0, 1],
    [6, 0],
    [5, 4],
    [3.2, 2.6],
    [1, 4.2],
  ],
  splits: [
    [3.2, 2.6, 3, 0.5],
    [0.5, 2.6, 3.1, 1.55],
  ],
};
