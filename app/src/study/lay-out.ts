import type { FoundationJob } from '@seamwright/pages';
import { usePrinters } from '../store/printers.ts';
import { useSettings } from '../store/settings.ts';
import { currentBlock, useWork } from '../store/work.ts';
import { pagesWorker } from './computing.ts';
import { foundationJob, sameJob } from './foundation-job.ts';

/** Milliseconds of quiet before sheets are laid out: not at every step of a drag. */
const QUIET = 150;

/** Keeps the store's `sheets` up to date with the study and with what the maker asks of them. */
export function startLayingOut(): void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let busy = false;

  const ask = async () => {
    if (busy) return;
    busy = true;
    try {
      for (let job = waitingJob(); job !== null; job = waitingJob()) await layOutOnce(job);
    } finally {
      busy = false;
    }
  };
  const later = () => {
    if (waitingJob() === null) return;
    clearTimeout(timer);
    timer = setTimeout(() => void ask(), QUIET);
  };
  useWork.subscribe((work) => [work.study, work.printing, work.history, work.colourwayId] as const, later, {
    equalityFn: (a, b) => a.every((part, i) => part === b[i]),
  });
  useSettings.subscribe(later);
  usePrinters.subscribe(later);
}

async function layOutOnce(job: FoundationJob): Promise<void> {
  const blockId = currentBlock(useWork.getState()).id;
  const laid = await pagesWorker.ask((worker) => worker.layOut(job));
  if (currentBlock(useWork.getState()).id !== blockId) return;
  useWork.setState({
    sheets: laid.ok
      ? { blockId, job, plan: laid.value, problem: null }
      : { blockId, job, plan: null, problem: laid.problem },
  });
}

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
