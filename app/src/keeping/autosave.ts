import { create } from 'zustand';
import { warn } from '../store/notices.ts';
import { useWork, type Work } from '../store/work.ts';
import { rememberCurrent } from './current.ts';
import { keep } from './shelf.ts';

interface Keeping {
  /** `nothing`: there is no work yet that would need it. */
  readonly state: 'nothing' | 'waiting' | 'kept' | 'failed';
}

export const useKeeping = create<Keeping>()(() => ({ state: 'nothing' }));

/** Milliseconds after the last change. Leaving the page does not wait for them. */
const PAUSE = 250;

let timer: ReturnType<typeof setTimeout> | undefined;
let writing: Promise<void> = Promise.resolve();

/** Keeps the open work in the browser after every change, and at once when the page is left or hidden. */
export function startAutosave(): void {
  const kept = (work: Work) => [work.kept, work.history, work.blockId, work.station, work.printing] as const;
  useWork.subscribe(
    kept,
    (now, before) => {
      // Another work was opened: what the shelf holds of it is what is shown.
      if (now[0] !== before[0]) return;
      // Nothing was ever done in it: nothing to keep.
      if (!worthKeeping(useWork.getState())) return;
      useKeeping.setState({ state: 'waiting' });
      clearTimeout(timer);
      timer = setTimeout(() => void keepNow(), PAUSE);
    },
    { equalityFn: (a, b) => a.every((part, i) => part === b[i]) },
  );
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') void flush();
  });
  window.addEventListener('pagehide', () => void flush());
}

/** A fresh pattern in which nothing was done leaves no trace on the shelf. */
const worthKeeping = (work: Work): boolean =>
  work.origin !== 'fresh' || work.history.past.length > 0 || work.history.future.length > 0;

/** Writes what is waiting, at once. */
export function flush(): Promise<void> {
  return useKeeping.getState().state === 'waiting' ? keepNow() : writing;
}

/** Writes the open work to the shelf, one write after the other. */
export function keepNow(): Promise<void> {
  clearTimeout(timer);
  const { kept, history, blockId, station, printing, origin } = useWork.getState();
  const demo = origin === 'demo' && history.past.length === 0 && history.future.length === 0;
  rememberCurrent(kept);
  useKeeping.setState({ state: 'kept' });
  writing = writing.then(() =>
    keep({ kept, history, blockId, station, printing, demo }).catch(() => {
      if (useKeeping.getState().state === 'failed') return;
      useKeeping.setState({ state: 'failed' });
      warn(
        'This browser does not keep the pattern: there is no room, or storage is switched off. Save a pattern file before you leave.',
      );
    }),
  );
  return writing;
}
