import type { TemplateJob, TemplateKind } from '@seamwright/pages';
import { pattern, useWork } from '../../../store/work.ts';
import { writingWorker } from '../../../study/computing.ts';
import { type PatternBlock, useCutting } from '../../../study/cut-out.ts';
import { sheetWanted } from '../../../study/foundation-job.ts';
import { savePages } from './save-pages.ts';

/** Patches whose templates are saved together. */
export interface TemplatesOf {
  readonly block: PatternBlock;
  /** By index. */
  readonly patches: readonly number[];
  /** `A1`, `section A` */
  readonly name: string;
}

/** Saves templates of patches, or windows to look through, as pages to print. */
export async function saveTemplates(
  { block, patches, name }: TemplatesOf,
  kind: TemplateKind,
): Promise<void> {
  const { question } = useCutting.getState();
  if (question === null) return;
  const { title, arrangement, plan, scale } = block;
  const { title: whole, unit } = pattern(useWork.getState());
  const { allowance } = question.cut;
  const job: TemplateJob = {
    ...{ title, pattern: whole, arrangement, plan, patches, kind, scale, allowance, unit },
    ...sheetWanted(),
  };
  const what = patches.length === 1 ? kind : `${kind}s`;
  await savePages(what, `${title} ${name}, ${what}`, () =>
    writingWorker.ask((worker) => worker.layTemplates(job)),
  );
}
