import type { CuttingQuestion, PatternBlock } from '../../../study/cut-out.ts';

/** What is looked at before cutting. */
export interface AheadProps {
  readonly question: CuttingQuestion;
  /** The open block in the size that is looked at closely. */
  readonly block: PatternBlock;
}
