import { arrange, carryPatches, type Drawing, type PatchRecord } from '@seamwright/arrangement';
import type { Result } from '@seamwright/geometry';
import {
  type FoundationJob,
  layFoundations,
  type PageFonts,
  type PagePlan,
  writePdf,
} from '@seamwright/pages';
import { planSewing } from '@seamwright/sewing';
import { expose, transfer } from 'comlink';
import type { StudyAnswer } from './study.ts';

/** What is computed off the page's thread. */
const worker = {
  /** Takes the drawing apart and plans its sewing. */
  study(drawing: Drawing, records: readonly PatchRecord[]): StudyAnswer {
    const arrangement = arrange(drawing);
    if (!arrangement.ok) return { arrangement: null, problem: arrangement.problem, plan: null, records };
    return {
      arrangement: arrangement.value,
      problem: null,
      plan: planSewing(arrangement.value),
      records: carryPatches(records, arrangement.value),
    };
  },

  layOut(job: FoundationJob): Result<PagePlan> {
    return layFoundations(job);
  },

  async pdf(plan: PagePlan, fonts: PageFonts): Promise<Uint8Array> {
    const bytes = await writePdf(plan, fonts);
    return transfer(bytes, [bytes.buffer]);
  },
};

export type StudyWorker = typeof worker;
expose(worker);
