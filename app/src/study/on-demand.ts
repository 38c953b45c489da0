import type { Remote } from 'comlink';
import { create, type StoreApi, type UseBoundStore } from 'zustand';
import { warn } from '../store/notices.ts';
import type { Computing } from './computing.ts';
import type { CutOutWorker } from './cut-out.worker.ts';
import { startCutting } from './start-cutting.ts';

/** What is worked out only when it is asked for, as it takes long. */
export interface Asked<Subject, Answer> {
  /** What was asked about; null where nothing is. */
  readonly of: Subject | null;
  /** Null while it is worked out. */
  readonly answer: Answer | null;
}

export interface OnDemand<Subject, Answer> {
  readonly useAsked: UseBoundStore<StoreApi<Asked<Subject, Answer>>>;
  /** Works it out anew; what was asked before is given up. */
  readonly ask: (subject: Subject) => void;
  /** Gives up what is under way, and forgets what was found. */
  readonly forget: () => void;
}

/**
 * Something that a worker of its own works out when asked, and that can be given up at any moment.
 *
 * @param work asks the worker
 * @param failed the sentence for when it fails
 */
export function onDemand<Subject, Answer>(
  work: (worker: Remote<CutOutWorker>, subject: Subject) => Promise<Answer>,
  failed: string,
): OnDemand<Subject, Answer> {
  const useAsked = create<Asked<Subject, Answer>>()(() => ({ of: null, answer: null }));
  let worker: Computing<CutOutWorker> | null = null;
  const stop = () => {
    worker?.end();
    worker = null;
  };
  const run = async (mine: Computing<CutOutWorker>, subject: Subject) => {
    try {
      const answer = await mine.ask((asked) => work(asked, subject));
      if (mine !== worker) return;
      stop();
      useAsked.setState({ of: subject, answer });
    } catch (error) {
      if (mine !== worker) return;
      stop();
      useAsked.setState({ of: null, answer: null });
      warn(failed);
      reportError(error);
    }
  };
  return {
    useAsked,
    ask: (subject) => {
      stop();
      useAsked.setState({ of: subject, answer: null });
      worker = startCutting();
      void run(worker, subject);
    },
    forget: () => {
      stop();
      useAsked.setState({ of: null, answer: null });
    },
  };
}
