import { type Remote, wrap } from 'comlink';
import type { StudyWorker } from './study.worker.ts';

/** A question will not be answered: its worker was ended on purpose. */
export class Ended extends Error {
  override readonly name = 'Ended';
}

/** A worker that computes. */
export interface Computing {
  /** Rejects with {@link Ended} once the worker is ended, and with what went wrong when the worker fails. */
  readonly ask: <T>(question: (worker: Remote<StudyWorker>) => T) => Promise<Awaited<T>>;
  /** Stops whatever it is at. */
  readonly end: () => void;
}

/** Starts a worker. All of them run the same script, which is loaded once. */
export function startComputing(): Computing {
  const worker = new Worker(new URL('./study.worker.ts', import.meta.url), { type: 'module', name: 'study' });
  const remote = wrap<StudyWorker>(worker);
  let stop = (_: Error) => {};
  const stopped = new Promise<never>((_, reject) => {
    stop = reject;
  });
  // Nobody may be asking anything when it ends.
  stopped.catch(() => undefined);
  worker.addEventListener('error', (event) => stop(new Error(event.message)));
  return {
    ask: (question) => Promise.race([question(remote), stopped]),
    end: () => {
      worker.terminate();
      stop(new Ended());
    },
  };
}

/** A worker that is started when it is first asked, and again when it was ended. */
function whenAsked(): Computing {
  let current: Computing | null = null;
  return {
    ask: (question) => {
      current ??= startComputing();
      return current.ask(question);
    },
    end: () => {
      current?.end();
      current = null;
    },
  };
}

/** Lays out sheets. */
export const pagesWorker: Computing = whenAsked();

/** Writes files of sheets: apart, so that sheets are laid out anew while a long file is written. */
export const writingWorker: Computing = whenAsked();
