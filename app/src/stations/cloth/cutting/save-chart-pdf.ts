import { blocksText, type CutOut } from '@seamwright/cloth';
import { boundingBox, type LengthUnit } from '@seamwright/geometry';
import { type CuttingChartJob, readSize } from '@seamwright/pages';
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
  return savePages('cutting chart', `${job.title}, cutting`, lay);
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
export const chartTitle = (question: CuttingQuestion): string =>
  soleBlock(question)?.title ?? pattern(useWork.getState()).title;

/** `8 of Lantern`; with the sizes where a block is cut in several. */
function cutForText({ blocks }: CuttingQuestion, unit: LengthUnit): string {
  return blocksText(
    blocks.map((block) => {
      const { blockId, title, arrangement, scale, copies, mirrored } = block;
      const counted = { name: title, copies, mirrored };
      if (blocks.filter((other) => other.blockId === blockId).length === 1) return counted;
      const { minX, minY, maxX, maxY } = boundingBox(arrangement.outline);
      return { ...counted, size: readSize((maxX - minX) * scale, (maxY - minY) * scale, unit) };
    }),
  );
}
