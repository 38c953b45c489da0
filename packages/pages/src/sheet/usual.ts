import type { LengthRange } from '@seamwright/geometry';

/** Inches, a quarter: unless the maker says otherwise. */
export const USUAL_ALLOWANCE = 0.25;

/** Inches: enough for tape, and for marks on both sides of a join. */
export const USUAL_OVERLAP = 0.5;

/** Inches. A smaller overlap has no room for the marks; a larger one wastes paper and helps no one. */
export const OVERLAP_RANGE: LengthRange = { least: 0.25, most: 2 };

/** Inches: an eighth of paper is left round every cutting line, enough to cut by eye. Common practice. */
export const USUAL_GAP = 0.25;

/** Inches. In less, the word `cut` beside a cutting line would reach into the next foundation's half of the gap. */
export const GAP_RANGE: LengthRange = { least: 0.2, most: 2 };
