import { type Computing, Ended, startComputing } from './computing.ts';
import { LONGEST_STUDY, nothing, tooLong } from './limits.ts';
import type { StudyAnswer, StudyQuestion } from './study.ts';

/** Milliseconds: a question that has been out for longer is dropped when there is a newer one. */
const WORTH_WAITING = 1500;

let worker: Computing | null = null;
let since: number | null = null;

/**
 * The quick answer; null where the question was dropped for a newer one. A drawing that takes too long is given up,
 * with a problem that says so.
 */
export async function quickAnswer(question: StudyQuestion): Promise<StudyAnswer | null> {
  worker ??= startComputing();
  since = performance.now();
  let tooSlow = false;
  const timer = setTimeout(() => {
    tooSlow = true;
    drop();
  }, LONGEST_STUDY);
  try {
    return await worker.ask((asked) => asked.study(question));
  } catch (error) {
    drop();
    if (!(error instanceof Ended)) throw error;
    if (!tooSlow) return null;
    const { drawing, records } = question;
    return nothing(tooLong(drawing.splits.length), records);
  } finally {
    clearTimeout(timer);
    since = null;
  }
}

/** Called when there is a newer question: one that takes long is not waited for. */
export function dropSlowQuestion(): void {
  if (since !== null && performance.now() - since > WORTH_WAITING) drop();
}

function drop(): void {
  worker?.end();
  worker = null;
}
