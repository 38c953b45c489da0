import { blocksText, type CutOut } from '@seamwright/cloth';
import { boundingBox, formatSize, type LengthUnit } from '@seamwright/geometry';
import type { CuttingChartJob } from '@seamwright/pages';
import { useCuttingHabits } from '../../../store/cutting-habits.ts';
import { useSettings } from '../../../store/settings.ts';
import { currentBlock, pattern, useWork } from '../../../store/work.ts';
import { writingWorker } from '../../../study/computing.ts';
import type { CuttingQuestion } from '../../../study/cut-out.ts';
import { savePages } from './save-pages.ts';

/** Saves the chart as pages to print. */
export const saveChartPdf = (question: CuttingQuestion, answer: CutOut): Promise<void> => {
  const job = jobOf(question, answer);
  const lay = () => writingWorker.ask((worker) => worker.layChart(job));
  return savePages('cutting chart', `${job.title}, cutting`, lay);
};

function jobOf(question: CuttingQuestion, { rows, plans }: CutOut): CuttingChartJob {
  const work = useWork.getState();
  const { title, unit } = pattern(work);
  const { name } = currentBlock(work);
  const { paper } = useSettings.getState();
  const { layers } = useCuttingHabits.getState();
  const { cut, plan } = question;
  const cutFor = cutForText(name, question, unit);
  return { title: name, pattern: title, cutFor, paper, unit, rows, plans, layers, cut, buying: plan };
}

/** `8 of Lantern`; with the sizes where there are several. */
function cutForText(name: string, { blocks }: CuttingQuestion, unit: LengthUnit): string {
  const texts = blocks.map(({ arrangement, scale, ...counts }) => {
    const { minX, minY, maxX, maxY } = boundingBox(arrangement.outline);
    const size = formatSize((maxX - minX) * scale, (maxY - minY) * scale, unit);
    return blocks.length === 1 ? blocksText([name], counts) : `${blocksText([name], counts)} at ${size}`;
  });
  return texts.join(', ');
}
