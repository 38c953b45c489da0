import { type Grid, gridInParts } from '@seamwright/drafting';
import type { Block } from '@seamwright/pattern';

/** The drawing grid of a block: so many parts of it, or lines at equal distances from its origin. */
export const gridOf = ({ drawing, grid, gridParts }: Block): Grid =>
  gridParts === undefined
    ? { origin: { x: 0, y: 0 }, across: grid, down: grid }
    : gridInParts(drawing, gridParts);
