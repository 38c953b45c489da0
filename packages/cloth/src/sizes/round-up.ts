import { SAME_COORDINATE } from '@seamwright/geometry';

/**
 * The least whole multiple of `step` that is no less than `size`, in steps; a size that is on a step but for the
 * rounding of its coordinates ({@link SAME_COORDINATE}) stays there.
 */
export const stepsUp = (size: number, step: number): number =>
  Math.max(1, Math.ceil((size - SAME_COORDINATE) / step));
