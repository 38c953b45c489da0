import type { TemplateJob, TemplateKind } from '@seamwright/pages';
import { useSettings } from '../../../store/settings.ts';
import { currentBlock, pattern, useWork } from '../../../store/work.ts';
import { writingWorker } from '../../../study/computing.ts';
import { useCutting } from '../../../study/cut-out.ts';
import { savePages } from './save-pages.ts';
import type { InspectedPiece } from './use-inspected-piece.ts';

/** Saves a template of the piece's patch, or a window to look through, as a page to print. */
export async function saveTemplate(
  { piece: { patch }, need: { name }, block }: InspectedPiece,
  kind: TemplateKind,
): Promise<void> {
  const { question } = useCutting.getState();
  if (question === null) return;
  const work = useWork.getState();
  const { arrangement, plan, scale } = block;
  const { title, unit } = pattern(work);
  const job: TemplateJob = {
    title: currentBlock(work).name,
    pattern: title,
    arrangement,
    plan,
    patches: [patch],
    kind,
    scale,
    allowance: question.cut.allowance,
    paper: useSettings.getState().paper,
    unit,
  };
  const lay = () => writingWorker.ask((worker) => worker.layTemplates(job));
  await savePages(kind, `${job.title} ${name}, ${kind}`, lay);
}
