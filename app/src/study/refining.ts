import { type Computing, Ended, startComputing } from './computing.ts';
import type { RecordedQuestion } from './study.ts';

let worker: Computing | null = null;
let busy = false;

/** Asks the refining worker about a drawing; rejects with {@link Ended} when it is stopped meanwhile. */
export type Asking = Computing['ask'];

/**
 * Lets `work` ask about a drawing, one question after the other, for as long as nobody calls {@link stopRefining}. What
 * was being refined before is dropped.
 */
export async function refine(
  question: RecordedQuestion,
  work: (ask: Asking) => Promise<void>,
): Promise<void> {
  stopRefining();
  worker ??= startComputing();
  const { ask } = worker;
  busy = true;
  try {
    await ask((asked) => asked.begin(question));
    await work(ask);
    busy = false;
  } catch (error) {
    // Ended: a newer question has begun, with a worker of its own.
    if (error instanceof Ended) return;
    stopRefining();
    throw error;
  }
}

/**
 * A search that is under way ends with its worker. Another is started when there is something to refine: to load it now would
 * take from the quick answer that is being worked out.
 */
export function stopRefining(): void {
  if (!busy) return;
  worker?.end();
  worker = null;
  busy = false;
}
