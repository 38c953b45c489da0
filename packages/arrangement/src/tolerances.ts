import { SAME_COORDINATE, SNAP_DISTANCE, STRAIGHT_WITHIN } from '@seamwright/geometry';

/** How forgiving one attempt at an arrangement is, inches. */
export interface Tolerances {
  /** {@link SNAP_DISTANCE} or less. */
  readonly snap: number;
  /** {@link STRAIGHT_WITHIN} or less. */
  readonly straight: number;
}

/**
 * From the most forgiving to the strictest. A drawing whose lines run closer together than the first can tell
 * apart (the result is then no plane drawing, which is noticed) is tried again with the next.
 */
export const ATTEMPTS: readonly Tolerances[] = [
  { snap: SNAP_DISTANCE, straight: STRAIGHT_WITHIN },
  { snap: SNAP_DISTANCE / 16, straight: STRAIGHT_WITHIN / 16 },
  { snap: 4 * SAME_COORDINATE, straight: 2 * SAME_COORDINATE },
];
