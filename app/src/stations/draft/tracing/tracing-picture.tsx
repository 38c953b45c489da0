import type { Drawing } from '@seamwright/arrangement';
import { drawnLines } from '@seamwright/drafting';
import { pictureBox, type Tracing } from '@seamwright/pattern';
import { useMemo } from 'react';
import { corners } from '../../../canvas/bounds.ts';
import { addPolygon, inFront, type Look } from '../../../canvas/paint-patches.ts';
import { type Paint, Painting } from '../../../canvas/painting.tsx';
import { useLook } from '../../../canvas/use-look.ts';
import { useWork } from '../../../store/work.ts';
import { useDraftView } from '../views/draft-view.ts';
import { usePlacing } from './placing.ts';
import { currentTracing } from './tracing-edits.ts';
import { turnedImage } from './turned-image.ts';
import { usePicture } from './use-picture.ts';

/** How much of the patches' tints is seen through the sheet that the picture lies on. */
const TINTS = 0.2;
/** How much weaker the picture shows outside the block. */
const OUTSIDE = 0.35;
/** CSS pixels, and how strong: what keeps lines apart from a picture that is as dark, or as light, as they are. */
const HALO = 4.5;
const HALO_STRENGTH = 0.5;

/**
 * The picture that is traced. It lies on the fills, which a veil of the sheet's colour keeps from mixing with it, and under
 * the grid and all lines; outside the block it is seen faintly. Fabrics are looked at without it.
 */
export function TracingPicture({ drawing }: { readonly drawing: Drawing }) {
  const tracing = useWork(currentTracing);
  const preview = usePlacing((placing) => placing.preview);
  const fabrics = useDraftView((view) => view.kind === 'fabrics');
  const look = useLook(inFront);
  const image = usePicture(tracing?.picture);
  const shown = tracing?.shown === true && !fabrics ? (preview ?? tracing) : null;
  const paint = useMemo(
    () =>
      shown === null || image === undefined || image === null ? null : painted(shown, image, drawing, look),
    [shown, image, drawing, look],
  );
  return paint === null ? null : <Painting paint={paint} />;
}

function painted(
  tracing: Tracing,
  image: HTMLImageElement,
  drawing: Drawing,
  { theme, scale }: Pick<Look, 'theme' | 'scale'>,
): Paint {
  const { picture, strength, turn } = tracing;
  const { minX, minY, maxX, maxY } = pictureBox(tracing, picture);
  // Enough for screens of two pixels for each of CSS's.
  const detail = (2 * scale * tracing.width) / picture.width;
  const source = turn === 0 ? image : turnedImage(image, picture, turn, detail);
  const outline = new Path2D();
  addPolygon(outline, corners(drawing), inFront);
  const lines = linesOf(drawing);
  return (context) => {
    const draw = (alpha: number) => {
      context.globalAlpha = alpha;
      context.drawImage(source, minX, minY, maxX - minX, maxY - minY);
    };
    context.save();
    draw(strength * OUTSIDE);
    context.clip(outline);
    context.globalAlpha = 1 - TINTS;
    context.fillStyle = theme.sheet;
    context.fill(outline);
    draw(strength);
    context.globalAlpha = HALO_STRENGTH;
    context.strokeStyle = theme.sheet;
    context.lineWidth = HALO / scale;
    context.stroke(lines);
    context.restore();
  };
}

function linesOf(drawing: Drawing): Path2D {
  const path = new Path2D();
  for (const { from, to, kind } of drawnLines(drawing).values()) {
    if (kind === 'edge') continue;
    path.moveTo(from.x, from.y);
    path.lineTo(to.x, to.y);
  }
  return path;
}
