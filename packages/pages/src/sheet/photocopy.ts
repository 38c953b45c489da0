import { USUAL_ALLOWANCE } from './usual.ts';

/** What a photocopier makes of a seam allowance at one percentage. */
export interface PhotocopyRow {
  readonly percentage: number;
  /** What the allowance measures on the copy, inches. */
  readonly becomes: number;
  /** How much too wide it then is, inches; too narrow when below 0. */
  readonly off: number;
}

export interface PhotocopyTable {
  readonly allowance: number;
  readonly rows: readonly PhotocopyRow[];
  /** Why not to do it, and what to do instead. */
  readonly why: string;
}

/**
 * What enlarging or reducing a foundation on a photocopier does to its seam allowance: it grows and shrinks with the block,
 * allowance × percentage ÷ 100 (exact).
 *
 * @param percentages above 0
 */
export const photocopyTable = (
  percentages: readonly number[],
  allowance: number = USUAL_ALLOWANCE,
): PhotocopyTable => ({
  allowance,
  rows: percentages.map((percentage) => {
    const becomes = (allowance * percentage) / 100;
    return { percentage, becomes, off: becomes - allowance };
  }),
  why: 'A photocopier changes the seam allowance with the block: sections trimmed by it no longer fit the ones beside them. Print the size that you want instead; the allowance then stays what it is.',
});
