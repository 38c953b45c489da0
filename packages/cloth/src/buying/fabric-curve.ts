import { fail, ok, type Result } from '@seamwright/geometry';
import { cuttingChart } from '../chart/chart.ts';
import type { Cloth, PieceCut } from '../types.ts';
import { type ClothPlan, type PlanRules, planCloths } from './plan-cloths.ts';
import type { LoadSolver } from './strips/least.ts';

/** What blocks of one finished size take. */
export interface SizedNeed {
  /** Finished size, inches. */
  readonly size: number;
  /** Of all fabrics together. */
  readonly lengthInches: number;
  readonly buyYards: number;
  readonly buyMetres: number;
  /**
   * The fabric has grown more than the area since the size before: pieces just ceased to fit once more into a strip.
   * A little smaller saves much.
   */
  readonly isPastCliff: boolean;
}

/**
 * How the fabric needed changes with the block's finished size.
 *
 * Problems: those of `piecesAt` and of {@link planCloths}; sizes that do not rise; a piece too large for its fabric.
 *
 * @param sizes finished sizes, rising, inches
 * @param piecesAt the cut pieces of the block at a finished size
 * @param blocks how many are sewn
 */
export async function fabricCurve(
  sizes: readonly number[],
  piecesAt: (size: number) => Result<readonly PieceCut[]>,
  {
    blocks,
    cloths,
    rules,
  }: { readonly blocks: number; readonly cloths: readonly Cloth[]; readonly rules: PlanRules },
  load?: LoadSolver,
): Promise<Result<SizedNeed[]>> {
  const needs: SizedNeed[] = [];
  for (const size of sizes) {
    const before = needs.at(-1);
    if (!(size > (before?.size ?? 0)))
      return fail('The sizes do not rise', `${size}`, 'Give them from small to large, above 0');
    const pieces = piecesAt(size);
    if (!pieces.ok) return pieces;
    const planned = await planCloths(
      cuttingChart(pieces.value, { blocks, cloths }),
      cloths,
      { ...rules, sheets: [] },
      load,
    );
    if (!planned.ok) return planned;
    const plans = planned.value;
    const large = plans.flatMap(({ plan }) => plan.tooLarge);
    if (large.length > 0)
      return fail('A piece is wider than its fabric both ways', `at ${size} in`, 'End with a smaller size');
    const sum = (value: (plan: ClothPlan) => number) => plans.reduce((total, plan) => total + value(plan), 0);
    const lengthInches = sum(({ plan }) => plan.lengthInches);
    needs.push({
      size,
      lengthInches,
      buyYards: sum(({ purchase }) => purchase.buyYards),
      buyMetres: sum(({ purchase }) => purchase.buyMetres),
      isPastCliff: before !== undefined && lengthInches / size ** 2 > before.lengthInches / before.size ** 2,
    });
  }
  return ok(needs);
}
