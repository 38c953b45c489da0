/**
 * What is to be cut, and from what. Lengths are inches; angles are degrees clockwise on the screen from the block's
 * x axis; patches are known by their index in the arrangement, fabrics by their id in the pattern.
 */

/** How pieces are cut, as the maker wants it. */
export interface CutRules {
  /** Seam allowance on every side of the finished patch. */
  readonly allowance: number;
  /** How far off a piece may be laid, in any direction, and still cover its patch and the allowance. */
  readonly spare: number;
  /** Degrees by which it may be turned at the same time, either way. */
  readonly turn: number;
  /** Cut sizes are rounded up to whole multiples of it. */
  readonly roundUpTo: number;
}

/** How fabric comes, and how it may be laid. */
export interface Cloth {
  readonly id: string;
  readonly name: string;
  /** Usable width of the fabric, selvedges off. */
  readonly usableWidth: number;
  /** The print has an up: pieces lie along the grain and are not turned in the layout. */
  readonly directional: boolean;
  /** Pieces lie along the grain, either way up: they are not turned by a quarter, but the halves of a rectangle both serve. */
  readonly straight?: boolean;
}

/** Whether a piece of it may be turned by a quarter where it is cut. */
export const mayTurn = ({ directional, straight = false }: Cloth): boolean => !directional && !straight;

/**
 * A rectangle, or the triangle that is half of it, cut corner to corner. The triangle's right angle is where width and
 * height begin, the height a quarter turn clockwise from the width: laid width across, it is cut from the bottom left to
 * the top right. So half of 2 × 4 and half of 4 × 2 are mirror images.
 */
export type CutShape = 'rectangle' | 'half-rectangle';

/** The piece of fabric that is cut for one patch. */
export interface PieceCut {
  readonly patch: number;
  /** Letter of the section and place in its order: `A1`. */
  readonly name: string;
  /** Id of its fabric; null where the maker chose none. */
  readonly cloth: string | null;
  readonly shape: CutShape;
  /**
   * Size of the rectangle that is cut, rounded up; of a half-rectangle, of the whole one. Seen from its right side, a
   * half-rectangle has its right angle where both begin, and `height` runs a quarter turn clockwise from `width`; so a
   * half of 2 × 3 is the mirror image of a half of 3 × 2, and never comes from the same rectangle.
   */
  readonly width: number;
  readonly height: number;
  /** Direction of the width on the block: 0 … 180 for rectangles, 0 … 360 for half-rectangles. */
  readonly angle: number;
  /**
   * How far off true it may be laid (below 0 where even laid true it does not cover), and how far it may be turned
   * (180: all the way round), each alone, and still cover.
   */
  readonly toleranceShift: number;
  readonly toleranceAngle: number;
  /** Whether an edge of it on the block's outside is cut on the bias, and along the block's upright would not be. */
  readonly outerBias?: true;
}

/** Pieces that are cut alike. */
export interface ChartRow {
  readonly cloth: string | null;
  /** Letter of the section that they are for, in a chart by section. */
  readonly section?: string;
  readonly shape: CutShape;
  readonly width: number;
  readonly height: number;
  /** How many rectangles are cut, and how many pieces they give. */
  readonly cut: number;
  readonly yields: number;
  /** Names of the patches that they are for, each once. */
  readonly pieces: readonly string[];
  /** Those of them with {@link PieceCut.outerBias}; left out where there are none. */
  readonly outerBias?: readonly string[];
}
