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
  const { title, arrangement, plan, scale, copies, mirrored } = block;
  const { title: whole, unit } = pattern(useWork.getState());
  const { allowance } = question.cut;
  const names = new Map(question.cloths.map(({ id, name }) => [id, name]));
  const fabrics = block.fabrics.map((id) => (id === null ? null : (names.get(id) ?? null)));
  const job: TemplateJob = {
    ...{ title, pattern: whole, arrangement, plan, patches, kind, scale, allowance, unit },
    ...{ fabrics, copies, mirrored },
    ...sheetWanted(),
  };
  const what = patches.length === 1 ? kind : `${kind}s`;
  await savePages(what, `${title} ${name}, ${what}`, () =>
    writingWorker.ask((worker) => worker.layTemplates(job)),
  );
}
