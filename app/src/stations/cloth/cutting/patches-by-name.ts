import type { CutOut } from '@seamwright/cloth';
import type { CuttingQuestion } from '../../../study/cut-out.ts';

/** A patch that a chart names. */
export interface PatchOfBlock {
  readonly blockId: string;
  /** Its index. */
  readonly patch: number;
  /** Its name within the block: `A1`. */
  readonly own: string;
}

/** By their names in the chart, which are `Lantern A1` where it is for several blocks. */
export type PatchesByName = ReadonlyMap<string, PatchOfBlock>;

export function patchesByName({ blocks }: CuttingQuestion, { batches }: CutOut): PatchesByName {
  const named = batches.flatMap(({ pieces }, i) => {
    const { blockId, name = '' } = blocks[i]!;
    return pieces.map(
      (piece) =>
        [piece.name, { blockId, patch: piece.patch, own: piece.name.slice(name.length).trim() }] as const,
    );
  });
  // Of blocks of one name, the first.
  return new Map(named.reverse());
}
