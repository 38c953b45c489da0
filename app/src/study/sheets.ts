import type { Problem } from '@seamwright/geometry';
import type { FoundationJob, PagePlan } from '@seamwright/pages';

/** The open block's foundations laid out on sheets: what is previewed is what is saved. */
export interface Sheets {
  readonly blockId: string;
  /** What they were laid out for. */
  readonly job: FoundationJob;
  readonly plan: PagePlan | null;
  readonly problem: Problem | null;
}
