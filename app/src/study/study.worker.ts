import { arrange, carryPatches, type Drawing, type PatchRecord } from '@seamwright/arrangement';
import { planSewing } from '@seamwright/sewing';
import { expose } from 'comlink';
import type { StudyAnswer } from './study.ts';

/** Takes the drawing apart and plans its sewing, off the page's thread. */
function study(drawing: Drawing, records: readonly PatchRecord[]): StudyAnswer {
  const arrangement = arrange(drawing);
  if (!arrangement.ok) return { arrangement: null, problem: arrangement.problem, plan: null, records };
  return {
    arrangement: arrangement.value,
    problem: null,
    plan: planSewing(arrangement.value),
    records: carryPatches(records, arrangement.value),
  };
}

const worker = { study };
export type StudyWorker = typeof worker;
expose(worker);
