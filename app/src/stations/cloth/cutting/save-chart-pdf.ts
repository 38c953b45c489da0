import { blocksText, type CutOut } from '@seamwright/cloth';
import { boundingBox, type LengthUnit } from '@seamwright/geometry';
import { type CuttingChartJob, readSize } from '@seamwright/pages';
import { colourwayInHand } from '../../../store/colourways.ts';
import { useCuttingHabits } from '../../../store/cutting-habits.ts';
import { useSettings } from '../../../store/settings.ts';
import { pattern, useWork } from '../../../store/work.ts';
import { writingWorker } from '../../../study/computing.ts';
import type { CuttingQuestion, PatternBlock } from '../../../study/cut-out.ts';
import { savePages } from './save-pages.ts';

/** Saves the chart as pages to print. */
export const saveChartPdf = (question: CuttingQuestion, answer: CutOut): Promise<void> => {
  const job = jobOf(question, answer);
  const lay = () => writingWorker.ask((worker) => worker.layChart(job));
  return savePages('cutting chart', chartFile(question), lay);
};

function jobOf(question: CuttingQuestion, { rows, plans }: CutOut): CuttingChartJob {
  const { title, unit } = pattern(useWork.getState());
  const { paper } = useSettings.getState();
  const { layers } = useCuttingHabits.getState();
  const { cut, plan } = question;
  const cutFor = cutForText(question, unit);
  const isOne = soleBlock(question) !== undefined;
  return {
    title: chartTitle(question),
    ...(isOne && { pattern: title }),
    ...{ cutFor, paper, unit, rows, plans, layers, cut, buying: plan },
  };
}

/** The only block that is cut for; undefined where there are several. */
function soleBlock({ blocks: [first, ...others] }: CuttingQuestion): PatternBlock | undefined {
  return others.every(({ blockId }) => blockId === first?.blockId) ? first : undefined;
}

/** What a chart goes by: the block, or the pattern where it is for several. */
const chartTitle = (question: CuttingQuestion): string =>
  soleBlock(question)?.title ?? pattern(useWork.getState()).title;

/** What a chart's file is called: two colourways' charts are told apart. */
export function chartFile(question: CuttingQuestion): string {
  const colourway = colourwayInHand(useWork.getState());
  return `${chartTitle(question)}${colourway === undefined ? '' : `, ${colourway.name}`}, cutting`;
}

/** `8 of Lantern at 6 × 7½ in`: on paper nothing else tells the size from that of the drawing. */
function cutForText({ blocks }: CuttingQuestion, unit: LengthUnit): string {
  return blocksText(
    blocks.map(({ title, arrangement, scale, copies, mirrored }) => {
      const { minX, minY, maxX, maxY } = boundingBox(arrangement.outline);
      const size = readSize((maxX - minX) * scale, (maxY - minY) * scale, unit);
      return { name: title, copies, mirrored, size };
    }),
    colourwayInHand(useWork.getState())?.name,
  );
}
