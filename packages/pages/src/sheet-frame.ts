import { type Box, formatLength, POINTS_PER_INCH, type Point } from '@seamwright/geometry';
import type { CheckedJob } from './job.ts';
import { polygonMark, QUIET, STROKES, segmentMark, textMark } from './marks.ts';
import { shortened, textWidth } from './metrics.ts';
import type { Mark, PathMark } from './model.ts';
import { type Margins, type Paper, POINTS_PER_MM, USUAL_MARGINS } from './paper.ts';

const LARGE_SQUARE = 50 * POINTS_PER_MM;
const SMALL_SQUARE = POINTS_PER_INCH;

/** Between the check squares and what stands beside or above them, points. */
const GAP = 12;

/** The strip of words at the foot of the sheet, to the right of the check squares, points. */
const STRIP = 50;

/**
 * Where foundations may stand on a sheet: two upright rectangles that overlap, because the check squares take only
 * the bottom left corner. `wide` ends above the squares, `tall` runs down beside them.
 */
export interface Regions {
  readonly wide: Box<'page'>;
  readonly tall: Box<'page'>;
}

export function regionsOf(paper: Paper, margins: Margins = USUAL_MARGINS): Regions {
  const { minX, minY, maxX, maxY } = printableArea(paper, margins);
  return {
    wide: { minX, minY, maxX, maxY: maxY - LARGE_SQUARE - GAP },
    tall: { minX: minX + LARGE_SQUARE + GAP, minY, maxX, maxY: maxY - STRIP - GAP / 2 },
  };
}

/** What the check squares, the strip and a foundation in one of the regions leave free: below `wide`, or at the left of `tall`. */
export function besideRegion(region: Box<'page'>, { wide, tall }: Regions): Box<'page'> {
  return region === wide
    ? { minX: tall.minX, minY: wide.maxY + GAP, maxX: tall.maxX, maxY: tall.maxY }
    : { minX: wide.minX, minY: wide.minY, maxX: tall.minX - GAP, maxY: wide.maxY };
}

/** The sheet without its margins, points. */
const printableArea = ({ width, height }: Paper, { top, right, bottom, left }: Margins): Box<'page'> => ({
  minX: left * POINTS_PER_INCH,
  minY: top * POINTS_PER_INCH,
  maxX: width - right * POINTS_PER_INCH,
  maxY: height - bottom * POINTS_PER_INCH,
});

export interface SheetNumbers {
  /** From 1. */
  readonly page: number;
  readonly pages: number;
  /** How often the sheet is to be printed. */
  readonly times: number;
}

/** The two check squares, and the strip with the names, the page number and how to print. */
export function sheetFrame(job: CheckedJob, numbers: SheetNumbers): readonly Mark[] {
  const area = printableArea(job.sheet, job.margins);
  return [...checkSquares(area), ...strip(job, area, numbers)];
}

function checkSquares({ minX: left, maxY: bottom }: Box<'page'>): readonly Mark[] {
  const top = bottom - LARGE_SQUARE;
  const inset = 10;
  const words = left + inset;
  return [
    square({ x: left, y: top }, LARGE_SQUARE),
    square({ x: left + inset, y: bottom - inset - SMALL_SQUARE }, SMALL_SQUARE),
    textMark(
      'footer',
      undefined,
      'Print at 100 %, no scaling',
      { x: words, y: top + 17 },
      { size: 9, weight: 'semibold' },
    ),
    textMark(
      'footer',
      undefined,
      'Measure both squares: if they are',
      { x: words, y: top + 30 },
      { size: 7.5, ink: QUIET },
    ),
    textMark(
      'footer',
      undefined,
      'not true, print the page again.',
      { x: words, y: top + 39.5 },
      { size: 7.5, ink: QUIET },
    ),
    textMark(
      'footer',
      undefined,
      '1 in',
      { x: left + inset + SMALL_SQUARE / 2, y: bottom - inset - SMALL_SQUARE / 2 + 3 },
      { size: 9, anchor: 'middle' },
    ),
    textMark(
      'footer',
      undefined,
      '50 mm',
      { x: left + LARGE_SQUARE - inset, y: bottom - inset },
      { size: 9, anchor: 'end' },
    ),
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

function strip(job: CheckedJob, area: Box<'page'>, { page, pages, times }: SheetNumbers): readonly Mark[] {
  const left = area.minX + LARGE_SQUARE + GAP;
  const right = area.maxX;
  const bottom = area.maxY;
  const number = `page ${page} of ${pages}${times > 1 ? `, print ${times} times` : ''}`;
  const numberWidth = textWidth(number, 9, 'regular');
  const names = job.pattern === '' ? job.title : `${job.pattern} – ${job.title}`;
  const name = shortened(names, 9, 'semibold', right - left - numberWidth - GAP);
  const howTo =
    job.allowance === 0
      ? 'Sew on the solid lines, match at the heavy ticks. The outline has no seam allowance: add it as you cut.'
      : `Sew on the solid lines, cut on the dashed line (${formatLength(job.allowance, job.unit)} seam allowance), match at the heavy ticks.`;
  const line = (content: string, y: number): Mark =>
    textMark('footer', undefined, content, { x: left, y }, { size: 7.5, ink: QUIET });
  return [
    segmentMark(
      'footer',
      undefined,
      { a: { x: left, y: bottom - STRIP }, b: { x: right, y: bottom - STRIP } },
      STROKES.rule,
    ),
    textMark('footer', undefined, name, { x: left, y: bottom - STRIP + 12 }, { size: 9, weight: 'semibold' }),
    textMark('footer', undefined, number, { x: right, y: bottom - STRIP + 12 }, { size: 9, anchor: 'end' }),
    line(howTo, bottom - STRIP + 23),
    line(
      'Fabric goes on the blank side: the print is the mirror image of the finished block.',
      bottom - STRIP + 32.5,
    ),
    line('Note', bottom - 1),
    segmentMark(
      'footer',
      undefined,
      { a: { x: left + 20, y: bottom - 0.5 }, b: { x: right, y: bottom - 0.5 } },
      STROKES.rule,
    ),
  ];
}
