import { sentence } from '@seamwright/geometry';
import { type FoundationJob, layFoundations, type PagePlan } from '../src/index.ts';

/** The plan of a job that must be possible. */
export function laid(job: FoundationJob): PagePlan {
  const result = layFoundations(job);
  if (!result.ok) throw new Error(sentence(result.problem));
  return result.value;
}
