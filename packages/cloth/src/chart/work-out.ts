import type { Arrangement } from '@seamwright/arrangement';
import { ok, type Result } from '@seamwright/geometry';
import type { SewingPlan } from '@seamwright/sewing';
import { type ClothPlan, type PlanRules, planCloths } from '../buying/plan-cloths.ts';
import type { LoadSolver } from '../buying/strips/least.ts';
import { checkCutRules } from '../sizes/check-rules.ts';
import { cutPieces } from '../sizes/cut-pieces.ts';
import type { ChartRow, Cloth, CutRules, PieceCut } from '../types.ts';
import { type BlockToCut, chartOfBlocks } from './chart.ts';

/** A fabric as a pattern has it. */
interface PatternFabric {
  readonly id: string;
  readonly name: string;
  readonly width?: number;
  readonly grain?: 'straight' | 'one way';
}

/** The fabric as it is cut; of the usual width where it does not say its own. */
export const asCloth = ({ id, name, width, grain }: PatternFabric, usableWidth: number): Cloth => ({
  id,
  name,
  usableWidth: width ?? usableWidth,
  directional: grain === 'one way',
  straight: grain === 'straight',
});

/** A block that is to be cut, and how often. */
export interface BlockOfCloth {
  /** Goes before the names of its patches; left out where the block is the only one. */
  readonly name?: string;
  readonly arrangement: Arrangement;
  readonly plan: Pick<SewingPlan, 'sections'>;
  /** By patch, the id of its fabric; null where the maker chose none. */
  readonly fabrics: readonly (string | null)[];
  /** How many are sewn as drawn. */
  readonly copies: number;
  /** How many are sewn as its mirror image. */
  readonly mirrored: number;
  /** Size that is sewn ÷ size that is drawn. */
  readonly scale: number;
}

/** What is cut for blocks, and what is bought. */
export interface CutOut {
  readonly batches: readonly Required<BlockToCut>[];
  /** The pieces of all blocks, in order. */
  readonly pieces: readonly PieceCut[];
  readonly rows: readonly ChartRow[];
  readonly plans: readonly ClothPlan[];
}

/**
 * Everything between sewn blocks and the shop: pieces, chart, strips, what to buy.
 *
 * Problems: those of {@link checkCutRules} and {@link planCloths}.
 *
 * @param load left out, strips are planned without the solver
 */
export async function workOut(
  blocks: readonly BlockOfCloth[],
  cloths: readonly Cloth[],
  rules: { readonly cut: CutRules; readonly plan: PlanRules },
  load?: LoadSolver,
): Promise<Result<CutOut>> {
  const checked = checkCutRules(rules.cut);
  if (!checked.ok) return checked;
  const byId = new Map(cloths.map((cloth) => [cloth.id, cloth]));
  const batches = blocks.map(({ name, arrangement, plan, fabrics, copies, mirrored, scale }) => {
    const pieces = cutPieces({
      arrangement,
      plan,
      rules: rules.cut,
      clothOf: (patch) => byId.get(fabrics[patch] ?? '') ?? null,
      copies: copies + mirrored,
      scale,
    });
    return {
      pieces:
        name === undefined ? pieces : pieces.map((piece) => ({ ...piece, name: `${name} ${piece.name}` })),
      blocks: copies,
      mirrored,
    };
  });
  const rows = chartOfBlocks(batches, { cloths });
  const plans = await planCloths(rows, cloths, rules.plan, load);
  if (!plans.ok) return plans;
  return ok({ batches, pieces: batches.flatMap(({ pieces }) => pieces), rows, plans: plans.value });
}

/** The chart as it is shown: by section where that is asked for; what is bought is reckoned without sections. */
export const shownRows = ({ batches, rows, plans }: CutOut, bySection: boolean): readonly ChartRow[] =>
  bySection ? chartOfBlocks(batches, { cloths: plans.map(({ cloth }) => cloth), bySection }) : rows;
