import {
  edgesOf,
  type Point,
  type Polygon,
  rotation,
  type Segment,
  transformPoint,
} from '@seamwright/geometry';
import { QUIET } from '../marks/marks.ts';
import { CAP_HEIGHT, textWidth } from '../marks/metrics.ts';
import { clearCentres } from './barriers.ts';
import { type LabelLine, plateOf } from './label-lines.ts';
import { liesIn, meets, type Plate } from './plate.ts';

/** A patch on the sheet, and what is to be written in it. Points. */
export interface PatchToLabel {
  /** `A1` */
  readonly name: string;
  readonly polygon: Polygon<'page'>;
  /** The point deepest inside, and how far it is from the boundary. */
  readonly heart: Point<'page'>;
  readonly depth: number;
  /** The fabric's letter and name in the colourway; null where the job gives none. */
  readonly fabric: { readonly letter: string; readonly name: string } | null;
  /** A few words about the patch; null where there are none. */
  readonly note: string | null;
}

/** A label where it stands. */
export interface PlacedLabel {
  readonly lines: readonly LabelLine[];
  readonly plate: Plate;
  /** Whether the patch's note, if it has one, stands there too. */
  readonly noted: boolean;
}

/** Largest and smallest piece numbers at a patch's heart, points. Under 6 points, figures fill in on rough paper. */
const LARGEST_NUMBER = 14;
export const SMALLEST_NUMBER = 6;

/** What is taken where nothing larger stands free, points: figures can just be read. */
const LEAST_NUMBER = 5.5;

/** How much of the free circle round a patch's heart its number may fill. */
const FILL_OF_DEPTH = 0.6;

/** The words under a number: largest and smallest, points. */
const WORD_SIZES: readonly number[] = [7, 6, 5.5];

/** A number beside which words stand is not smaller than this, or than it would be alone: points. */
const NUMBER_OVER_WORDS = 8;

/** Points between a label and the lines round its patch: the least, and round labels with words. */
export const CLEAR = 1;
const CLEAR_OF_WORDS = 2.5;

/** Points between the places that are tried along a patch. */
const STEP = 2;

/** The number with the fabric's letter: `A1`, `A1 · b`. */
export const numberText = ({ name, fabric }: Pick<PatchToLabel, 'name' | 'fabric'>): string =>
  fabric === null ? name : `${name} · ${fabric.letter}`;

export const numberLine = (patch: Pick<PatchToLabel, 'name' | 'fabric'>, size: number): LabelLine => ({
  content: numberText(patch),
  size,
  weight: 'semibold',
  ink: 1,
});

/**
 * The label inside its patch, clear of the lines round it: at the deepest point and upright where it is large enough for
 * that; else small, upright or turned along the patch's long way, as near to that point as it fits. null where it fits
 * nowhere.
 *
 * The fabric's name and the note stand under the number where there is room for both, for the note, or for the name.
 *
 * @param lines what no label may cross: sew lines, outline, and marks that reach inside it
 * @param barriers where the foundation is cut into sheets: labels move to one side, as near to where they would stand as they can
 */
export function labelInPatch(
  patch: PatchToLabel,
  lines: readonly Segment<'page'>[],
  barriers: readonly Segment<'page'>[] = [],
): PlacedLabel | null {
  const size = fittedSize(numberText(patch), patch.depth);
  const hasWords = patch.fabric !== null || patch.note !== null;
  const worded = hasWords && size >= SMALLEST_NUMBER ? withWords(patch, size, lines, barriers) : null;
  if (worded) return worded;
  const noted = patch.note === null;
  if (size >= SMALLEST_NUMBER) {
    const number = [numberLine(patch, size)];
    const plate = plateOf(number, patch.heart, 0);
    if (!meets(plate, lines, CLEAR) && !meets(plate, barriers, CLEAR)) return { lines: number, plate, noted };
  }
  const axis = longWay(patch.polygon);
  const spots = spotsAlong(patch, axis);
  for (const small of size > SMALLEST_NUMBER
    ? [size, SMALLEST_NUMBER, LEAST_NUMBER]
    : [SMALLEST_NUMBER, LEAST_NUMBER])
    for (const angle of [0, readable(axis)])
      for (const spot of spots) {
        const number = [numberLine(patch, small)];
        for (const centre of clearCentres(plateOf(number, spot, angle), barriers, CLEAR)) {
          const plate = plateOf(number, centre, angle);
          if (!liesIn(plate, patch.polygon, CLEAR) || meets(plate, lines, CLEAR)) continue;
          return { lines: number, plate, noted };
        }
      }
  return null;
}

