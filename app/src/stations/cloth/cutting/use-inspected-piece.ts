import { type PatchNeed, type PieceCut, patchNeeds, placeSewFlip, type SewnPiece } from '@seamwright/cloth';
import { type Polygon, scaling, transformPolygon } from '@seamwright/geometry';
import { useMemo } from 'react';
import { type PatternBlock, useCutting } from '../../../study/cut-out.ts';
import { useInspected } from './inspected.ts';
import { placeOf, useLookedAt } from './looked-at.tsx';

/** A piece laid, sewn on and flipped, with what it has to cover. */
export interface InspectedPiece {
  /** As it was worked out. */
  readonly piece: PieceCut;
  readonly need: PatchNeed;
  /** What comes of it, or of the size that is tried. */
  readonly sewn: SewnPiece;
  readonly size: Pick<PieceCut, 'width' | 'height'>;
  readonly isTried: boolean;
  /** Its block, in the size at which the piece's places are. */
  readonly block: PatternBlock;
}

/** The piece that is looked at closely; null where none is, or its patch is gone. */
export function useInspectedPiece(): InspectedPiece | null {
  const { name, tried } = useInspected();
  const question = useCutting((cutting) => cutting.question);
  const answer = useCutting((cutting) => cutting.answer);
  const block = useLookedAt(question);
  return useMemo(() => {
    if (name === null || question === null || block === undefined) return null;
    const { arrangement, plan, scale } = block;
    const need = patchNeeds(arrangement, plan, question.cut.allowance, scale).find(
      (one) => one.name === name,
    );
    const pieces = answer?.batches[placeOf(question, block)]?.pieces;
    const piece = pieces?.find(({ patch }) => patch === need?.patch);
    if (need === undefined || piece === undefined) return null;
    const size = { width: tried.width ?? piece.width, height: tried.height ?? piece.height };
    const sewn = placeSewFlip({ ...piece, ...size }, need);
    const isTried = size.width !== piece.width || size.height !== piece.height;
    return { piece, need, sewn, size, isTried, block };
  }, [name, tried, question, answer, block]);
}

/** Where that piece lies on the block as it is drawn, before and after the flip, as it was worked out: trying sizes moves nothing. */
export function usePiecePlace(): Polygon {
  const inspected = useInspectedPiece();
  return useMemo(() => {
    if (inspected === null) return [];
    const {
      piece,
      need,
      block: { scale },
    } = inspected;
    const { laid, flipped } = placeSewFlip(piece, need);
    return transformPolygon(scaling(1 / scale), [...laid, ...flipped]);
  }, [inspected]);
}
