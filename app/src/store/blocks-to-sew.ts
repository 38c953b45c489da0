import { type Printing, printingOf, useWork, type Work } from './work.ts';

/** How many of each block are sewn, as it is said where the pattern's blocks are cut together. */

export const isLeftOut = ({ printing }: Work, blockId: string): boolean =>
  printing[blockId]?.leftOut ?? false;

export const leaveOut = (blockId: string, leftOut: boolean): void => askOf(blockId, { leftOut });

/** How many of a block in one size are sewn; 0 leaves it out where the pattern's blocks are cut together. */
export function sewOf(blockId: string, copies: number): void {
  const [size] = printingOf(useWork.getState(), blockId).sizes;
  if (copies === 0) leaveOut(blockId, true);
  else askOf(blockId, { sizes: [{ ...size!, copies }], leftOut: false });
}

function askOf(blockId: string, change: Partial<Printing>): void {
  useWork.setState((work) => ({
    printing: { ...work.printing, [blockId]: { ...printingOf(work, blockId), ...change } },
  }));
}
