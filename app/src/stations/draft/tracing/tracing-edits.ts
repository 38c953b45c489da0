import type { Tracing } from '@seamwright/pattern';
import { changeBlock } from '../../../store/changes.ts';
import { announce } from '../../../store/notices.ts';
import { currentBlock, useWork, type Work } from '../../../store/work.ts';

/** The picture under the open block's drawing, if there is one. */
export const currentTracing = (work: Work): Tracing | undefined => currentBlock(work).tracing;

/** One step for undo that changes how the picture lies or shows; with a group, as everywhere, one with those before. */
export function changeTracing(
  label: string,
  edit: (tracing: Tracing) => Tracing,
  group: string | null = null,
): void {
  const { id } = currentBlock(useWork.getState());
  changeBlock(
    label,
    id,
    (block) => {
      if (block.tracing === undefined) return block;
      const tracing = edit(block.tracing);
      return tracing === block.tracing ? block : { ...block, tracing };
    },
    group,
  );
}

/** Takes the picture away; undo brings it back. */
export function removeTracing(): void {
  const { id } = currentBlock(useWork.getState());
  changeBlock('Take the picture away', id, ({ tracing, ...block }) => block);
  announce('The picture is taken away');
}
