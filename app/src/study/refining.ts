import type { AlternativeName, SewingPlan } from '@seamwright/sewing';
import { type Computing, Ended, startComputing } from './computing.ts';
import type { StudyQuestion } from './study.ts';

let worker: Computing | null = null;
let busy = false;

/**
 * Looks for the best plans, one name after the other, and gives each to `found`. What was being refined before is
 * dropped; so is this when {@link stopRefining} is called.
 */
export async function refine(
  question: StudyQuestion,
  names: readonly AlternativeName[],
  found: (name: AlternativeName, plan: SewingPlan) => void,
): Promise<void> {
  stopRefining();
  worker ??= startComputing();
  const { ask } = worker;
  busy = true;
  try {
    await ask((asked) => asked.begin(question));
    for (const name of names) found(name, await ask((asked) => asked.plan(name)));
    busy = false;
  } catch (error) {
    // Ended: a newer question has begun, with a worker of its own.
    if (error instanceof Ended) return;
    stopRefining();
    throw error;
  }
}

/** A search that is under way ends with its worker. Another is started at once, so that it is ready for the next. */
export function stopRefining(): void {
  if (!busy) return;
  worker?.end();
  worker = startComputing();
  busy = false;
}
