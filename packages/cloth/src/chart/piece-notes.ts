import { formatCutSize, type LengthUnit } from '@seamwright/geometry';
import type { PieceCut } from '../types.ts';
import { turnedOver } from './chart.ts';
import { shapeName } from './words.ts';

/** What is written of a piece beside its patch. */
export interface PieceNote {
  /** What is cut: `cut 3½ × 7 in`, `half of 2½ × 3½ in`. */
  readonly words: string;
  /** What those words mean, to be said once; null where they need no saying. */
  readonly meaning: string | null;
}

/**
 * What is cut for a patch, in words that are short enough for a foundation.
 *
 * @param isMirrored whether it is for a block that is the mirror image of the drawing
 */
export function pieceNote(piece: PieceCut, isMirrored: boolean, unit: LengthUnit): PieceNote {
  const { width, height } = turnedOver(piece, isMirrored);
  const size = formatCutSize(width, height, unit);
  if (piece.shape === 'rectangle') return { words: `cut ${size}`, meaning: null };
  return {
    words: `half of ${size}`,
    meaning:
      shapeName({ shape: piece.shape, width, height }) === 'half-square'
        ? 'half of a square: cut it corner to corner'
        : 'half of a rectangle: lay it right side up, the first side across, and cut from bottom left to top right',
  };
}
