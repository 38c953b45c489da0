import { add, type Box, type Point, type Polygon, type Segment } from '@seamwright/geometry';
import type { Mark, PathMark, Role, Stroke, TextMark, Weight } from './model.ts';

/**
 * The few line styles of the pages. Widths in points.
 *
 * What is sewn is solid and black, the outline heaviest, for it must be seen through paper and two fabrics on a light table.
 * What is cut is dashed, so that a worn cartridge, which thins and greys all lines alike, cannot make it look like a sew line.
 * Nothing is under 0.5 point or paler than 30 %: finer lines and paler greys break up on a home printer (common practice). Lines
 * that only help (run-ons, leaders, arrows) are greys well above that, and thinner than any seam. Each kind has a width of its own,
 * by which programs that read a page tell them apart; in light ink (`light-ink.ts`) the widths stay.
 */
export const STROKES = {
  finishedOutline: { width: 1.25, ink: 1 },
  sewLine: { width: 0.75, ink: 1 },
  runOn: { width: 0.5, ink: 0.6 },
  cuttingLine: { width: 0.75, ink: 0.8, dash: [5, 3] },
  matchMark: { width: 1.5, ink: 1 },
  checkSquare: { width: 0.5, ink: 1 },
  tileEdge: { width: 0.5, ink: 0.4 },
  alignmentMark: { width: 0.75, ink: 0.7 },
  cropMark: { width: 1, ink: 0.7 },
  mapOutline: { width: 0.5, ink: 0.6 },
  arrow: { width: 0.75, ink: 0.8 },
  leader: { width: 0.6, ink: 0.7 },
  grain: { width: 0.9, ink: 0.8 },
  diagram: { width: 0.5, ink: 0.7 },
  rule: { width: 0.5, ink: 0.4 },
} as const satisfies Readonly<Record<string, Stroke>>;

/** Ink of words that step back behind the name and the piece numbers. */
export const QUIET = 0.75;

export const segmentMark = (
  role: Role,
  section: string | undefined,
  { a, b }: Segment<'page'>,
  stroke: Stroke,
): PathMark => of(section, { kind: 'path', role, points: [a, b], closed: false, stroke });

export const polygonMark = (
  role: Role,
  section: string | undefined,
  points: Polygon<'page'>,
  stroke: Stroke,
): PathMark => of(section, { kind: 'path', role, points, closed: true, stroke });

/** A text's look; what is left out is 8 pt, regular, starting at the point, upright, black. */
export interface TextLook {
  readonly size?: number;
  readonly weight?: Weight;
  readonly anchor?: TextMark['anchor'];
  readonly angle?: number;
  readonly ink?: number;
}

export const textMark = (
  role: Role,
  section: string | undefined,
  content: string,
  at: Point<'page'>,
  look: TextLook = {},
): TextMark =>
  of(section, {
    kind: 'text',
    role,
    content,
    at,
    size: look.size ?? 8,
    weight: look.weight ?? 'regular',
    anchor: look.anchor ?? 'start',
    angle: look.angle ?? 0,
    ink: look.ink ?? 1,
  });

/** The new mark itself: a mark that is spread together takes ten times as long to make, and again whenever it is copied. */
function of<M extends Mark>(section: string | undefined, mark: M & { section?: string }): M {
  if (section !== undefined) mark.section = section;
  return mark;
}

/** The mark, `by` points farther right and down. */
export function moved(mark: Mark, by: Point<'page'>): Mark {
  if (mark.kind === 'text') return { ...mark, at: add(mark.at, by) };
  const points = mark.points.map((point) => add(point, by));
  return mark.window === undefined
    ? { ...mark, points }
    : { ...mark, points, window: movedBox(mark.window, by) };
}

const movedBox = ({ minX, minY, maxX, maxY }: Box<'page'>, { x, y }: Point<'page'>): Box<'page'> => ({
  minX: minX + x,
  minY: minY + y,
  maxX: maxX + x,
  maxY: maxY + y,
});
