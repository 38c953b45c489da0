import type { FoundationJob } from '@seamwright/pages';
import { useSettings } from '../store/settings.ts';
import { currentBlock, currentPrinting, pattern, useWork } from '../store/work.ts';
import { pagesWorker } from './computing.ts';

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
  useWork.subscribe((work) => [work.study, work.printing, work.history] as const, later, {
    equalityFn: (a, b) => a.every((part, i) => part === b[i]),
  });
  useSettings.subscribe(later);
}

async function layOutOnce(job: FoundationJob): Promise<void> {
  const blockId = currentBlock(useWork.getState()).id;
  const laid = await pagesWorker().ask((worker) => worker.layOut(job));
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
  const { study, sheets } = work;
  // The quick plan is not worth its paper: a better one follows at once.
  if (study === null || study.stale || !study.refined) return null;
  if (study.arrangement === null || study.plan === null) return null;
  const { paper, allowance, shareTemplates } = useSettings.getState();
  const { copies, scale } = currentPrinting(work);
  const { title, unit } = pattern(work);
  const job: FoundationJob = {
    title: currentBlock(work).name,
    pattern: title,
    arrangement: study.arrangement,
    plan: study.plan,
    paper,
    allowance,
    sizes: [{ copies, scale }],
    unit,
    shareTemplates,
  };
  return sheets !== null && sameJob(job, sheets.job) ? null : job;
}

const sameJob = (a: FoundationJob, b: FoundationJob): boolean =>
  (Object.keys(a) as (keyof FoundationJob)[]).every((key) =>
    key === 'sizes' ? sameSizes(a.sizes, b.sizes) : a[key] === b[key],
  );

/** The list is made anew each time that it is asked for. */
const sameSizes = (a: FoundationJob['sizes'], b: FoundationJob['sizes']): boolean =>
  a.length === b.length &&
  a.every(({ scale, copies }, i) => scale === b[i]!.scale && copies === b[i]!.copies);
