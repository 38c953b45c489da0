import { create } from 'zustand';
import { announce, warn } from '../../../store/notices.ts';
import { Ended, writingWorker } from '../../../study/computing.ts';

/** Something that is being made of the sheets. */
export interface UnderWay {
  /** `PDF file`, as it is said while it is made. */
  readonly what: string;
  readonly done: number;
  /** Of so many; 0 while it is not known. */
  readonly of: number;
}

/** Says how far it is. */
export type Report = (done: number, of: number) => void;

export const useOutput = create<{ readonly underWay: UnderWay | null }>()(() => ({ underWay: null }));

let giveUp: AbortController | null = null;

/**
 * Makes something of the sheets, one thing at a time. What goes wrong is said in a sentence.
 *
 * @param make resolves with what was done, in words; asks `signal` between files
 */
export async function produce(
  what: string,
  make: (report: Report, signal: AbortSignal) => Promise<string>,
): Promise<void> {
  if (giveUp !== null) return;
  giveUp = new AbortController();
  const { signal } = giveUp;
  useOutput.setState({ underWay: { what, done: 0, of: 0 } });
  const report: Report = (done, of) => {
    if (!signal.aborted) useOutput.setState({ underWay: { what, done, of } });
  };
  try {
    announce(await make(report, signal));
  } catch (error) {
    if (signal.aborted || error instanceof Ended) announce(`Making the ${what} was cancelled`);
    else if (error instanceof CannotBe) warn(error.message);
    else {
      warn(`The ${what} could not be made. Reload the page and try again; the pattern is kept.`);
      reportError(error);
    }
  } finally {
    giveUp = null;
    useOutput.setState({ underWay: null });
  }
}

/** Stops what is under way: the worker that is at it is ended, and no further file is written. */
export function cancelOutput(): void {
  giveUp?.abort();
  writingWorker.end();
}

/** What was asked for cannot be made; the message is the sentence that says so. */
export class CannotBe extends Error {}
