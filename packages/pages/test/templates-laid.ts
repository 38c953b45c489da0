import { sentence } from '@seamwright/geometry';
import { layTemplates, type PagePlan, type TemplateJob } from '../src/index.ts';
import type { Block } from './blocks.ts';

/** All patches of a block, on Letter. */
export const templateJob = (of: Block, more: Partial<TemplateJob> = {}): TemplateJob => ({
  title: 'Harbour house',
  ...of,
  patches: of.plan.sections.flatMap(({ order }) => order),
  kind: 'template',
  paper: 'letter',
  ...more,
});

/** The plan of a job that must be possible. */
export function templatesLaid(job: TemplateJob): PagePlan {
  const result = layTemplates(job);
  if (!result.ok) throw new Error(sentence(result.problem));
  return result.value;
}
