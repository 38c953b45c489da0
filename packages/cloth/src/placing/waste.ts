import { area, boundingBox } from '@seamwright/geometry';
import type { PatchNeed } from '../sizes/patch-needs.ts';
import type { PieceCut } from '../types.ts';

/** Inches by which a plain chunk is larger than the finished patch's upright box, each way (Quilting on the Square, Basics of paper piecing). */
export const CHUNK_EXTRA = 1;

/** What is cut against what is needed, square inches. Strips and yardage, with what is left of them, are not in it. */
export interface Waste {
  /** The pieces; of a rectangle cut corner to corner, each half. */
  readonly cut: number;
  /** What the pieces must cover: patches with their allowance. */
  readonly needed: number;
  /** Of what is cut, the share that is trimmed off: 0 … 100. */
  readonly wastePercent: number;
  /** Plain chunks in place of the pieces: the upright box of each finished patch and 1 in more each way. */
  readonly chunks: number;
  readonly chunkWastePercent: number;
}

/** The waste of some pieces, or of one. The needs are those of {@link PatchNeed} for the same rules, in any order. */
export function wasteOf(pieces: readonly PieceCut[], needs: readonly PatchNeed[]): Waste {
  const needOf = new Map(needs.map((need) => [need.patch, need]));
  let [cut, needed, chunks] = [0, 0, 0];
  for (const piece of pieces) {
    const need = needOf.get(piece.patch);
    if (need === undefined) throw new RangeError(`No need is given of ${piece.name}`);
    cut += (piece.width * piece.height) / (piece.shape === 'rectangle' ? 1 : 2);
    needed += area(need.needed);
    const { minX, minY, maxX, maxY } = boundingBox(need.finished);
    chunks += (maxX - minX + CHUNK_EXTRA) * (maxY - minY + CHUNK_EXTRA);
  }
  return withPercents(cut, needed, chunks);
}

/** The waste of several blocks together, each as often as it is sewn. */
export function wasteOfAll(blocks: readonly { readonly waste: Waste; readonly copies: number }[]): Waste {
  const sum = (figure: 'cut' | 'needed' | 'chunks') =>
    blocks.reduce((total, { waste, copies }) => total + copies * waste[figure], 0);
  return withPercents(sum('cut'), sum('needed'), sum('chunks'));
}

function withPercents(cut: number, needed: number, chunks: number): Waste {
  const percent = (whole: number) => (whole === 0 ? 0 : (100 * (whole - needed)) / whole);
  return { cut, needed, wastePercent: percent(cut), chunks, chunkWastePercent: percent(chunks) };
}
