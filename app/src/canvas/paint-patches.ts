import type { Arrangement, Patch } from '@seamwright/arrangement';
import type { Point, Polygon } from '@seamwright/geometry';
import type { Study } from '../study/study.ts';
import type { Area } from './mark-places.ts';
import type { Paint } from './painting.tsx';
import { type SectionLook, sectionLook, TILE_DENSITY, tile } from './section-look.ts';
import type { Theme } from './theme.ts';
import type { Flip } from './view.ts';
import { writtenName } from './written-name.ts';

/** Where a point of the block is shown: itself, or its mirror image. */
export type Place = (point: Point) => Point;
export const inFront: Place = (point) => point;

/** How the block is shown. */
export interface Look {
  readonly theme: Theme;
  /** CSS pixels per inch. */
  readonly scale: number;
  /** -1 where the whole canvas shows the printed side. */
  readonly flip: Flip;
  readonly place: Place;
}

/** Adds a closed shape to a path. */
export function addPolygon(path: CanvasPath, polygon: Polygon, place: Place): void {
  polygon.forEach((corner, i) => {
    const { x, y } = place(corner);
    if (i === 0) path.moveTo(x, y);
    else path.lineTo(x, y);
  });
  path.closePath();
}

/** Patches that are filled alike, as one path. */
export interface Fill {
  readonly path: Path2D;
  readonly style: (context: CanvasRenderingContext2D) => string | CanvasPattern;
}

export const paintFills =
  (fills: readonly Fill[]): Paint =>
  (context) => {
    for (const { path, style } of fills) {
      context.fillStyle = style(context);
      // What lies in a hole is another patch's.
      context.fill(path, 'evenodd');
    }
  };

/** The patches by what they have in common. */
export function pathsBy<Key>(
  arrangement: Arrangement | null,
  keyOf: (patch: Patch) => Key,
  place: Place,
): ReadonlyMap<Key, Path2D> {
  const paths = new Map<Key, Path2D>();
  for (const patch of arrangement?.patches ?? []) {
    const key = keyOf(patch);
    const path = paths.get(key) ?? new Path2D();
    paths.set(key, path);
    addPolygon(path, patch.polygon, place);
    for (const hole of patch.holes)
      addPolygon(
        path,
        hole.map((vertex) => arrangement!.vertices[vertex]!.at),
        place,
      );
  }
  return paths;
}

/** Every patch in its section's tint and hatching; those that no section holds are plain. */
export function sectionFills({ arrangement, sectionOf }: Study, look: Look): readonly Fill[] {
  const paths = pathsBy(arrangement, ({ index }) => sectionOf[index] ?? -1, look.place);
  return [...paths].map(([section, path]) => ({
    path,
    style: (context) =>
      section < 0
        ? look.theme.sheet
        : hatched(context, sectionLook(section, look.theme.dark), look.theme.ink, look),
  }));
}

/** A tint with its hatching, which is the same size on the screen at every zoom. */
export function hatched(
  context: CanvasRenderingContext2D,
  of: SectionLook,
  ink: string,
  { scale, flip }: Look,
): CanvasPattern {
  const pattern = context.createPattern(tile(of, ink), 'repeat')!;
  const size = 1 / (scale * TILE_DENSITY);
  pattern.setTransform(new DOMMatrix([size * flip, 0, 0, size, 0, 0]));
  return pattern;
}

/** CSS pixels. */
const SEAM_WIDTH = 1.25;

/** The lines between and round the patches. */
export function seamsOf(arrangement: Arrangement | null, place: Place): Path2D {
  const path = new Path2D();
  for (const { from, to } of arrangement?.edges ?? []) {
    const a = place(arrangement!.vertices[from]!.at);
    const b = place(arrangement!.vertices[to]!.at);
    path.moveTo(a.x, a.y);
    path.lineTo(b.x, b.y);
  }
  return path;
}

export function paintSeams(arrangement: Arrangement | null, look: Look, cased = false): Paint {
  const seams = seamsOf(arrangement, look.place);
  return (context) => {
    if (cased) strokeCasing(context, seams, look);
    strokeSeams(context, seams, look);
  };
}

export function strokeSeams(context: CanvasRenderingContext2D, seams: Path2D, { theme, scale }: Look): void {
  context.strokeStyle = theme.ink;
  context.lineWidth = SEAM_WIDTH / scale;
  context.lineCap = 'round';
  context.stroke(seams);
}

/** CSS pixels on either side of a seam. */
const CASING = 1;

/** Strips of the paper's colour along seams, so that they are seen on fabrics that are as dark as they are. */
export function strokeCasing(context: CanvasRenderingContext2D, seams: Path2D, { theme, scale }: Look): void {
  context.strokeStyle = theme.sheet;
  context.lineWidth = (SEAM_WIDTH + 2 * CASING) / scale;
  context.lineCap = 'round';
  context.globalAlpha = 0.7;
  context.stroke(seams);
  context.globalAlpha = 1;
}

/** CSS pixels: names are no larger than this, and left out below this. */
const LARGEST = 22;
const SMALLEST = 8;

/** Digits are about half as wide as tall, in ems. */
const WIDTH = 0.56;

/** CSS pixels of a name's type; 0 where it is left out. */
function nameSize(name: string, depth: number, scale: number): number {
  // A circle of the patch's depth holds the name when its half-diagonal fits.
  const fits = (depth * scale * 2) / Math.hypot(1.1, WIDTH * name.length);
  return fits < SMALLEST ? 0 : Math.min(fits, LARGEST);
}

/** Where names are written, CSS pixels from the block's origin as it is shown; a ? is none. */
export const writtenNames = ({ arrangement, names }: Study, scale: number, place: Place): readonly Area[] =>
  (arrangement?.patches ?? []).flatMap(({ index, heart, depth }) => {
    const name = names[index] ?? '?';
    const size = name === '?' ? 0 : nameSize(name, depth, scale);
    const { x, y } = place(heart);
    const box = { halfWidth: (WIDTH * name.length * size) / 2, halfHeight: size / 2 };
    return size === 0 ? [] : [{ x: x * scale, y: y * scale, ...box }];
  });

/** Every patch's name (A1) at its heart, as large as fits, upright in every view. */
export function paintNames({ arrangement, names }: Study, { theme, scale, place }: Look): Paint {
  return (context) => {
    const { a, d, e, f } = context.getTransform();
    /** Device pixels per CSS pixel. */
    const density = Math.abs(a) / scale;
    context.save();
    // By device pixels: the pictures of names stay sharp.
    context.setTransform(1, 0, 0, 1, 0, 0);
    for (const { index, heart, depth } of arrangement?.patches ?? []) {
      const name = names[index] ?? '?';
      const size = nameSize(name, depth, scale);
      if (size === 0) continue;
      const image = writtenName(name, Math.floor(size * density), theme.ink);
      const at = place(heart);
      context.drawImage(
        image,
        Math.round(a * at.x + e - image.width / 2),
        Math.round(d * at.y + f - image.height / 2),
      );
    }
    context.restore();
  };
}
