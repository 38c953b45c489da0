import { type Box, POINTS_PER_INCH, type Point } from '@seamwright/geometry';
import type { CheckedJob } from '../job.ts';
import { polygonMark, QUIET, STROKES, type TextLook, textMark } from '../marks/marks.ts';
import type { Mark, PathMark } from '../marks/model.ts';
import { type Margins, POINTS_PER_MM, USUAL_MARGINS } from './paper.ts';
import { type SheetNumbers, stripHeight, stripMarks, USUAL_STRIP } from './sheet-strip.ts';

const LARGE_SQUARE = 50 * POINTS_PER_MM;
const SMALL_SQUARE = POINTS_PER_INCH;

/** Between the check squares and what stands beside or above them, points. */
const GAP = 12;

/**
 * Where foundations may stand on a sheet: two upright rectangles that overlap, because the check squares take only
 * the bottom left corner. `wide` ends above the squares, `tall` runs down beside them.
 */
export interface Regions {
  readonly wide: Box<'page'>;
  readonly tall: Box<'page'>;
}

export function regionsOf(
  sheet: CheckedJob['sheet'],
  margins: Margins = USUAL_MARGINS,
  stripHeight: number = USUAL_STRIP,
): Regions {
  const { minX, minY, maxX, maxY } = printableArea(sheet, margins);
  return {
    wide: { minX, minY, maxX, maxY: maxY - LARGE_SQUARE - GAP },
    tall: { minX: minX + LARGE_SQUARE + GAP, minY, maxX, maxY: maxY - stripHeight - GAP / 2 },
  };
}

/** What the check squares, the strip and a foundation in one of the regions leave free: below `wide`, or at the left of `tall`. */
export function besideRegion(region: Box<'page'>, { wide, tall }: Regions): Box<'page'> {
  return region === wide
    ? { minX: tall.minX, minY: wide.maxY + GAP, maxX: tall.maxX, maxY: tall.maxY }
    : { minX: wide.minX, minY: wide.minY, maxX: tall.minX - GAP, maxY: wide.maxY };
}

/** The same for a job, with the room that its words at the foot take. */
export const regionsFor = (job: CheckedJob): Regions =>
  regionsOf(job.sheet, job.margins, stripHeight(job, stripWidth(printableArea(job.sheet, job.margins))));

/** Where the strip stands: at the foot of the sheet beside the check squares, or above them. */
export type StripPlace = 'beside the squares' | 'above the squares';

/** A place for a foundation by itself, and where its caption and the strip stand then. */
export interface SolePlace {
  readonly region: Box<'page'>;
  readonly caption: Box<'page'>;
  readonly strip: StripPlace;
}

/** Points between the check squares and a foundation that would have to be cut into tiles if it stood farther off: both lines are seen. */
const CLOSE = 2;

/**
 * The largest places for a foundation by itself, beyond the regions that a foundation has usually: close above the check squares, or
 * close beside them from the top to the bottom, the strip above the squares.
 */
export function closePlaces(job: CheckedJob): readonly SolePlace[] {
  const area = printableArea(job.sheet, job.margins);
  const { wide, tall } = regionsFor(job);
  const column = stripBox(area, 'above the squares');
  const captionEnd = column.maxY - stripHeight(job, column.maxX - column.minX) - GAP;
  return [
    {
      region: { ...wide, maxY: squaresTop(area) - CLOSE },
      caption: { ...tall, minY: squaresTop(area) + GAP },
      strip: 'beside the squares',
    },
    {
      region: { ...area, minX: area.minX + LARGE_SQUARE + CLOSE },
      caption: { ...column, minY: area.minY, maxY: captionEnd },
      strip: 'above the squares',
    },
  ];
}

/** The sheet without its margins, points. */
export const printableArea = (
  { width, height }: CheckedJob['sheet'],
  { top, right, bottom, left }: Margins,
): Box<'page'> => ({
  minX: left * POINTS_PER_INCH,
  minY: top * POINTS_PER_INCH,
  maxX: width - right * POINTS_PER_INCH,
  maxY: height - bottom * POINTS_PER_INCH,
});

/** The two check squares, and the strip with the names, the page number and how to print. */
export function sheetFrame(
  job: CheckedJob,
  numbers: SheetNumbers,
  strip: StripPlace = 'beside the squares',
): readonly Mark[] {
  const area = printableArea(job.sheet, job.margins);
  return [...checkSquares(area), ...stripMarks(job, stripBox(area, strip), numbers)];
}

/** The strip stands in the bottom of it. */
const stripBox = (area: Box<'page'>, place: StripPlace): Box<'page'> =>
  place === 'beside the squares'
    ? { ...area, minX: area.maxX - stripWidth(area) }
    : { ...area, maxX: area.minX + LARGE_SQUARE, maxY: squaresTop(area) - GAP };

/** Points across, to the right of the check squares. */
export const stripWidth = ({ minX, maxX }: Box<'page'>): number => maxX - minX - LARGE_SQUARE - GAP;

/** Where the check squares begin. */
export const squaresTop = ({ maxY }: Box<'page'>): number => maxY - LARGE_SQUARE;

/** The two check squares in the bottom left corner of the printable area, with what they are for. */
export const checkSquares = (area: Box<'page'>): readonly Mark[] => [
  ...bareSquares(area),
  ...SQUARE_WORDS.map(([content, down, look]) =>
    textMark('footer', undefined, content, { x: area.minX + INSET, y: squaresTop(area) + down }, look),
  ),
];

/** From the larger square to the smaller, points. */
const INSET = 10;

/** What stands in the larger square, and how far down. */
const SQUARE_WORDS: readonly (readonly [content: string, down: number, look: TextLook])[] = [
  ['Print at 100 %, no scaling', 17, { size: 9, weight: 'semibold' }],
  ['Measure this square and the one', 30, { size: 7.5, ink: QUIET }],
  ['inside it. If they are not true,', 39.5, { size: 7.5, ink: QUIET }],
  ['print the page again.', 49, { size: 7.5, ink: QUIET }],
];

/** The two squares with the lengths of their sides. */
export function bareSquares({ minX: left, maxY: bottom }: Box<'page'>): readonly Mark[] {
  const inner = { x: left + INSET, y: bottom - INSET - SMALL_SQUARE };
  const middle = { x: inner.x + SMALL_SQUARE / 2, y: inner.y + SMALL_SQUARE / 2 + 3 };
  const corner = { x: left + LARGE_SQUARE - INSET, y: bottom - INSET };
  return [
    square({ x: left, y: bottom - LARGE_SQUARE }, LARGE_SQUARE),
    square(inner, SMALL_SQUARE),
    textMark('footer', undefined, '1 in', middle, { size: 9, anchor: 'middle' }),
    textMark('footer', undefined, '50 mm', corner, { size: 9, anchor: 'end' }),
  ];
}

const square = (corner: Point<'page'>, side: number): PathMark =>
  polygonMark(
    'check-square',
    undefined,
    [
      corner,
      { x: corner.x + side, y: corner.y },
      { x: corner.x + side, y: corner.y + side },
      { x: corner.x, y: corner.y + side },
    ],
    STROKES.checkSquare,
  );
