import type { Point } from '@seamwright/geometry';

/**
 * A patch as the document remembers it: enough to know it again in the next arrangement, and what the maker gave
 * it.
 */
export interface PatchRecord {
  /** Never used again for another patch of the block. */
  readonly id: string;
  /** {@link Patch.signature} when it was last seen. */
  readonly signature: string;
  /** {@link Patch.heart} when it was last seen. */
  readonly at: Point;
  /** The maker's own words, e.g. `sail`; empty when none. */
  readonly note: string;
}
