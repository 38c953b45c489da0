import type { FinishedSize } from '@seamwright/pages';
import { dismiss, tell } from '../../../store/notices.ts';
import { askForSizes } from '../../../store/printing.ts';
import { currentBlock, currentPrinting, useWork } from '../../../store/work.ts';

/** Sizes are no part of the pattern, so undo does not know them: what is taken off is offered back. */

/** Takes a size off the open block's list, by its place there. */
export function takeOff(index: number, width: string): void {
  const { sizes } = currentPrinting(useWork.getState());
  askForSizes(sizes.filter((_, i) => i !== index));
  offerBack(sizes, `The size of ${width} is off the list.`);
}

/** Leaves one size, that of the drawing. */
export function onlyAsDrawn(): void {
  const { sizes } = currentPrinting(useWork.getState());
  askForSizes([{ ...sizes[0]!, scale: 1 }]);
  offerBack(sizes, 'Only the size of the drawing is left.');
}

/** @param before the list as it was */
function offerBack(before: readonly FinishedSize[], text: string): void {
  const { id } = currentBlock(useWork.getState());
  const after = currentPrinting(useWork.getState()).sizes;
  tell(text, {
    label: 'Put back',
    run: () => {
      dismiss();
      const work = useWork.getState();
      if (currentBlock(work).id !== id) return;
      const { sizes } = currentPrinting(work);
      // What was changed meanwhile stays; only what is missing comes back.
      const missing = before.filter(({ scale }) => !sizes.some((size) => size.scale === scale));
      askForSizes(sizes === after ? before : [...sizes, ...missing]);
    },
  });
}
