import { type ChartRow, type CutOut, chartOfBlocks } from '@seamwright/cloth';
import type { CuttingOrder } from './order.ts';

/** By section where it is asked for; what is bought is reckoned without sections. */
export const chartOf = (
  { batches, rows, plans }: CutOut,
  { bySection }: CuttingOrder,
): readonly ChartRow[] =>
  bySection ? chartOfBlocks(batches, { cloths: plans.map(({ cloth }) => cloth), bySection }) : rows;
