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

/** True while the shelf holds less than what is shown. */
let behind = false;
let writing: Promise<void> | null = null;

/**
 * Keeps the open work in the browser: every change is written at once, one write after the other, and while one is
 * under way the changes wait together. Only those are left to the moment when the page goes away, when browsers promise
 * little.
 */
export function startAutosave(): void {
  const kept = (work: Work) =>
    [work.kept, work.history, work.blockId, work.station, work.colourwayId, work.printing] as const;
  useWork.subscribe(
    kept,
    (now, before) => {
      // Another work was opened: what the shelf holds of it is what is shown.
      if (now[0] !== before[0]) return;
      // Nothing was ever done in it: nothing to keep.
      if (worthKeeping(useWork.getState())) void keepNow();
    },
    { equalityFn: (a, b) => a.every((part, i) => part === b[i]) },
  );
  window.addEventListener('pagehide', () => {
    // Nobody may be there when the write that is under way has ended.
    if (behind) void write().catch(() => undefined);
  });
  window.addEventListener('beforeunload', (event) => {
    // The browser then asks whether to leave.
    if (useKeeping.getState().state === 'failed') event.preventDefault();
  });
}

/** A fresh pattern in which nothing was done leaves no trace on the shelf. */
const worthKeeping = (work: Work): boolean =>
  work.origin !== 'fresh' || work.history.past.length > 0 || work.history.future.length > 0;

/** Resolves when the shelf holds what is shown. */
export const flush = (): Promise<void> => writing ?? Promise.resolve();

/** Writes the open work to the shelf; resolves when it, and what changed meanwhile, is there. */
export function keepNow(): Promise<void> {
  behind = true;
  useKeeping.setState({ state: 'waiting' });
  writing ??= writeUntilLevel().finally(() => {
    writing = null;
  });
  return writing;
}

/** Writes what is shown. */
async function write(): Promise<void> {
  const { kept, history, blockId, station, colourwayId, printing, origin } = useWork.getState();
  const demo = origin === 'demo' && history.past.length === 0 && history.future.length === 0;
  rememberCurrent(kept);
  await keep({ kept, history, blockId, station, colourwayId, printing, demo });
}

async function writeUntilLevel(): Promise<void> {
  try {
    while (behind) {
      behind = false;
      await write();
    }
    useKeeping.setState({ state: 'kept' });
  } catch {
    // Said once, not at every edit.
    if (useKeeping.getState().state !== 'failed') warn(NOT_KEPT);
    useKeeping.setState({ state: 'failed' });
  }
}

const NOT_KEPT =
  'This browser does not keep the pattern: there is no room, or storage is switched off. Save a pattern file before you leave.';
