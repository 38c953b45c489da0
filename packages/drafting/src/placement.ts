import type { LineId, PointId } from '@seamwright/arrangement';
import type { Point } from '@seamwright/geometry';

/**
 * Where the maker put something down, with what is known of the place: a point that is there already, or the
 * lines it is on. Every {@link Snap} is one; typed coordinates become one by {@link placeExactly}.
 */
export interface Placement {
  /** Inches on the block. */
  readonly at: Point;
  /** The drawing's point that was caught; `at` is then its place. */
  readonly point?: PointId;
  /** The lines that were caught: one to slide on, two that cross here. Never together with `point`. */
  readonly on?: readonly LineId[];
}
