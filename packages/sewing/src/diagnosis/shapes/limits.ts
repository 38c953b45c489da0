/** From where on a shape is worth a word; the maker's choice. */
export interface ShapeLimits {
  /** Inches: a patch that is narrower than this where it matters is a sliver. 0: none is. */
  readonly narrowest: number;
  /** Degrees: a patch's corner that is sharper is a sharp point. 0: none is. */
  readonly sharpest: number;
  /** Inches: a patch is small when the largest circle in it, as printed, is less wide. 0: none is. */
  readonly leastSize: number;
  /** The smallest size at which the block is to be printed, 1 for the size that is drawn. */
  readonly smallestScale: number;
}

/**
 * - 1/8 in is half a seam allowance: the allowances of a seam on either side of a narrower patch overlap by more than half
 *   (common practice: nothing narrower is pieced)
 * - the points of an eight-pointed star have 45°, of one with 24 points still 15°; below that the seams at a point come to lie
 *   in each other's allowance for an inch and more
 * - no size is too small for everyone
 */
export const SHAPE_LIMITS: ShapeLimits = { narrowest: 1 / 8, sharpest: 15, leastSize: 0, smallestScale: 1 };