/** As large as the free circle allows; under {@link SMALLEST_NUMBER} where the circle is too small. */
function fittedSize(content: string, depth: number): number {
  const halfDiagonal = Math.hypot(textWidth(content, 1, 'semibold'), CAP_HEIGHT) / 2;
  const fitted = (FILL_OF_DEPTH * depth) / halfDiagonal;
  return Math.round(10 * Math.min(LARGEST_NUMBER, fitted)) / 10;
}

function withWords(
  patch: PatchToLabel,
  alone: number,
  lines: readonly Segment<'page'>[],
  barriers: readonly Segment<'page'>[],
): PlacedLabel | null {
  const { fabric, note, heart, polygon } = patch;
  const name = fabric === null || fabric.name === '' ? null : fabric.name;
  const wishes = [[name, note], [note], [name]].map((words) => words.filter((word) => word !== null));
  for (const words of wishes) {
    if (words.length === 0) continue;
    for (const size of new Set([alone, Math.min(alone, NUMBER_OVER_WORDS)]))
      for (const small of WORD_SIZES) {
        const label = [
          numberLine(patch, size),
          ...words.map((content): LabelLine => ({ content, size: small, weight: 'regular', ink: QUIET })),
        ];
        for (const centre of clearCentres(plateOf(label, heart, 0), barriers, CLEAR_OF_WORDS)) {
          const plate = plateOf(label, centre, 0);
          if (!liesIn(plate, polygon, CLEAR_OF_WORDS) || meets(plate, lines, CLEAR_OF_WORDS)) continue;
          return {
            lines: label,
            plate,
            noted: note === null || words.includes(note),
          };
        }
      }
  }
  return null;
}

/**
 * The way in which a shape is longest, degrees clockwise from level, more than −90 and at most 90: the greater principal axis of the
 * polygon's area. Second moments by edges, as in any handbook of mechanics (from memory).
 */
export function longWay(polygon: Polygon<'page'>): number {
  const [origin] = polygon;
  let [area, mx, my, xx, yy, xy] = [0, 0, 0, 0, 0, 0];
  for (const { a, b } of edgesOf(polygon)) {
    const p = { x: a.x - origin!.x, y: a.y - origin!.y };
    const q = { x: b.x - origin!.x, y: b.y - origin!.y };
    const twice = p.x * q.y - q.x * p.y;
    area += twice / 2;
    mx += (twice * (p.x + q.x)) / 6;
    my += (twice * (p.y + q.y)) / 6;
    xx += (twice * (p.x * p.x + p.x * q.x + q.x * q.x)) / 12;
    yy += (twice * (p.y * p.y + p.y * q.y + q.y * q.y)) / 12;
    xy += (twice * (p.x * q.y + 2 * p.x * p.y + 2 * q.x * q.y + q.x * p.y)) / 24;
  }
  const sxx = xx / area - (mx / area) ** 2;
  const syy = yy / area - (my / area) ** 2;
  const sxy = xy / area - (mx * my) / area ** 2;
  const degrees = (Math.atan2(2 * sxy, sxx - syy) / 2) * (180 / Math.PI);
  return Number.isFinite(degrees) ? degrees : 0;
}

/** The heart, then the middles of the patch's widths along its long way, the nearest to the heart first. */
export function spotsAlong(
  { polygon, heart }: Pick<PatchToLabel, 'polygon' | 'heart'>,
  axis: number,
): readonly Point<'page'>[] {
  const [level, back] = [rotation<'page'>(-axis, heart), rotation<'page'>(axis, heart)];
  const edges = edgesOf(polygon.map((p) => transformPoint(level, p)));
  const xs = edges.map(({ a }) => a.x);
  const spots: Point<'page'>[] = [];
  for (let x = Math.min(...xs) + STEP; x < Math.max(...xs); x += STEP) {
    const hits = edges
      .filter(({ a, b }) => a.x <= x !== b.x <= x)
      .map(({ a, b }) => a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x))
      .sort((p, q) => p - q);
    for (let i = 0; i + 1 < hits.length; i += 2) spots.push({ x, y: (hits[i]! + hits[i + 1]!) / 2 });
  }
  const away = ({ x, y }: Point<'page'>) => Math.hypot(x - heart.x, y - heart.y);
  return [heart, ...spots.sort((p, q) => away(p) - away(q)).map((p) => transformPoint(back, p))];
}

/** The same slant, read from the left or from below: more than −90, at most 90 degrees. */
const readable = (degrees: number): number => (degrees <= -90 ? degrees + 180 : degrees);
