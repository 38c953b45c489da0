import type { Drawing } from '@seamwright/arrangement';
import { memo, useMemo } from 'react';
import { blockBounds, corners } from '../../../canvas/bounds.ts';
import { addPolygon, inFront, seamsOf } from '../../../canvas/paint-patches.ts';
import { Painting } from '../../../canvas/painting.tsx';
import { useLook } from '../../../canvas/use-look.ts';
import type { Study } from '../../../study/study.ts';
import { otherCopies } from './copies.ts';
import { useDraftView } from './draft-view.ts';
import { paintCopies } from './paint-copies.ts';
import { useFills } from './use-fills.ts';

interface CopiesAroundProps {
  readonly drawing: Drawing;
  readonly study: Study | null;
}

/** The other copies of the block, as it is at the moment. Goes under the block itself. */
export const CopiesAround = memo(function CopiesAround({ drawing, study }: CopiesAroundProps) {
  const { kind, copies, turning } = useDraftView();
  const look = useLook(inFront);
  const fills = useFills(study, kind, look);
  const box = blockBounds(drawing);
  const { minX, minY, maxX, maxY } = box;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the box's numbers are what matters, not the object
  const places = useMemo(() => otherCopies(box, copies, turning), [minX, minY, maxX, maxY, copies, turning]);
  const arrangement = study?.drawing === drawing ? study.arrangement : null;
  const lines = useMemo(
    () => (arrangement === null ? linesOf(drawing) : seamsOf(arrangement, inFront)),
    [arrangement, drawing],
  );
  const paint = useMemo(
    () =>
      paintCopies(
        places,
        { box: blockBounds(drawing), outline: outlineOf(drawing), fills, lines, cased: kind === 'fabrics' },
        look,
      ),
    [places, drawing, fills, lines, kind, look],
  );
  return copies > 1 ? <Painting paint={paint} /> : null;
});

function outlineOf(drawing: Drawing): Path2D {
  const path = new Path2D();
  addPolygon(path, corners(drawing), inFront);
  return path;
}

/** The lines as they are drawn: what they are cut to is known a moment later. */
function linesOf(drawing: Drawing): Path2D {
  const path = outlineOf(drawing);
  const { points, splits } = drawing;
  for (const { from, to } of splits) {
    const [a, b] = [points[from]!, points[to]!];
    path.moveTo(a.x, a.y);
    path.lineTo(b.x, b.y);
  }
  return path;
}
