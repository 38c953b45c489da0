import type { Box, Transform } from '@seamwright/geometry';
import { type Fill, type Look, strokeCasing, strokeSeams } from '../../../canvas/paint-patches.ts';
import type { Paint } from '../../../canvas/painting.tsx';

/** One block as it is painted again and again. */
export interface OneCopy {
  readonly box: Box;
  readonly outline: Path2D;
  readonly fills: readonly Fill[];
  readonly lines: Path2D;
  /** Whether lines have strips of paper along them. */
  readonly cased: boolean;
}

/** CSS pixels: how far the ring round the block that is drawn on stands out of it. */
const RING = 4;

/** Device pixels round a block's picture for the halves of lines that lie outside. */
const MARGIN = 4;

/** Device pixels of the largest picture that is made of a block. Larger, few copies are in sight. */
const LARGEST_PICTURE = 2_000_000;

/**
 * The block is painted once as a picture in the screen's own pixels, and the picture laid at every place: many copies of
 * many patches are as quick as few. Close up, where the picture would be too large, the copies in sight are painted one by
 * one.
 */
export function paintCopies(places: readonly Transform[], copy: OneCopy, look: Look): Paint {
  const { outline } = copy;
  return (context) => {
    const styles = copy.fills.map(({ style }) => style(context));
    const under = (into: CanvasRenderingContext2D) => {
      into.fillStyle = look.theme.sheet;
      into.fill(outline);
      for (const [i, { path }] of copy.fills.entries()) {
        into.fillStyle = styles[i]!;
        into.fill(path, 'evenodd');
      }
      if (copy.cased) strokeCasing(into, copy.lines, look);
    };
    const over = (into: CanvasRenderingContext2D) => strokeSeams(into, copy.lines, look);
    const shown = inSight(context, places, copy.box);
    // All that lies under lines before all lines: at the edges each copy's would lie on its neighbour's.
    for (const paint of [under, over]) everywhere(context, shown, copy.box, paint);
    context.strokeStyle = look.theme.accent;
    context.lineWidth = (2 * RING) / look.scale;
    context.lineJoin = 'round';
    context.stroke(outline);
  };
}

type Into = (context: CanvasRenderingContext2D) => void;

function everywhere(
  context: CanvasRenderingContext2D,
  places: readonly Transform[],
  box: Box,
  paint: Into,
): void {
  const picture = pictureOf(context, box, paint);
  for (const place of places) {
    context.save();
    context.transform(place.a, place.b, place.c, place.d, place.e, place.f);
    if (picture === null) paint(context);
    else lay(context, picture, box);
    context.restore();
  }
}

/** Device pixels per inch: the canvas is scaled and turned over, never turned. */
const densityOf = (context: CanvasRenderingContext2D): number => Math.abs(context.getTransform().d);

function pictureOf(context: CanvasRenderingContext2D, box: Box, paint: Into): HTMLCanvasElement | null {
  const density = densityOf(context);
  const width = Math.ceil((box.maxX - box.minX) * density) + 2 * MARGIN;
  const height = Math.ceil((box.maxY - box.minY) * density) + 2 * MARGIN;
  if (width * height > LARGEST_PICTURE) return null;
  const picture = document.createElement('canvas');
  picture.width = width;
  picture.height = height;
  const into = picture.getContext('2d')!;
  into.setTransform(density, 0, 0, density, MARGIN - box.minX * density, MARGIN - box.minY * density);
  paint(into);
  return picture;
}

/** Pixel on pixel: copies are moved, turned by quarters and turned over, so nothing of the picture is blurred. */
function lay(context: CanvasRenderingContext2D, picture: HTMLCanvasElement, box: Box): void {
  const { a, b, c, d, e, f } = context.getTransform();
  const density = Math.hypot(a, b);
  const [x, y] = [box.minX - MARGIN / density, box.minY - MARGIN / density];
  const whole = (share: number) => Math.round(share / density);
  context.setTransform(
    whole(a),
    whole(b),
    whole(c),
    whole(d),
    Math.round(a * x + c * y + e),
    Math.round(b * x + d * y + f),
  );
  context.drawImage(picture, 0, 0);
}

/** The places of which the canvas shows something. */
function inSight(
  context: CanvasRenderingContext2D,
  places: readonly Transform[],
  { minX, minY, maxX, maxY }: Box,
): readonly Transform[] {
  const { a, d, e, f } = context.getTransform();
  const { width, height } = context.canvas;
  const shows = (place: Transform) => {
    const xs = [minX, maxX].flatMap((x) => [minY, maxY].map((y) => place.a * x + place.c * y + place.e));
    const ys = [minX, maxX].flatMap((x) => [minY, maxY].map((y) => place.b * x + place.d * y + place.f));
    const [left, right] = [a * Math.min(...xs) + e, a * Math.max(...xs) + e].sort((p, q) => p - q);
    const [top, bottom] = [d * Math.min(...ys) + f, d * Math.max(...ys) + f];
    return right! > 0 && left! < width && bottom > 0 && top < height;
  };
  return places.filter(shows);
}
