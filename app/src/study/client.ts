import { amendPattern } from '../store/changes.ts';
import { warn } from '../store/notices.ts';
import { currentBlock, currentDrawing, useWork } from '../store/work.ts';
import { toStudy } from './names.ts';
import { studyWorker } from './worker-client.ts';

/**
 * Keeps the store's `study` up to date with the open block's drawing. One question is with the worker at a time;
 * edits made meanwhile wait, and only the latest of them is asked next.
 */
export function startStudying(): void {
  let busy = false;

  const ask = async () => {
    if (busy) return;
    busy = true;
    try {
      while (!upToDate()) await studyOnce();
    } catch (error) {
      warn(
        'The drawing could not be studied. Undo the last change, or reload the page: the pattern is kept.',
      );
      reportError(error);
    } finally {
      busy = false;
    }
  };

  useWork.subscribe(
    (work) => [currentDrawing(work), currentBlock(work).id, work.study] as const,
    () => {
      markStale();
      void ask();
    },
    { equalityFn: (a, b) => a.every((part, i) => part === b[i]) },
  );
  void ask();
}

async function studyOnce(): Promise<void> {
  const work = useWork.getState();
  const block = currentBlock(work);
  const drawing = currentDrawing(work);
  const answer = await studyWorker().study(drawing, block.patches);
  // Another block was opened meanwhile: the answer is about what is no longer shown.
  if (currentBlock(useWork.getState()).id !== block.id) return;
  useWork.setState({ study: { ...toStudy(answer), blockId: block.id, drawing, stale: false } });
  markStale();
  keepRecords();
}

function upToDate(): boolean {
  const work = useWork.getState();
  const { study } = work;
  return study !== null && study.drawing === currentDrawing(work) && study.blockId === currentBlock(work).id;
}

function markStale(): void {
  const { study } = useWork.getState();
  if (study === null || study.stale || upToDate()) return;
  // Another block's patches are never shown in place of this one's, not even for a moment.
  const other = study.blockId !== currentBlock(useWork.getState()).id;
  useWork.setState(other ? { study: null, sheets: null } : { study: { ...study, stale: true } });
}

/** The carried records become part of the document, unless the drawing studied is not the document's (any more). */
function keepRecords(): void {
  const work = useWork.getState();
  const { study } = work;
  const block = currentBlock(work);
  if (study === null || study.stale || study.drawing !== block.drawing) return;
  const { records } = study;
  if (sameRecords(records, block.patches)) return;
  amendPattern((before) => ({
    ...before,
    blocks: before.blocks.map((one) => (one.id === block.id ? { ...one, patches: records } : one)),
  }));
}

type Records = ReturnType<typeof currentBlock>['patches'];

const sameRecords = (a: Records, b: Records): boolean =>
  a.length === b.length &&
  a.every((one, i) => {
    const other = b[i]!;
    return (
      one.id === other.id &&
      one.signature === other.signature &&
      one.note === other.note &&
      one.at.x === other.at.x &&
      one.at.y === other.at.y
    );
  });
