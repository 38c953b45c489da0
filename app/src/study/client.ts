import { wrap } from 'comlink';
import { amendPattern } from '../store/changes.ts';
import { currentBlock, currentDrawing, useWork } from '../store/work.ts';
import { toStudy } from './names.ts';
import type { StudyWorker } from './study.worker.ts';

/**
 * Keeps the store's `study` up to date with the open block's drawing. One question is with the worker at a time;
 * edits made meanwhile wait, and only the latest of them is asked next. Returns what stops it.
 */
export function startStudying(): () => void {
  const worker = new Worker(new URL('./study.worker.ts', import.meta.url), { type: 'module', name: 'study' });
  const remote = wrap<StudyWorker>(worker);
  let busy = false;

  const ask = async () => {
    if (busy) return;
    busy = true;
    try {
      while (!upToDate()) {
        const work = useWork.getState();
        const block = currentBlock(work);
        const drawing = currentDrawing(work);
        const answer = await remote.study(drawing, block.patches);
        useWork.setState({ study: { ...toStudy(answer), blockId: block.id, drawing, stale: false } });
        keepRecords();
      }
    } finally {
      busy = false;
    }
  };

  const stop = useWork.subscribe(currentDrawing, () => {
    markStale();
    void ask();
  });
  void ask();
  return () => {
    stop();
    worker.terminate();
  };
}

function upToDate(): boolean {
  const work = useWork.getState();
  return work.study !== null && work.study.drawing === currentDrawing(work);
}

function markStale(): void {
  if (upToDate()) return;
  const { study } = useWork.getState();
  if (study === null || study.stale) return;
  // Another block's patches are never shown in place of this one's, not even for a moment.
  const other = study.blockId !== currentBlock(useWork.getState()).id;
  useWork.setState({ study: other ? null : { ...study, stale: true } });
}

/** The carried records become part of the document, unless the drawing studied is not the document's (any more). */
function keepRecords(): void {
  const work = useWork.getState();
  const { study } = work;
  const block = currentBlock(work);
  if (study === null || study.drawing !== block.drawing || study.records === block.patches) return;
  const { records } = study;
  amendPattern((before) => ({
    ...before,
    blocks: before.blocks.map((one) => (one.id === block.id ? { ...one, patches: records } : one)),
  }));
}
