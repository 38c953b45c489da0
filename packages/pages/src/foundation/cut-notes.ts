import { cutPieces, pieceNote } from '@seamwright/cloth';
import type { CheckedJob, CheckedSize } from '../job.ts';
import type { NoteOf } from './patch-facts.ts';

/** The notes of one size. The pieces are those of its cutting chart: halves are taken where that many blocks save fabric. */
export function cutNotes(
  { arrangement, plan, allowance, cutting, unit }: CheckedJob,
  { scale, copies, mirrored }: CheckedSize,
): NoteOf {
  if (cutting === undefined) return () => null;
  const { rules, cloths } = cutting;
  const pieces = cutPieces({
    arrangement,
    plan,
    rules: { ...rules, allowance },
    clothOf: (patch) => cloths[patch] ?? null,
    copies: copies + mirrored,
    scale,
  });
  const byPatch = new Map(pieces.map((piece) => [piece.patch, piece]));
  return (patch, isMirrored) => {
    const piece = byPatch.get(patch);
    return piece === undefined ? null : pieceNote(piece, isMirrored, unit);
  };
}
