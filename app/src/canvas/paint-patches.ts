import type { Arrangement, Patch } from '@seamwright/arrangement';
import type { Point, Polygon } from '@seamwright/geometry';
import type { Study } from '../study/study.ts';
import type { Paint } from './painting.tsx';
import { sectionLook, TILE_DENSITY, tile } from './section-look.ts';
import { FACE, type Theme } from './theme.ts';

/** Where a point of the block is shown: itself, or its mirror image. */
export type Place = (point: Point) => Point;
export const inFront: Place = (point) => point;

/** How the block is shown. */
export interface Look {
  readonly theme: Theme;
  /** CSS pixels per inch. */
  readonly scale: number;
  readonly place: Place;
}

/** Adds a closed shape to the path that is being drawn. */
export function addPolygon(context: CanvasRenderingContext2D, polygon: Polygon, place: Place): void {
  polygon.forEach((corner, i) => {
    const { x, y } = place(corner);
    if (i === 0) context.moveTo(x, y);
    else context.lineTo(x, y);
  });
  context.closePath();
}

/** Every patch in its section's tint and hatching; those that no section holds are plain. */
export function paintFills({ arrangement, sectionOf }: Study, { theme, scale, place }: Look): Paint {
  const bySection = new Map<number, Patch[]>();
  for (const patch of arrangement?.patches ?? []) {
    const section = sectionOf[patch.index] ?? -1;
    const known = bySection.get(section);
    if (known === undefined) bySection.set(section, [patch]);
    else known.push(patch);
  }
  return (context) => {
    for (const [section, patches] of bySection) {
      context.beginPath();
      for (const { polygon } of patches) addPolygon(context, polygon, place);
      context.fillStyle = section < 0 ? theme.sheet : fillOf(context, section, theme, scale);
      context.fill();
    }
  };
}

/** The fill of a section, its hatching the same size on the screen at every zoom. */
function fillOf(
  context: CanvasRenderingContext2D,
  section: number,
  theme: Theme,
  scale: number,
): CanvasPattern {
  const pattern = context.createPattern(tile(sectionLook(section, theme.dark), theme.ink), 'repeat')!;
  const size = 1 / (scale * TILE_DENSITY);
  pattern.setTransform(new DOMMatrix([size, 0, 0, size, 0, 0]));
  return pattern;
}

/** CSS pixels. */
const SEAM_WIDTH = 1.25;

/** The lines between and round the patches. */
export function paintSeams(arrangement: Arrangement | null, { theme, scale, place }: Look): Paint {
  return (context) => {
    context.beginPath();
    for (const { from, to } of arrangement?.edges ?? []) {
      const a = place(arrangement!.vertices[from]!.at);
      const b = place(arrangement!.vertices[to]!.at);
      context.moveTo(a.x, a.y);
      context.lineTo(b.x, b.y);
    }
    context.strokeStyle = theme.ink;
    context.lineWidth = SEAM_WIDTH / scale;
    context.lineCap = 'round';
    context.stroke();
  };
}

/** CSS pixels: names are no larger than this, and left out below this. */
const LARGEST = 22;
const SMALLEST = 8;
/** Capitals and digits of the face are about this high, in ems. */
const CAPITAL = 0.66;

/** Every patch's name (A1) at its heart, as large as fits, upright in every view. */
export function paintNames({ arrangement, names }: Study, { theme, scale, place }: Look): Paint {
  return (context) => {
    context.fillStyle = theme.ink;
    context.textAlign = 'center';
    context.textBaseline = 'alphabetic';
    for (const { index, heart, depth } of arrangement?.patches ?? []) {
      const name = names[index] ?? '?';
      // A circle of the patch's depth holds the name when its half-diagonal fits; digits are about half as wide as tall.
      const fits = (depth * scale * 2) / Math.hypot(1.1, 0.56 * name.length);
      const size = Math.min(fits, LARGEST);
      if (size < SMALLEST) continue;
      const at = place(heart);
      // Written at screen size: canvases round the metrics of type that is a fraction of a unit.
      context.save();
      context.translate(at.x, at.y);
      context.scale(1 / scale, 1 / scale);
      context.font = `600 ${size}px ${FACE}`;
      context.fillText(name, 0, (CAPITAL / 2) * size);
      context.restore();
    }
  };
}
