import { type Block, NO_WISHES, namedPatches } from '@seamwright/pattern';
import type { BlockToPlan, PlannedBlock } from './planned.ts';

interface Known {
  readonly of: Block;
  /** Null where the block cannot be sewn. */
  readonly planned: PlannedBlock | null;
}

/** How the blocks that are not open are sewn, each planned once for as long as it stays as it is. */
export class OtherBlocks {
  private known: readonly Known[] = [];

  /** Undefined where that is not worked out yet; null where the block cannot be sewn. */
  planOf(block: Block): PlannedBlock | null | undefined {
    return this.known.find(({ of }) => isSewnAlike(of, block))?.planned;
  }

  learn(of: Block, planned: PlannedBlock | null): void {
    this.known = [...this.known.filter((other) => other.of.id !== of.id), { of, planned }];
  }
}

export const toPlan = (block: Block): BlockToPlan => ({
  drawing: block.drawing,
  records: block.patches,
  named: namedPatches(block),
  wishes: block.sewing ?? NO_WISHES,
});

/** Fabrics and notes change nothing about how a block is sewn. */
const isSewnAlike = (a: Block, b: Block): boolean =>
  a.id === b.id &&
  a.drawing === b.drawing &&
  a.sewing === b.sewing &&
  a.patches.length === b.patches.length &&
  a.patches.every(({ id }, i) => id === b.patches[i]!.id);
