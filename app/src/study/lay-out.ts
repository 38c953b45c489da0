import type { Problem } from '@seamwright/geometry';
import type { FoundationJob, Progress } from '@seamwright/pages';
import { proxy } from 'comlink';
import { create } from 'zustand';
import { useCuttingHabits } from '../store/cutting-habits.ts';
import { tell } from '../store/notices.ts';
import { usePrinters } from '../store/printers.ts';
import { setting, useSettings } from '../store/settings.ts';
import { currentBlock, useWork } from '../store/work.ts';
import { Ended, pagesWorker } from './computing.ts';
import { foundationJob, sameJob } from './foundation-job.ts';

/** Milliseconds of quiet before sheets are laid out: not at every step of a drag. */
const QUIET = 150;

/** Milliseconds after which sheets that nobody wants any more are not waited for. */
const SLOW = 1000;

/** The sheets that are being laid out. */
export interface Laying {
  /** The block that they are of. */
  readonly blockId: string;
  readonly job: FoundationJob;
  /** `performance.now()` when it began. */
  readonly since: number;
  readonly progress: {
    readonly done: number;
    readonly of: number;
    readonly what: Parameters<Progress>[2];
  } | null;
}

export const useLaying = create<{ readonly laying: Laying | null }>()(() => ({ laying: null }));

/** What is said of sheets that the maker did not want to wait for. */
export const STOPPED: Problem = {
  what: 'The sheets are not laid out: that was cancelled',
  where: '',
  remedy: 'Ask for less, or have them laid out after all',
};

/** What is said where the program itself fails. */
export const FAILED: Problem = {
  what: 'The sheets could not be laid out',
  where: '',
  remedy: 'Have them laid out once more, or reload the page; the pattern is kept',
};

/** Keeps the store's `sheets` up to date with the study and with what the maker asks of them. */
export function startLayingOut(): void {
  let timer: ReturnType<typeof setTimeout> | undefined;

  const ask = async () => {
    const { laying } = useLaying.getState();
    if (laying !== null) {
      const waiting = waitingJob();
      if (waiting === null || sameJob(waiting, laying.job)) return;
      const left = isShown(laying) ? laying.since + SLOW - performance.now() : 0;
      if (left > 0) later(left);
      else pagesWorker.end();
      return;
    }
    try {
      for (let job = waitingJob(); job !== null; job = waitingJob()) await layOutOnce(job);
    } finally {
      useLaying.setState({ laying: null });
    }
  };
  const later = (wait: number) => {
    if (waitingJob() === null) return;
    clearTimeout(timer);
    timer = setTimeout(() => void ask(), wait);
  };
  const changed = () => later(QUIET);
  useWork.subscribe(
    (work) => [work.study, work.printing, work.history, work.colourwayId, work.sheets] as const,
    changed,
    { equalityFn: (a, b) => a.every((part, i) => part === b[i]) },
  );
  useSettings.subscribe(changed);
  usePrinters.subscribe(changed);
  useCuttingHabits.subscribe(changed);
  changed();
}

async function layOutOnce(job: FoundationJob): Promise<void> {
  const blockId = currentBlock(useWork.getState()).id;
  const begun: Laying = { blockId, job, since: performance.now(), progress: null };
  useLaying.setState({ laying: begun });
  const report: Progress = (done, of, what) => {
    const { laying } = useLaying.getState();
    if (laying?.since === begun.since)
      useLaying.setState({ laying: { ...begun, progress: { done, of, what } } });
  };
  try {
    const laid = await pagesWorker.ask((worker) => worker.layOut(job, proxy(report)));
    if (!isShown(begun)) return;
    useWork.setState({
      sheets: laid.ok
        ? { blockId, job, plan: laid.value, problem: null }
        : { blockId, job, plan: null, problem: laid.problem },
    });
  } catch (error) {
    // Other sheets are wanted by now, or none.
    if (error instanceof Ended) return;
    pagesWorker.end();
    if (isShown(begun)) useWork.setState({ sheets: { blockId, job, plan: null, problem: FAILED } });
    reportError(error);
  }
}

/** Whether it is the block in hand whose sheets these are. */
const isShown = ({ blockId }: Laying): boolean => currentBlock(useWork.getState()).id === blockId;

/**
 * Stops laying out what is asked for, be it under way or waiting for what was asked before. Where fewer sheets were looked for,
 * that is no longer asked, and the sheets are those that are laid out without. Otherwise nothing is there to save until
 * something else is asked, or it is asked again.
 */
export function stopLayingOut(): void {
  const { laying } = useLaying.getState();
  if (laying === null) return;
  const work = useWork.getState();
  // While the drawing is being studied nobody knows what will be asked for.
  const job = foundationJob(work) === null ? laying.job : waitingJob();
  if (job?.effort === 'thorough') {
    setting({ saveSheets: false });
    tell('Looking longer for fewer sheets was cancelled and switched off.');
  } else if (job !== null)
    // Sheets that are there already stand: what is under way was asked for in between.
    useWork.setState({ sheets: { blockId: currentBlock(work).id, job, plan: null, problem: STOPPED } });
  pagesWorker.end();
}

/** Lays out what is asked for after all. */
export const layOutAgain = (): void => useWork.setState({ sheets: null });

/** Whether the sheets are about to be laid out anew: those that are there are of what was before. */
export function sheetsAreDue(): boolean {
  const { study } = useWork.getState();
  return study === null || study.stale || !study.refined || waitingJob() !== null;
}

/** What is to be laid out now; null when it is laid out already, or when there is nothing to lay out yet. */
function waitingJob(): FoundationJob | null {
  const work = useWork.getState();
  const job = foundationJob(work);
  return job === null || (work.sheets !== null && sameJob(job, work.sheets.job)) ? null : job;
}
