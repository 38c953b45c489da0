import { fail, ok, type Result } from '@seamwright/geometry';
import type { Strip, SubCut } from '../buying/plan-strips.ts';

/** Strips of one height, and what is cut from them: one step of batch cutting. */
export interface BatchStep {
  /** Inches. */
  readonly height: number;
  /** How many strips of this height are cut across the fabric; each is one run of the cutter. */
  readonly strips: number;
  /** The strips by what is cut from them. */
  readonly groups: readonly {
    readonly strips: number;
    readonly cuts: readonly SubCut[];
    /** Strips lie on each other, so many layers deep: runs of the cutter, one for each piece, two where it is trimmed. */
    readonly runs: number;
    /** What is left at the end of each strip, inches. */
    readonly leftover: number;
  }[];
}

/** Fabric folded once lies in 2 layers, folded twice in 4. */
export const LAYERS = { least: 1, most: 8, usual: 2 } as const;

/**
 * The steps in which the strips of a plan are cut, the highest first.
 *
 * Problem: layers that are no whole number from 1 to 8.
 *
 * @param layers how many layers of fabric are cut at once
 */
export function batchSteps(strips: readonly Strip[], layers: number): Result<BatchStep[]> {
  if (!Number.isInteger(layers) || layers < LAYERS.least || layers > LAYERS.most)
    return fail(`Fabric is not cut in ${layers} layers`, '', `Choose from ${LAYERS.least} to ${LAYERS.most}`);
  const heights = [...new Set(strips.map(({ height }) => height))].sort((a, b) => b - a);
  return ok(
    heights.map((height) => {
      const alike = strips.filter((strip) => strip.height === height);
      return {
        height,
        strips: alike.reduce((sum, { count }) => sum + count, 0),
        groups: alike.map(({ count, cuts, leftover }) => ({
          strips: count,
          cuts,
          runs:
            Math.ceil(count / layers) *
            cuts.reduce((sum, cut) => sum + cut.count * (cut.height === undefined ? 1 : 2), 0),
          leftover,
        })),
      };
    }),
  );
}
