import { blocksText } from '@seamwright/cloth';
import { boundingBox, ok, type Result } from '@seamwright/geometry';
import { readSize } from '@seamwright/pages';
import { badCall } from '../complaint.ts';
import type { Drawings, Drawn } from '../drawings.ts';
import { colourwayFor } from './cloths.ts';
import type { CuttingOrder } from './order.ts';

/** A block, and how many of it are sewn: one at least. */
export interface BlockToCut extends Drawn {
  readonly copies: number;
  readonly mirrored: number;
}

export interface BlocksToCut extends Drawings {
  readonly blocks: readonly BlockToCut[];
}

/** The blocks of which any are sewn, each with its numbers. */
export function blocksToCut(drawings: Drawings, order: CuttingOrder): Result<BlocksToCut> {
  const { blocks } = drawings;
  for (const name of ['copies', 'mirrored'] as const) {
    const { length } = order[name];
    if (length !== 1 && length !== blocks.length)
      return badCall(
        'cutting',
        `--${name} has ${length} numbers, and the blocks are ${blocks.length}`,
        `Give one number for all, or one for each of: ${blocks.map((block) => block.name).join(', ')}`,
      );
  }
  const of = (counts: readonly number[], index: number) => counts[counts.length === 1 ? 0 : index]!;
  const counted = blocks.map((block, index) => ({
    ...block,
    copies: of(order.copies, index),
    mirrored: of(order.mirrored, index),
  }));
  return ok({ ...drawings, blocks: counted.filter(({ copies, mirrored }) => copies + mirrored > 0) });
}

/** What is cut for: `8 of Lantern`; at which size where it is not that of the drawing, in which colourway where there are several. */
export function cutForText({ blocks, unit, colourways }: BlocksToCut, order: CuttingOrder): string {
  const { width, colourway } = order;
  const counted = blocks.map(({ name, copies, mirrored, arrangement }) => {
    if (width === undefined) return { name, copies, mirrored };
    const { minX, minY, maxX, maxY } = boundingBox(arrangement.outline);
    return { name, copies, mirrored, size: readSize(width, ((maxY - minY) * width) / (maxX - minX), unit) };
  });
  return blocksText(counted, colourwayFor(colourways, colourway)?.name);
}
