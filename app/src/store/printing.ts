import { currentBlock, currentPrinting, type Printing, useWork } from './work.ts';

/** Changes what is asked of the open block's sheets. No edit of the pattern, so no step for undo. */
export function askOfSheets(change: Partial<Printing>): void {
  useWork.setState((work) => ({
    printing: { ...work.printing, [currentBlock(work).id]: { ...currentPrinting(work), ...change } },
  }));
}
