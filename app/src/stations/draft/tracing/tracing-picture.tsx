import type { Drawing } from '@seamwright/arrangement';
import { pictureToBlock, type Tracing } from '@seamwright/pattern';
import { useMemo } from 'react';
import { corners } from '../../../canvas/bounds.ts';
import { addPolygon, inFront } from '../../../canvas/paint-patches.ts';
import { type Paint, Painting } from '../../../canvas/painting.tsx';
import { type Theme, useTheme } from '../../../canvas/theme.ts';
import { useWork } from '../../../store/work.ts';
import { useDraftView } from '../views/draft-view.ts';
import { usePlacing } from './placing.ts';
import { currentTracing } from './tracing-edits.ts';
import { usePicture } from './use-picture.ts';

/** How much of the patches' tints is seen through the sheet that the picture lies on. */
const TINTS = 0.2;
/** How much weaker the picture shows outside the block. */
const OUTSIDE = 0.35;

/**
 * The picture that is traced. It lies on the fills, which a veil of the sheet's colour keeps from mixing with it, and under
 * the grid and all lines; outside the block it is seen faintly. Fabrics are looked at without it.
 */
export function TracingPicture({ drawing }: { readonly drawing: Drawing }) {
  const tracing = useWork(currentTracing);
  const preview = usePlacing((placing) => placing.preview);
  const fabrics = useDraftView((view) => view.kind === 'fabrics');
  const theme = useTheme();
  const image = usePicture(tracing?.picture);
  const shown = tracing?.shown === true && !fabrics ? (preview ?? tracing) : null;
  const paint = useMemo(
    () =>
      shown === null || image === undefined || image === null ? null : painted(shown, image, drawing, theme),
    [shown, image, drawing, theme],
  );
  return paint === null ? null : <Painting paint={paint} />;
}

function painted(tracing: Tracing, image: HTMLImageElement, drawing: Drawing, theme: Theme): Paint {
  const { picture, strength } = tracing;
  const { a, b, c, d, e, f } = pictureToBlock(tracing, picture);
  const outline = new Path2D();
  addPolygon(outline, corners(drawing), inFront);
  return (context) => {
    const draw = (alpha: number) => {
      context.globalAlpha = alpha;
      context.transform(a, b, c, d, e, f);
      context.drawImage(image, 0, 0, picture.width, picture.height);
    };
    context.save();
    draw(strength * OUTSIDE);
    context.restore();
    context.save();
    context.clip(outline);
    context.globalAlpha = 1 - TINTS;
    context.fillStyle = theme.sheet;
    context.fill(outline);
    draw(strength);
    context.restore();
  };
}
