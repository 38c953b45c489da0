import type { PointId } from '@seamwright/arrangement';
import { followersOf, movePointsSymmetric, placeExactly, snapScene } from '@seamwright/drafting';
import type { Point } from '@seamwright/geometry';
import { selectNothing } from '../../../store/selection.ts';
import { currentBlock, useWork } from '../../../store/work.ts';
import { currentSymmetry } from '../hand.ts';
import { makeTyped } from './make.ts';

/** Moves a point to a typed place, inches on the block; a refusal comes back as a sentence. */
export function movePointTo(id: PointId, at: Point): string | undefined {
  const { drawing } = currentBlock(useWork.getState());
  const step = drawing.outline.includes(id) ? 'Move a corner' : 'Move a point';
  const refused = makeTyped(step, (before) => {
    const target = placeExactly(at, snapScene(before, followersOf(before, id)));
    return movePointsSymmetric(before, new Map([[id, target]]), currentSymmetry());
  });
  // It may have become one with the point that was there.
  const work = useWork.getState();
  if (work.selection.points.includes(id) && currentBlock(work).drawing.points[id] === undefined)
    selectNothing();
  return refused;
}
