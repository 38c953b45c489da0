import { type BuyingRules, type ChartRow, type ClothPlan, type CutRules, LAYERS } from '@seamwright/cloth';
import { fail, type LengthUnit, ok, type Result } from '@seamwright/geometry';
import { checkSheet, cleanName } from '../job.ts';
import type { Margins, Paper, PaperChoice } from '../sheet/paper.ts';

/** A cutting chart that is to be printed. */
export interface CuttingChartJob {
  /** The block's name, or the pattern's where the chart is for all its blocks; may be empty, may be in any script. */
  readonly title: string;
  /** The name of the pattern that the block belongs to; left out or empty when it belongs to none. */
  readonly pattern?: string;
  /** What is cut for, as `blocksText` says it: `8 of Lantern`. */
  readonly cutFor: string;
  readonly paper: PaperChoice;
  /** What is left blank at the sheet's edges; 1/4 in at each when left out. */
  readonly margins?: Margins;
  /** The unit in which lengths are written; inches when left out. */
  readonly unit?: LengthUnit;
  /** By size, or by section and size. */
  readonly rows: readonly ChartRow[];
  /** One for each fabric of the rows, in the order in which they are printed. */
  readonly plans: readonly ClothPlan[];
  /** How many layers are cut at once, from 1 to 8. */
  readonly layers: number;
  /** By which the sizes were worked out. */
  readonly cut: CutRules;
  /** By which it was worked out what is bought. */
  readonly buying: Pick<BuyingRules, 'shrinkage' | 'safety'>;
}

/** A chart that can be laid out: checked, defaults filled in, names cleaned. */
export interface CheckedChart extends CuttingChartJob {
  readonly pattern: string;
  readonly unit: LengthUnit;
  readonly page: Paper;
  readonly margins: Margins;
}

export function checkChart(job: CuttingChartJob): Result<CheckedChart> {
  const { unit = 'in', layers } = job;
  const room = checkSheet(job, unit);
  if (!room.ok) return room;
  const { page, margins } = room.value;
  if (!Number.isInteger(layers) || layers < LAYERS.least || layers > LAYERS.most)
    return fail(`Fabric is not cut in ${layers} layers`, '', `Choose from ${LAYERS.least} to ${LAYERS.most}`);
  if (job.rows.length === 0) return fail('There is nothing to cut', '', 'Choose a block that can be sewn');
  const cutFor = cleanName(job.cutFor);
  const pattern = cleanName(job.pattern ?? '');
  return ok({
    ...job,
    title: cleanName(job.title) || 'Untitled block',
    pattern,
    cutFor,
    unit,
    page,
    margins,
  });
}
