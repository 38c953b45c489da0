import type { FinishedSize } from '@seamwright/pages';
import { currentBlock, currentPrinting, type Printing, useWork, type Work } from './work.ts';

/** What a number of blocks may be. */
export const MOST_BLOCKS = 99_999;

/** Asks for the open block in these sizes. No edit of the pattern, so no step for undo. */
export function askForSizes(sizes: readonly FinishedSize[]): void {
  useWork.setState((work) => {
    const { id } = currentBlock(work);
    return { printing: { ...work.printing, [id]: { ...work.printing[id], sizes } } };
  });
}

/** Changes one size of the open block, by its place in the list. */
export function changeSize(index: number, change: Partial<FinishedSize>): void {
  const { sizes } = currentPrinting(useWork.getState());
  askForSizes(sizes.map((size, i) => (i === index ? { ...size, ...change } : size)));
}

/**
 * What was asked of the blocks' sheets, as the shelf kept it: size lists, or one size for each block (`copies` and
 * `scale` by themselves), as the first versions kept them. What cannot be read is left out, and printed as drawn.
 */
export function keptPrinting(kept: unknown): Work['printing'] {
  const printing: Record<string, Printing> = {};
  for (const [block, asked] of entriesOf(kept)) {
    const { sizes = [asked], leftOut } = asked as { sizes?: unknown; leftOut?: unknown };
    const readable = Array.isArray(sizes) ? sizes.flatMap(keptSize) : [];
    if (readable.length > 0) printing[block] = { sizes: readable, ...(leftOut === true && { leftOut }) };
  }
  return printing;
}

const entriesOf = (kept: unknown): readonly (readonly [string, object])[] =>
  typeof kept === 'object' && kept !== null
    ? Object.entries(kept).filter(([, asked]) => typeof asked === 'object' && asked !== null)
    : [];

function keptSize(size: unknown): readonly FinishedSize[] {
  if (typeof size !== 'object' || size === null) return [];
  const { scale, copies, mirrored = 0 } = size as Partial<Record<keyof FinishedSize, unknown>>;
  if (!(typeof scale === 'number' && scale > 0 && Number.isFinite(scale))) return [];
  if (!isCount(copies) || !isCount(mirrored) || copies + mirrored === 0) return [];
  return [{ scale, copies, ...(mirrored > 0 && { mirrored }) }];
}

const isCount = (value: unknown): value is number =>
  typeof value === 'number' && Number.isInteger(value) && value >= 0 && value <= MOST_BLOCKS;
