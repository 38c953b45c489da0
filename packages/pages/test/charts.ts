import {
  type BlockOfCloth,
  blocksText,
  type Cloth,
  type CutRules,
  PLAIN_RULES,
  USUAL_CUTS,
  workOut,
} from '@seamwright/cloth';
import { sentence } from '@seamwright/geometry';
import { type CuttingChartJob, layCuttingChart, type PagePlan } from '../src/index.ts';
import type { Block } from './blocks.ts';

/** What a chart is made for: blocks by name, each patch from one of the fabrics in turn. */
export interface Cutting {
  readonly blocks: readonly (readonly [name: string, block: Block])[];
  readonly cloths: readonly Cloth[];
  readonly copies?: number;
  readonly rules?: Partial<CutRules>;
}

export const cloth = (id: string, name: string, more: Partial<Cloth> = {}): Cloth => ({
  id,
  name,
  usableWidth: 40,
  directional: false,
  ...more,
});

/** The chart as a job for Letter, in inches. */
export async function chartJob(
  { blocks, cloths, copies = 1, rules }: Cutting,
  more: Partial<CuttingChartJob> = {},
): Promise<CuttingChartJob> {
  const cut = { ...USUAL_CUTS, ...rules };
  const asked = blocks.map(
    ([name, { arrangement, plan }]): BlockOfCloth => ({
      ...(blocks.length > 1 && { name }),
      arrangement,
      plan,
      fabrics: arrangement.patches.map(({ index }) => cloths[index % Math.max(cloths.length, 1)]?.id ?? null),
      copies,
      mirrored: 0,
      scale: 1,
    }),
  );
  const worked = await workOut(asked, cloths, { cut, plan: PLAIN_RULES });
  if (!worked.ok) throw new Error(sentence(worked.problem));
  const { rows, plans } = worked.value;
  return {
    title: blocks[0]![0],
    cutFor: blocksText(blocks.map(([name]) => ({ name, copies, mirrored: 0 }))),
    paper: 'letter',
    rows,
    plans,
    layers: 2,
    cut,
    buying: PLAIN_RULES,
    ...more,
  };
}

/** The plan of a chart that must be possible. */
export function chartLaid(job: CuttingChartJob): PagePlan {
  const result = layCuttingChart(job);
  if (!result.ok) throw new Error(sentence(result.problem));
  return result.value;
}
