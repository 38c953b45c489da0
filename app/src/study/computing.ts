import { type Remote, wrap } from 'comlink';
import type { StudyWorker } from './study.worker.ts';

/** A question will not be answered: its worker was ended on purpose. */
export class Ended extends Error {
  override readonly name = 'Ended';
}

/** A worker that computes. */
export interface Computing<Asked = StudyWorker> {
  /** Rejects with {@link Ended} once the worker is ended, and with what went wrong when the worker fails. */
  readonly ask: <T>(question: (worker: Remote<Asked>) => T) => Promise<Awaited<T>>;
  /** Stops whatever it is at. */
  readonly end: () => void;
}

/** Starts a worker that studies, lays out and writes. All of them run the same script, which is loaded once. */
export const startComputing = (): Computing =>
  computing(new Worker(new URL('./study.worker.ts', import.meta.url), { type: 'module', name: 'study' }));

/** @param worker exposes `Asked`, and was just started */
export function computing<Asked = StudyWorker>(worker: Worker): Computing<Asked> {
  const remote = wrap<Asked>(worker);
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
export function whenAsked<Asked>(start: () => Computing<Asked>): Computing<Asked> {
  let current: Computing<Asked> | null = null;
  return {
    ask: (question) => {
      current ??= start();
      return current.ask(question);
    },
    end: () => {
      current?.end();
      current = null;
    },
  };
}

/** Lays out sheets. */
export const pagesWorker: Computing = whenAsked(startComputing);

/** Writes files of sheets: apart, so that sheets are laid out anew while a long file is written. */
export const writingWorker: Computing = whenAsked(startComputing);
