import type { Drawing } from '@seamwright/arrangement';
import { memo, useMemo } from 'react';
import { blockBounds, corners } from '../../../canvas/bounds.ts';
import {
  addPolygon,
  type Fill,
  inFront,
  type Look,
  seamsOf,
  strokeCasing,
  strokeSeams,
} from '../../../canvas/paint-patches.ts';
import { type Paint, Painting } from '../../../canvas/painting.tsx';
import { useLook } from '../../../canvas/use-look.ts';
import type { Study } from '../../../study/study.ts';
import { otherCopies } from './copies.ts';
import { useDraftView } from './draft-view.ts';
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
    () => paintCopies(places, { outline: outlineOf(drawing), fills, lines, cased: kind === 'fabrics' }, look),
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

/** One block as it is painted again and again. */
interface OneCopy {
  readonly outline: Path2D;
  readonly fills: readonly Fill[];
  readonly lines: Path2D;
  readonly cased: boolean;
}

/** CSS pixels: how far the ring round the block that is drawn on stands out of it. */
const RING = 4;

/** Shapes and lines are made once and painted at every place: many copies of many patches stay quick. */
function paintCopies(
  places: ReturnType<typeof otherCopies>,
  { outline, fills, lines, cased }: OneCopy,
  look: Look,
): Paint {
  const { theme, scale } = look;
  const everywhere = (context: CanvasRenderingContext2D, paint: () => void) => {
    for (const { a, b, c, d, e, f } of places) {
      context.save();
      context.transform(a, b, c, d, e, f);
      paint();
      context.restore();
    }
  };
  return (context) => {
    const styles = fills.map(({ style }) => style(context));
    everywhere(context, () => {
      context.fillStyle = theme.sheet;
      context.fill(outline);
      for (const [i, { path }] of fills.entries()) {
        context.fillStyle = styles[i]!;
        context.fill(path, 'evenodd');
      }
    });
    // All strips before all lines: at the edges each copy's would lie on its neighbour's.
    if (cased) everywhere(context, () => strokeCasing(context, lines, look));
    everywhere(context, () => strokeSeams(context, lines, look));
    context.strokeStyle = theme.accent;
    context.lineWidth = (2 * RING) / scale;
    context.lineJoin = 'round';
    context.stroke(outline);
  };
}
